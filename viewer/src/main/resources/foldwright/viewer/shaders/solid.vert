#version 330 core
#include "solid.glsl"
uniform mat4 view;
uniform mat4 light;
uniform vec3 materials[16];
out float lightness;     // 0 dark side, 1 full light
out vec3 lit;            // in the shadow map
flat out vec3 own;
#ifdef INK
out float along;
flat out vec4 carried;
flat out int zone;
#endif
#ifdef PATTERN
out vec3 local;
flat out vec4 more;
#endif
#ifdef ID
flat out float id;
#endif

const vec3 KEY = vec3(0.42, -0.55, 0.72);
const vec3 FILL = vec3(-0.75, -0.55, 0.36);

void main() {
    vec3 p = solidPlace();
    vec3 n = normalize(solidNormal());
    int material = int(tag.x + 0.5);
    lightness = 0.15 + 0.85 * max(dot(n, normalize(KEY)), 0.0) + 0.45 * max(dot(n, normalize(FILL)), 0.0);
    lit = (light * vec4(p + 0.0012 * n, 1.0)).xyz * 0.5 + 0.5;
    own = colour.a > 0.5 ? colour.rgb : materials[material];
#ifdef INK
    zone = material;
    along = tag.y;
    carried = load;
#endif
#ifdef PATTERN
    local = place;
    more = extra;
#endif
#ifdef ID
    id = extra.x;
#endif
    gl_Position = view * vec4(p, 1.0);
}
