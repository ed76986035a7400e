#version 330 core
uniform vec4 ink;
uniform vec3 pine;
in float across;
in float halfWidth;
flat in float pointed;
flat in float strength;
out vec4 result;
void main() {
    float coverage = clamp(halfWidth + 0.5 - abs(across), 0.0, 1.0) * min(1.0, 2.0 * halfWidth);
    result = vec4(pointed > 0.5 ? pine : ink.rgb, ink.a * coverage * strength);
}
