#version 330 core
layout(location = 0) in vec4 place;   // x, y on the picture from above; x, y in the atlas [px]
layout(location = 1) in vec4 colour;
uniform vec2 size;
flat out vec4 ink;
out vec2 at;
void main() {
    ink = colour;
    at = place.zw;
    gl_Position = vec4(2.0 * place.x / size.x - 1.0, 1.0 - 2.0 * place.y / size.y, 0.0, 1.0);
}
