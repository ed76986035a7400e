#include "pose.glsl"
layout(location = 0) in vec3 place;
layout(location = 1) in vec3 normal;
layout(location = 2) in vec2 tag;      // zone, way along

vec3 solidPlace() {
#ifdef COIL
    return toWorld(coilPlace(place.x, place.y, extra.y));
#else
    return toWorld(place);
#endif
}

vec3 solidNormal() {
#ifdef COIL
    return turn(coilNormal(place.x, place.y));
#else
    return turn(normal);
#endif
}
