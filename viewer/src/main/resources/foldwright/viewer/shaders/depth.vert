#version 330 core
#include "solid.glsl"
uniform mat4 view;
uniform vec3 flatten;    // light direction: parts are pushed along it onto the table; z = 0: not
uniform float table;     // height of the table [m]
void main() {
    vec3 p = solidPlace();
    if (flatten.z != 0.0) p -= flatten * ((p.z - table) / flatten.z);
    gl_Position = view * vec4(p, 1.0);
}
