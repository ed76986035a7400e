#version 330 core
uniform sampler2D picture;
uniform vec3 paper;
uniform vec3 ink;
uniform float shade;
in vec2 at;
out vec4 result;
void main() {
    result = vec4(mix(paper, ink, shade * texture(picture, at).r), 1.0);
}
