#version 330 core
flat in float id;
out uint result;
void main() { result = uint(id + 0.5); }
