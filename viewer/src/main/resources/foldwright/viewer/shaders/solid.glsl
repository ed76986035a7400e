#include "pose.glsl"
layout(location = 0) in vec3 place;
layout(location = 1) in vec3 normal;
layout(location = 2) in vec2 tag;      // zone, way along

vec3 solidPlace() {
    return coil.x > 0.0 ? toWorld(coilPlace(place.x, place.y, extra.y)) : toWorld(place);
}

vec3 solidNormal() {
    return turn(coil.x > 0.0 ? coilNormal(place.x, place.y) : normal);
}
