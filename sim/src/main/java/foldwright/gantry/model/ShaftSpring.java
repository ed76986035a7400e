// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/** An elastic shaft between two rotors. */
final class ShaftSpring {
    final Rotor first;
    final Rotor second;
    final double stiffness;
    ShaftSpring next;

    ShaftSpring(Rotor first, Rotor second, double stiffness) {
        this.first = first;
        this.second = second;
        this.stiffness = stiffness;
    }

    void evaluate(double damping) {
        double turn = first.angle - second.angle;
        double t = stiffness * (turn + damping * (first.predicted - second.predicted));
        first.driven -= t;
        second.driven += t;
    }
}
