#version 330 core
// Shadow on the table: is there something between the light and the point of the table below this pixel?
uniform sampler2DShadow shadow;
uniform vec3 corner;     // in the shadow map: the point of the table at the picture's lower left,
uniform vec3 right;      // the way to the lower right
uniform vec3 up;         // and to the upper left
in vec2 at;
out vec4 result;
void main() {
    result = vec4(1.0 - texture(shadow, corner + at.x * right + at.y * up));
}
