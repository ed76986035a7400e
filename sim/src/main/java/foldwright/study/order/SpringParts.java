// SPDX-License-Identifier: Apache-2.0
package foldwright.study.order;

import foldwright.machine.Machine;
import foldwright.machine.spring.Coil;
import foldwright.machine.spring.ConicalCoil;
import foldwright.machine.spring.GasSpring;
import foldwright.machine.spring.HelperSpring;
import foldwright.machine.spring.RatedCoil;
import foldwright.machine.spring.RatedTorsion;
import foldwright.machine.spring.SpringLaw;
import foldwright.machine.spring.TorsionAtFlat;
import foldwright.machine.spring.TorsionCoil;
import foldwright.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Helper springs. */
final class SpringParts {
    private static final String COIL = "survive.coil";
    private static final String TORSION = "survive.torsion";

    private final Machine machine;
    private final Uses uses;

    SpringParts(Machine machine, Uses uses) {
        this.machine = machine;
        this.uses = uses;
    }

    List<OrderLine> lines() {
        return machine.springs().stream().map(this::line).toList();
    }

    private OrderLine line(HelperSpring spring) {
        String guide =
                spring.guideDiameter().isPresent()
                        ? ", on guides " + Sizes.length(spring.guideDiameter().getAsDouble())
                        : "";
        return new OrderLine(
                OrderLine.Group.SPRINGS,
                spring.count(),
                kind(spring.law()),
                spring.name() + ": " + size(spring.law()) + guide,
                uses.of(spring.law().turns() ? TORSION : COIL, spring.name()),
                open(spring.law()));
    }

    private static String kind(SpringLaw law) {
        if (law instanceof Coil || law instanceof RatedCoil) {
            return "compression spring";
        }
        if (law instanceof ConicalCoil) {
            return "conical spring";
        }
        return law instanceof GasSpring ? "gas spring" : "torsion spring";
    }

    private static String size(SpringLaw law) {
        if (law instanceof Coil c) {
            return wire(c.wire(), c.meanDiameter(), c.activeCoils())
                    + ", free "
                    + Sizes.length(c.freeLength())
                    + ", solid "
                    + Sizes.length(c.closedLength())
                    + ", "
                    + c.grade();
        }
        if (law instanceof RatedCoil r) {
            return Sizes.given(Dimension.STIFFNESS, r.rate())
                    + ", free "
                    + Sizes.length(r.freeLength())
                    + ", solid "
                    + Sizes.length(r.solidLength())
                    + " or less"
                    + optional(", wire ", r.wire())
                    + optional(", mean diameter ", r.meanDiameter());
        }
        if (law instanceof ConicalCoil c) {
            return "wire "
                    + Sizes.length(c.wire())
                    + ", mean diameter "
                    + Sizes.length(c.smallDiameter())
                    + " to "
                    + Sizes.length(c.largeDiameter())
                    + coils(c.activeCoils())
                    + ", free "
                    + Sizes.length(c.freeLength())
                    + ", "
                    + c.grade();
        }
        return turningOrGas(law);
    }

    private static String turningOrGas(SpringLaw law) {
        if (law instanceof TorsionCoil t) {
            return wire(t.wire(), t.meanDiameter(), t.activeCoils()) + ", " + t.grade();
        }
        if (law instanceof RatedTorsion t) {
            return Sizes.given(Dimension.TORSION_STIFFNESS, t.rate());
        }
        if (law instanceof TorsionAtFlat t) {
            return Sizes.given(Dimension.TORQUE, t.torqueAtFlat())
                    + " when folded flat"
                    + optional(", wire ", t.wire())
                    + optional(", mean diameter ", t.meanDiameter())
                    + (t.activeCoils().isPresent() ? coils(t.activeCoils().getAsDouble()) : "");
        }
        GasSpring g = (GasSpring) law;
        return Sizes.given(Dimension.FORCE, g.force())
                + " extended, "
                + Sizes.given(Dimension.FORCE, g.compressedForce())
                + " pressed in, "
                + Sizes.length(g.extendedLength())
                + " eye to eye, stroke "
                + Sizes.length(g.stroke());
    }

    private static String wire(double wire, double mean, double coils) {
        return "wire "
                + Sizes.length(wire)
                + ", mean diameter "
                + Sizes.length(mean)
                + coils(coils);
    }

    private static String coils(double active) {
        return ", " + Sizes.given(Dimension.RATIO, active) + " active coils";
    }

    private static String optional(String words, OptionalDouble length) {
        return length.isPresent() ? words + Sizes.length(length.getAsDouble()) : "";
    }

    private static List<String> open(SpringLaw law) {
        List<String> open = new ArrayList<>();
        if (law instanceof RatedCoil r && (r.wire().isEmpty() || r.meanDiameter().isEmpty())) {
            open.add("wire, diameter and allowed squeeze, from the maker's list");
        } else if (law instanceof RatedTorsion) {
            open.add("wire, diameter, coils and allowed angle");
        } else if (law instanceof GasSpring) {
            open.add("end fittings");
        }
        if (law.turns()) {
            open.add("hand of winding, legs");
        } else if (law instanceof Coil || law instanceof ConicalCoil) {
            open.add("ground ends");
        }
        return open;
    }
}
