#version 330 core
flat in vec4 more;
out uint result;
void main() { result = uint(more.x + 0.5); }
