// Vertex and instance data, and (COIL) the coil that closes.

layout(location = 3) in vec4 row0;
layout(location = 4) in vec4 row1;
layout(location = 5) in vec4 row2;
layout(location = 6) in vec4 colour;   // own colour, and 1 where it replaces that of the material
layout(location = 7) in vec4 load;     // at 0, at the peak, at 1, way of the peak; peak below 0: none shown
layout(location = 8) in vec4 extra;    // id; height of a coil or phase of a pattern; its pitch, or of a cone the radius
                                       // of the coil that just touches; pointed at

vec3 toWorld(vec3 p) {
    vec4 q = vec4(p, 1.0);
    return vec3(dot(row0, q), dot(row1, q), dot(row2, q));
}

vec3 turn(vec3 n) {
    return vec3(dot(row0.xyz, n), dot(row1.xyz, n), dot(row2.xyz, n));
}

#ifdef COIL
uniform vec4 coil;      // turns in all, mean radius below, above, wire radius [m]

vec3 coilNormal(float way, float round) {
    float angle = 6.2831853 * coil.x * way;
    return cos(round) * vec3(cos(angle), sin(angle), 0.0) + vec3(0.0, 0.0, sin(round));
}

// Height of a cone's live turns, from its large end: coils give with the cube of their radius, the pitch of those
// larger than the one that just touches is that of coils lying on one another.
float coneRise(float t, float live, float height) {
    float wire = 2.0 * coil.w;
    float step = (coil.y - coil.z) / live;
    float touch = extra.z;
    float closed = clamp((coil.y - touch) / step, 0.0, live);
    float solid = sqrt(max(0.0, wire * wire - step * step));
    float k = 1.0 / (4.0 * step * touch * touch * touch);
    float first = coil.y - step * closed;
    float given = k * (pow(first, 4.0) - pow(coil.z, 4.0));
    float open = live - closed - given;
    if (open < 0.02 * live) return height * t / live;
    float pitch = (height - solid * (closed + given)) / open;
    if (t < closed) return solid * t;
    float here = k * (pow(first, 4.0) - pow(coil.y - step * t, 4.0));
    return solid * closed + pitch * (t - closed) - (pitch - solid) * here;
}

// One dead turn at each end rises by the wire's thickness; the turns of a cylinder between them share what is left.
vec3 coilPlace(float way, float round, float height) {
    float turns = coil.x * way;
    float wire = 2.0 * coil.w;
    float live = max(coil.x - 2.0, 0.1);
    float t = clamp(turns - 1.0, 0.0, live);
    float rise = coil.y > coil.z ? coneRise(t, live, height - 3.0 * wire) : (height - 3.0 * wire) * t / live;
    float z = coil.w + wire * min(turns, 1.0) + rise + wire * max(turns - 1.0 - live, 0.0);
    float radius = mix(coil.y, coil.z, clamp((turns - 1.0) / live, 0.0, 1.0));
    float angle = 6.2831853 * turns;
    return vec3(radius * cos(angle), radius * sin(angle), z) + coil.w * coilNormal(way, round);
}
#endif
