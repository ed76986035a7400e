// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.elements.spring.SpringLaw;
import foldwright.machine.spring.HelperSpring;
import foldwright.mechanics.force.ForceLaw;
import foldwright.mechanics.force.LawForce;
import foldwright.mechanics.joint.Coordinate;

/**
 * One helper spring in a mechanism: its law acts over x = start + sense times a coordinate.
 *
 * @param name see {@link LiftNames}
 * @param spring its description
 * @param law force over length [m], or torque over leg angle [rad]
 * @param along coordinate of the mechanism [m or rad]
 * @param start length or angle where the coordinate is zero [m or rad]
 * @param sense +1 or -1
 * @param force the element in the mechanism
 */
record SpringPart(
        String name,
        HelperSpring spring,
        SpringLaw law,
        Coordinate along,
        double start,
        double sense,
        LawForce force) {

    /** Length or leg angle at a value of the coordinate [m or rad]. */
    double extent(double coordinate) {
        return start + sense * coordinate;
    }

    /** The law as the solver wants it. */
    static ForceLaw adapt(SpringLaw law, double start, double sense) {
        return (value, rate, time, out) -> {
            double x = start + sense * value;
            out.clear();
            out.force = sense * law.force(x);
            out.stiffness = law.stiffness(x);
            out.energy = law.energy(x);
        };
    }
}
