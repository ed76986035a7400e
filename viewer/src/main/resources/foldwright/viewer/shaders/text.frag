#version 330 core
uniform sampler2D glyphs;
flat in vec4 ink;
in vec2 at;
out vec4 result;
void main() {
    float coverage = texelFetch(glyphs, ivec2(at), 0).r;
    result = vec4(ink.rgb, ink.a * coverage);
}
