// Vertex and instance data, and the coil that closes. A plain mesh has coil.x = 0.
uniform vec4 coil;      // turns in all, mean radius below, above, wire radius [m]

layout(location = 3) in vec4 row0;
layout(location = 4) in vec4 row1;
layout(location = 5) in vec4 row2;
layout(location = 6) in vec4 colour;   // own colour, and 1 where it replaces that of the material
layout(location = 7) in vec4 load;     // at 0, at the peak, at 1, way of the peak; peak below 0: none shown
layout(location = 8) in vec4 extra;    // id; height of a coil or phase of a pattern; its pitch; pointed at

vec3 toWorld(vec3 p) {
    vec4 q = vec4(p, 1.0);
    return vec3(dot(row0, q), dot(row1, q), dot(row2, q));
}

vec3 turn(vec3 n) {
    return vec3(dot(row0.xyz, n), dot(row1.xyz, n), dot(row2.xyz, n));
}

vec3 coilNormal(float way, float round) {
    float angle = 6.2831853 * coil.x * way;
    return cos(round) * vec3(cos(angle), sin(angle), 0.0) + vec3(0.0, 0.0, sin(round));
}

// One dead turn at each end rises by the wire's thickness, the turns between share what is left.
vec3 coilPlace(float way, float round, float height) {
    float turns = coil.x * way;
    float wire = 2.0 * coil.w;
    float live = max(coil.x - 2.0, 0.1);
    float pitch = (height - 3.0 * wire) / live;
    float z = coil.w + wire * min(turns, 1.0) + pitch * clamp(turns - 1.0, 0.0, live)
            + wire * max(turns - 1.0 - live, 0.0);
    float radius = mix(coil.y, coil.z, way);
    float angle = 6.2831853 * turns;
    return vec3(radius * cos(angle), radius * sin(angle), z) + coil.w * coilNormal(way, round);
}
