// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.machine.spring.Coil;
import foldwright.machine.spring.ConicalCoil;
import foldwright.machine.spring.HelperSpring;
import foldwright.machine.spring.RatedCoil;
import foldwright.viewer.mesh.Mesh;

/** Sizes of helper springs that act along a length, as drawn. */
final class SpringShape {
    private SpringShape() {}

    /** Radius of the largest coil, middle of the wire [m]. */
    static double radius(HelperSpring spring) {
        if (spring.law() instanceof ConicalCoil cone) {
            return cone.largeDiameter() / 2;
        }
        if (spring.law() instanceof RatedCoil rated) {
            return rated.meanDiameter().orElse(0.3 * rated.freeLength()) / 2;
        }
        return spring.law() instanceof Coil coil ? coil.meanDiameter() / 2 : 0.008;
    }

    static double freeLength(HelperSpring spring) {
        if (spring.law() instanceof ConicalCoil cone) {
            return cone.freeLength();
        }
        if (spring.law() instanceof RatedCoil rated) {
            return rated.freeLength();
        }
        return spring.law() instanceof Coil coil ? coil.freeLength() : 0.05;
    }

    static double solidLength(HelperSpring spring) {
        if (spring.law() instanceof RatedCoil rated) {
            return rated.solidLength();
        }
        return spring.law() instanceof Coil coil ? coil.closedLength() : 0.01;
    }

    /** The wound wire with one dead turn at each end. */
    static Mesh.Coil coil(HelperSpring spring) {
        if (spring.law() instanceof ConicalCoil cone) {
            return new Mesh.Coil(
                    cone.activeCoils() + 2,
                    cone.largeDiameter() / 2,
                    cone.smallDiameter() / 2,
                    cone.wire() / 2);
        }
        if (spring.law() instanceof Coil coil) {
            return new Mesh.Coil(
                    coil.activeCoils() + 2,
                    coil.meanDiameter() / 2,
                    coil.meanDiameter() / 2,
                    coil.wire() / 2);
        }
        RatedCoil rated = (RatedCoil) spring.law();
        double r = radius(spring);
        // A spring known by its rate alone is drawn with turns that just close at its solid length.
        double wire = rated.wire().orElse(Math.min(r * 0.45, rated.solidLength() / 6));
        return new Mesh.Coil(Math.max(4, rated.solidLength() / wire), r, r, wire / 2);
    }
}
