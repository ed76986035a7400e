#version 330 core
#include "solid.glsl"
uniform mat4 view;
void main() {
    gl_Position = view * vec4(solidPlace(), 1.0);
}
