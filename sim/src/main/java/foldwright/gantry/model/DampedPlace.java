// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/**
 * Where bridge and carriage are, ahead by the belts' damping time: a belt's tension is linear in
 * place and speed, so that one sum over q + tau v serves both. Beside it the place that the free
 * lengths of the belts follow.
 */
final class DampedPlace {
    double xb;
    double yb;
    double th;
    double xc;
    double yc;
    double tc;

    /** Carriage along the bridge [m]. */
    double s;

    /** Bridge along the rails [m]. */
    double y;
}
