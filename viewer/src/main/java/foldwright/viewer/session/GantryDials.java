// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.machine.Machine;
import foldwright.machine.gantry.Gantry;
import foldwright.study.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The numbers of a gantry that decide how square it moves. */
public final class GantryDials {
    static final String HEAD = "gantry.carriage.mass";

    private GantryDials() {}

    /** The dials a gantry has, the most telling first; none without a gantry. */
    public static List<Dial> of(Machine machine) {
        List<Dial> out = new ArrayList<>();
        if (machine.gantry().isEmpty()) {
            return out;
        }
        Gantry gantry = machine.gantry().get();
        double a = gantry.moves().acceleration();
        out.add(
                dial(
                        "gantry.moves.acceleration",
                        "acceleration",
                        Shown.METRE_PER_SECOND_SQUARED,
                        new double[] {0.125 * a, 2 * a},
                        g -> g.moves().acceleration()));
        gantry.legs()
                .yawStiffness()
                .ifPresent(
                        k ->
                                out.add(
                                        dial(
                                                "gantry.legs.yawStiffness",
                                                "yaw stiffness",
                                                Shown.NEWTON_METRE_PER_RADIAN,
                                                new double[] {0.25 * k, 4 * k},
                                                g -> g.legs().yawStiffness().orElse(k))));
        double play = gantry.legs().guide().block().clearance();
        if (play > 0) {
            out.add(
                    dial(
                            "gantry.legs.guide.block.clearance",
                            "play of the blocks",
                            Shown.MILLIMETRE,
                            new double[] {0, 2 * play},
                            g -> g.legs().guide().block().clearance()));
        }
        double head = gantry.carriage().mass();
        out.add(
                dial(
                        HEAD,
                        "head",
                        Shown.KILOGRAM,
                        new double[] {0.25 * head, 2 * head},
                        g -> g.carriage().mass()));
        if (gantry.belts().size() == 1) {
            double tension = gantry.belts().get(0).pretension();
            out.add(
                    dial(
                            "gantry.belts[0].pretension",
                            "belt pretension",
                            Shown.NEWTON,
                            new double[] {0.3 * tension, 2 * tension},
                            g -> g.belts().get(0).pretension()));
        }
        double speed = gantry.moves().speed();
        out.add(
                dial(
                        "gantry.moves.speed",
                        "speed",
                        Shown.MILLIMETRE_PER_SECOND,
                        new double[] {0.25 * speed, 3 * speed},
                        g -> g.moves().speed()));
        return out;
    }

    private static Dial dial(
            String path, String name, Shown unit, double[] range, ToDoubleFunction<Gantry> value) {
        return new Dial(
                path,
                name,
                unit,
                range[0],
                range[1],
                Dial.Kind.NUMBER,
                m -> value.applyAsDouble(m.gantry().orElseThrow()));
    }
}
