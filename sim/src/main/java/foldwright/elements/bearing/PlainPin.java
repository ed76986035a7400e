// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.bearing;

import foldwright.elements.Domain;

/**
 * A pin through an eye, held on both sides: mean pressure in the hole and shear of the pin
 * (textbook mean values; pressure peaks in a loose hole are higher).
 *
 * @param diameter d of the pin [m]
 * @param width b, length of the eye along the pin [m]
 */
public record PlainPin(double diameter, double width) {
    public PlainPin {
        Domain.positive("pin diameter", diameter, "m");
        Domain.positive("eye width", width, "m");
    }

    /** Mean pressure on the projected area, F/(d b) [Pa]. */
    public double pressure(double force) {
        return Math.abs(force) / (diameter * width);
    }

    /** Mean shear of a pin cut in two planes, 2F/(pi d^2) [Pa]. */
    public double doubleShear(double force) {
        return 2 * Math.abs(force) / (Math.PI * diameter * diameter);
    }

    /** Mean shear of a pin cut in one plane, 4F/(pi d^2) [Pa]. */
    public double singleShear(double force) {
        return 2 * doubleShear(force);
    }

    /** Pressure times rubbing speed at a turning rate [rad/s] [Pa·m/s]. */
    public double pv(double force, double rate) {
        return pressure(force) * Math.abs(rate) * diameter / 2;
    }

    /** Friction torque mu F d/2 [N·m]. */
    public double frictionTorque(double force, double friction) {
        return friction * Math.abs(force) * diameter / 2;
    }
}
