#version 330 core
#include "solid.glsl"
uniform mat4 view;
uniform mat4 light;
out vec3 normalW;
out vec3 local;
out float along;
out vec4 lit;
out float heightW;
flat out int zone;
flat out vec4 own;
flat out vec4 carried;
flat out vec4 more;
void main() {
    vec3 p = solidPlace();
    normalW = solidNormal();
    local = place;
    zone = int(tag.x + 0.5);
    along = tag.y;
    own = colour;
    carried = load;
    more = extra;
    heightW = p.z;
    lit = light * vec4(p + 0.0012 * normalW, 1.0);
    gl_Position = view * vec4(p, 1.0);
}
