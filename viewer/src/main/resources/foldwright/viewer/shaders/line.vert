#version 330 core
#include "pose.glsl"
layout(location = 0) in vec3 from;
layout(location = 1) in vec3 to;
layout(location = 2) in vec3 faceA;
layout(location = 9) in vec3 faceB;
layout(location = 10) in float corner;
uniform mat4 view;
uniform vec3 away;       // view direction, from the eye
uniform vec2 size;       // of the picture [px]
uniform float widths[2]; // silhouette, crease [px]
uniform float pull;      // towards the eye, in depth
out float across;
out float halfWidth;
flat out float pointed;
flat out float strength;
void main() {
#ifdef COIL
    const float thin = 0.62;
    vec3 p0 = toWorld(coilPlace(from.x, from.y, extra.y));
    vec3 p1 = toWorld(coilPlace(to.x, to.y, extra.y));
    vec3 n0 = turn(coilNormal(faceA.x, faceA.y));
    vec3 n1 = turn(coilNormal(faceB.x, faceB.y));
#else
    const float thin = 1.0;
    vec3 p0 = toWorld(from);
    vec3 p1 = toWorld(to);
    vec3 n0 = turn(faceA);
    vec3 n1 = turn(faceB);
#endif
    float a = dot(n0, away);
    float b = dot(n1, away);
    bool silhouette = a * b <= 0.0;
    bool crease = dot(n0, n1) < 0.866 && min(a, b) < 0.0;
    pointed = extra.w;
    strength = colour.a < 0.0 ? -colour.a : 1.0;
    across = 0.0;
    halfWidth = 0.0;
    if (!silhouette && !crease) {
        // One point inside the picture: outside it, the rest of the call would be clipped one by one.
        gl_Position = vec4(0.0, 0.0, 0.0, 1.0);
        return;
    }
    vec4 c0 = view * vec4(p0, 1.0);
    vec4 c1 = view * vec4(p1, 1.0);
    vec2 s0 = c0.xy * size * 0.5;
    vec2 s1 = c1.xy * size * 0.5;
    vec2 dir = s1 - s0;
    float len = length(dir);
    dir = len > 1e-4 ? dir / len : vec2(1.0, 0.0);
    vec2 side = vec2(-dir.y, dir.x);
    halfWidth = 0.5 * (silhouette ? widths[0] : widths[1]) * (pointed > 0.5 ? 2.0 : 1.0) * thin;
    float reach = halfWidth + 0.75;
    bool end = corner > 1.5;
    across = (corner == 0.0 || corner == 3.0) ? -reach : reach;
    vec2 px = (end ? s1 + dir * 0.3 : s0 - dir * 0.3) + side * across;
    float z = (end ? c1.z : c0.z) - pull;
    gl_Position = vec4(px * 2.0 / size, z, 1.0);
}
