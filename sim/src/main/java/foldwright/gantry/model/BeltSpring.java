// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static java.lang.Math.fma;

import foldwright.gantry.route.Section;

/**
 * A section of belt as a spring that only pulls: extension = offset + row.q + arms.angles, length =
 * l0 + lx s + ly y. Row columns are bridge x, y, yaw, carriage x, y, yaw, of the centres of mass.
 */
final class BeltSpring {
    final int index;
    final Rotor start;
    final Rotor end;
    final double startArm;
    final double endArm;
    final double pretension;
    final double ea;
    double length0;
    double lengthX;
    double lengthY;
    double offset;
    double g0;
    double g1;
    double g2;
    double g3;
    double g4;
    double g5;

    /** Tension at the last evaluation [N]. */
    double tension;

    /** The next section of its chain. */
    BeltSpring next;

    BeltSpring(int index, Section section, double pretension, double ea, RotorSet rotors) {
        this.index = index;
        this.pretension = pretension;
        this.ea = ea;
        // Ends without an axle turn with a rotor that stands still.
        boolean starts = section.startAxle() >= 0;
        boolean ends = section.endAxle() >= 0;
        start = starts ? rotors.rotors[section.startAxle()] : rotors.still;
        end = ends ? rotors.rotors[section.endAxle()] : rotors.still;
        startArm = starts ? section.startArm() : 0;
        endArm = ends ? section.endArm() : 0;
    }

    /** Share of the extension that a mirrored motion leaves as it is, at a place ahead [m]. */
    double even(double yb, double yc) {
        return fma(g4, yc, fma(g1, yb, offset));
    }

    /** Share of the extension whose sign a mirrored motion changes, at a place ahead [m]. */
    double odd(double xb, double th, double xc, double tc) {
        return fma(g0, xb, g3 * xc) + fma(g2, th, g5 * tc);
    }

    /** Length of the belt that stretches, with the carriage in the middle of the bridge [m]. */
    double length(double y) {
        return fma(lengthY, y, length0);
    }

    /** What a place of the carriage on the bridge adds to the length [m]. */
    double longer(double s) {
        return lengthX * s;
    }

    /** Sets and gives the tension for an extension by the bodies and a length [N]. */
    double tighten(double extension, double length) {
        double turn = startArm * start.ahead + endArm * end.ahead;
        double t = fma(ea / length, extension + turn, pretension);
        t = t < 0 ? 0 : t;
        tension = t;
        return t;
    }

    /** Length of the belt that stretches [m]. */
    double length(double s, double y) {
        return length0 + lengthX * s + lengthY * y;
    }
}
