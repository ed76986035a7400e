#version 330 core
uniform vec3 materials[16];
uniform vec3 edge;
uniform vec3 paper;
uniform float pale;                 // 1: nearly paper (the last good machine)
uniform vec3 warm;                  // what the dark side is multiplied by
uniform float shade;                // share of ink in a shadow
uniform sampler2D ink;
uniform sampler2DShadow shadow;
in vec3 normalW;
in vec3 local;
in float along;
in vec4 lit;
in float heightW;
flat in int zone;
flat in vec4 own;
flat in vec4 carried;
flat in vec4 more;
out vec4 result;

const int LOAD = 0, STEEL = 3, MOTOR = 5, BELT = 6, SPRING = 7, THREAD = 9, BLOCK = 11, RIM = 12;
const vec3 KEY = vec3(0.42, -0.55, 0.72);
const vec3 FILL = vec3(-0.75, -0.55, 0.36);

// A line pattern of this many cycles; fades to its mean where a cycle gets thinner than the picture can show.
float stripes(float cycles, float density) {
    float wave = 0.5 + 0.5 * sin(6.2831853 * cycles);
    return mix(wave, 0.5, smoothstep(0.30, 0.75, density));
}

float inShadow() {
    vec3 p = lit.xyz * 0.5 + 0.5;
    vec2 texel = 1.0 / vec2(textureSize(shadow, 0));
    float sum = 0.0;
    sum += texture(shadow, vec3(p.xy + texel * vec2(-0.7, -0.4), p.z));
    sum += texture(shadow, vec3(p.xy + texel * vec2(0.4, -0.7), p.z));
    sum += texture(shadow, vec3(p.xy + texel * vec2(0.7, 0.4), p.z));
    sum += texture(shadow, vec3(p.xy + texel * vec2(-0.4, 0.7), p.z));
    return 1.0 - 0.25 * sum;
}

void main() {
    vec3 n = normalize(normalW);
    bool takes = zone == LOAD || zone == SPRING || zone == BLOCK || zone == THREAD || zone == BELT || zone == MOTOR;
    bool loaded = takes && carried.y >= 0.0;
    vec3 base = own.a > 0.5 ? own.rgb : materials[zone];
    float line = 0.0;
#ifdef PATTERN
    if (zone == THREAD) {
        float cycles = local.x / more.z - atan(local.z, local.y) / 6.2831853;
        line = stripes(cycles, fwidth(local.x / more.z)) * (loaded ? 0.35 : 0.55);
    } else if (zone == BELT) {
        float way = along * carried.w;
        line = stripes((way - more.y) / more.z, fwidth(way / more.z)) * 0.35;
    } else if (zone == RIM) {
        line = stripes(atan(local.y, local.x) / 6.2831853 * more.z, fwidth(local.x) / 0.001) * 0.4;
    }
#endif
    vec3 c;
    if (loaded) {
        float value = along < carried.w
                ? mix(carried.x, carried.y, along / max(carried.w, 1e-4))
                : mix(carried.y, carried.z, (along - carried.w) / max(1.0 - carried.w, 1e-4));
        if (zone == THREAD || zone == SPRING || zone == BLOCK || zone == BELT || zone == MOTOR) value = carried.y;
        c = texture(ink, vec2((clamp(value, 0.0, 1.0) * 255.0 + 0.5) / 256.0, 0.5)).rgb;
        c = mix(c, edge, line * (zone == THREAD ? 1.0 : 0.0));
    } else {
        float key = max(dot(n, normalize(KEY)), 0.0);
        float fill = max(dot(n, normalize(FILL)), 0.0);
        float light = clamp(0.15 + 0.85 * key + 0.45 * fill, 0.0, 1.0);
        base = mix(base, edge, line);
        c = base * mix(warm, vec3(1.0), light);
        c = mix(c, edge, shade * inShadow());
    }
    c = mix(c, paper, pale);
    result = vec4(c, 1.0);
}
