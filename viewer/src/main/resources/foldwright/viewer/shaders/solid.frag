#version 330 core
uniform vec3 edge;
uniform vec3 paper;
uniform float pale;                 // 1: nearly paper (the last good machine)
uniform vec3 warm;                  // what the dark side is multiplied by
uniform float shade;                // share of ink in a shadow
uniform sampler2D ink;
uniform sampler2DShadow shadow;
in float lightness;
in vec3 lit;
flat in vec3 own;
#ifdef INK
in float along;
flat in vec4 carried;
flat in int zone;
#endif
#ifdef PATTERN
in vec3 local;
flat in vec4 more;
#endif
out vec4 result;

const int MOTOR = 5, BELT = 6, SPRING = 7, THREAD = 9, BLOCK = 11, LOAD = 0, RIM = 12;

// Two compares along a diagonal, each of them a mean of four.
float inShadow() {
    vec2 step = vec2(0.45, -0.45) / vec2(textureSize(shadow, 0));
    return 1.0 - 0.5 * (texture(shadow, lit + vec3(step, 0.0)) + texture(shadow, lit - vec3(step, 0.0)));
}

#ifdef PATTERN
// A line pattern of this many cycles; fades to its mean where a cycle gets thinner than the picture can show.
float stripes(float cycles, float density) {
    float wave = 0.5 + 0.5 * sin(6.2831853 * cycles);
    return mix(wave, 0.5, smoothstep(0.30, 0.75, density));
}

float pattern(bool loaded) {
    if (zone == THREAD) {
        float cycles = local.x / more.z - atan(local.z, local.y) / 6.2831853;
        return stripes(cycles, fwidth(local.x / more.z)) * (loaded ? 0.35 : 0.55);
    }
    if (zone == BELT) {
        float way = along * carried.w;
        return stripes((way - more.y) / more.z, fwidth(way / more.z)) * 0.35;
    }
    if (zone == RIM) {
        return stripes(atan(local.y, local.x) / 6.2831853 * more.z, fwidth(local.x) / 0.001) * 0.4;
    }
    return 0.0;
}
#endif

#ifdef INK
vec3 loadInk() {
    float value = carried.y;
    if (zone == LOAD) {
        value = along < carried.w
                ? mix(carried.x, carried.y, along / max(carried.w, 1e-4))
                : mix(carried.y, carried.z, (along - carried.w) / max(1.0 - carried.w, 1e-4));
    }
    return texture(ink, vec2((clamp(value, 0.0, 1.0) * 255.0 + 0.5) / 256.0, 0.5)).rgb;
}
#endif

void main() {
    vec3 base = own;
#ifdef INK
    bool takes = zone == LOAD || zone == SPRING || zone == BLOCK || zone == THREAD || zone == BELT || zone == MOTOR;
    bool loaded = takes && carried.y >= 0.0;
#endif
#ifdef PATTERN
    float line = pattern(loaded);
    base = mix(base, edge, line);
#endif
    vec3 c = base * mix(warm, vec3(1.0), clamp(lightness, 0.0, 1.0));
    c = mix(c, edge, shade * inShadow());
#ifdef INK
    if (loaded) {
        c = loadInk();
#ifdef PATTERN
        if (zone == THREAD) c = mix(c, edge, line);
#endif
    }
#endif
    c = mix(c, paper, pale);
    result = vec4(c, 1.0);
}
