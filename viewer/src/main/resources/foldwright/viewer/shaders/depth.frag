#version 330 core
out vec4 result;
void main() { result = vec4(1.0); }
