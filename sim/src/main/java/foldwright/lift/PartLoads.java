// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.Linkage.ArmPart;
import foldwright.lift.Linkage.PinPart;
import foldwright.machine.linkage.ArmName;
import foldwright.machine.linkage.PinPlace;
import foldwright.mechanics.body.State;
import foldwright.mechanics.solve.Equilibrium;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads pin forces, bearing pressures, and bending moment, thrust and stress of the arms, and
 * forces of the helper springs from a balance of loads.
 *
 * <p>Stress is that of a straight beam: bending moment at the centre pin over the section with the
 * pin hole taken out of its depth, plus thrust over the net area. Lateral bending from the offset
 * of the two arms of a cross is left out, and so are stress peaks at the hole.
 */
final class PartLoads {
    private final LiftModel model;
    private final List<PinReader> pins = new ArrayList<>();
    private final List<ArmReader> arms = new ArrayList<>();
    private final List<SpringWire> wires = new ArrayList<>();

    PartLoads(LiftModel model) {
        this.model = model;
        for (PinPart p : model.linkage().pins()) {
            pins.add(new PinReader(p, model.mechanism().bodies().get(p.joint().body(0))));
        }
        double hole = model.machine().lift().pinAt(PinPlace.CENTRE).diameter();
        for (ArmPart a : model.linkage().arms()) {
            NetSection net = NetSection.of(a.arm(), hole);
            arms.add(new ArmReader(a, net, end(a, 0), end(a, 1)));
        }
        model.springs().forEach(p -> wires.add(new SpringWire(p.spring())));
    }

    /** Readers of all pins, in the order of the model. */
    List<PinReader> pins() {
        return pins;
    }

    /** Readers of all arms, in the order of the model. */
    List<ArmReader> arms() {
        return arms;
    }

    CurvePoint.Parts read(Equilibrium balance, State s) {
        List<PinLoad> pinLoads = new ArrayList<>(pins.size());
        for (PinReader p : pins) {
            p.read(balance, s);
            pinLoads.add(p.load());
        }
        List<ArmLoad> armLoads = new ArrayList<>(arms.size());
        double gravity = -model.mechanism().gravity().z();
        for (ArmReader a : arms) {
            armLoads.add(a.load(balance, s, gravity));
        }
        return new CurvePoint.Parts(pinLoads, armLoads, springs(s));
    }

    private List<SpringLoad> springs(State s) {
        List<SpringLoad> loads = new ArrayList<>(wires.size());
        for (int i = 0; i < wires.size(); i++) {
            SpringPart p = model.springs().get(i);
            double extent = p.extent(p.along().value(s));
            double force = p.law().force(extent);
            loads.add(
                    new SpringLoad(
                            p.name(),
                            p.law().measure(),
                            force,
                            extent,
                            p.law().freeCoordinate(),
                            wires.get(i).stress(force),
                            wires.get(i).allowed()));
        }
        return loads;
    }

    /** The pin at the lower (0) or upper (1) end of an arm. */
    private PinReader end(ArmPart arm, int upper) {
        boolean fromFixed = arm.kind() == ArmName.FROM_FIXED_END;
        boolean atFixed = fromFixed == (upper == 0);
        int row = arm.stage() - 1 + upper;
        for (PinReader p : pins) {
            if (p.part().side() == arm.side()
                    && p.part().place() != PinPlace.CENTRE
                    && p.part().row() == row
                    && (p.part().end() == Linkage.End.FIXED) == atFixed) {
                return p;
            }
        }
        throw new IllegalStateException("arm \"" + arm.name() + "\" ends without a pin");
    }
}
