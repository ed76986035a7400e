#version 330 core
// Nine-tap Gaussian in five linear reads (weights 70, 56 + 28, 8 + 1 of 256, centre doubled by symmetry).
uniform sampler2D picture;
uniform vec2 step;
in vec2 at;
out vec4 result;
void main() {
    float sum = 70.0 / 256.0 * texture(picture, at).r;
    sum += 84.0 / 256.0 * (texture(picture, at + 4.0 / 3.0 * step).r + texture(picture, at - 4.0 / 3.0 * step).r);
    sum += 9.0 / 256.0 * (texture(picture, at + 28.0 / 9.0 * step).r + texture(picture, at - 28.0 / 9.0 * step).r);
    result = vec4(sum);
}
