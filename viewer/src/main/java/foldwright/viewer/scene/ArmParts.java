// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.lift.LiftNames;
import foldwright.machine.Machine;
import foldwright.machine.linkage.CrossBar;
import foldwright.machine.linkage.PinPlace;
import foldwright.viewer.mesh.Mesh;
import foldwright.viewer.mesh.Solid;
import foldwright.viewer.mesh.Zone;

/** Arms with their bosses and pins, and the bars that join the two sides. */
final class ArmParts {
    /** Boss over arm depth, as drawn in workshop books. */
    private static final double BOSS = 1.2;

    private final Machine machine;
    private final LiftShape shape;
    private final PartList out;

    ArmParts(Machine machine, LiftShape shape, PartList out) {
        this.machine = machine;
        this.shape = shape;
        this.out = out;
    }

    /**
     * The side of results that lies at this sign of y (the file's back is the left one seen from
     * the fixed feet).
     */
    static LiftNames.Side side(int sign) {
        return sign > 0 ? LiftNames.Side.LEFT : LiftNames.Side.RIGHT;
    }

    void add() {
        double half = shape.thickness() / 2;
        Mesh arm =
                new Solid()
                        .zone(Zone.LOAD)
                        .along(0, shape.arm().length())
                        .link(shape.arm().length(), shape.depth(), -half, half)
                        .mesh();
        for (int side = -1; side <= 1; side += 2) {
            for (int stage = 1; stage <= shape.stages(); stage++) {
                out.add(
                        LiftNames.risingArm(side(side), stage),
                        PartKind.ARM,
                        arm,
                        out.bodies.rising(stage),
                        PartList.at(0, shape.armY(side, false), 0));
                out.add(
                        LiftNames.fallingArm(side(side), stage),
                        PartKind.ARM,
                        arm,
                        out.bodies.falling(stage),
                        PartList.at(0, shape.armY(side, true), 0));
            }
            pins(side);
        }
        machine.lift().crossBars().forEach(this::crossBar);
    }

    private void pins(int side) {
        int n = shape.stages();
        double length = shape.arm().length();
        for (int level = 0; level <= n; level++) {
            PinPlace fixed =
                    level == 0
                            ? PinPlace.BASE_FIXED
                            : level == n ? PinPlace.DECK_FIXED : PinPlace.JUNCTION;
            PinPlace sliding =
                    level == 0
                            ? PinPlace.BASE_SLIDER
                            : level == n ? PinPlace.DECK_SLIDER : PinPlace.JUNCTION;
            boolean top = level == n;
            int risingBody = out.bodies.rising(top ? n : level + 1);
            int fallingBody = out.bodies.falling(top ? n : level + 1);
            pin(
                    LiftNames.fixedPin(side(side), level),
                    fixed,
                    side,
                    top ? fallingBody : risingBody,
                    top ? length : 0);
            pin(
                    LiftNames.slidingPin(side(side), level),
                    sliding,
                    side,
                    top ? risingBody : fallingBody,
                    top ? length : 0);
        }
        for (int stage = 1; stage <= n; stage++) {
            pin(
                    LiftNames.centrePin(side(side), stage),
                    PinPlace.CENTRE,
                    side,
                    out.bodies.rising(stage),
                    shape.arm().centrePin() * length);
        }
    }

    private void pin(String name, PinPlace place, int side, int body, double along) {
        double radius = machine.lift().pinAt(place).radius();
        double boss = Math.max(BOSS * shape.depth() / 2, 1.5 * radius);
        double rim = 0.0004;
        double in = side > 0 ? shape.inside() - rim : -shape.outside() - rim;
        double end = side > 0 ? shape.outside() + rim : -shape.inside() + rim;
        double proud = 0.0012;
        Mesh mesh =
                new Solid()
                        .zone(Zone.LOAD)
                        .at(0, 0, 0)
                        .alongY()
                        .bar(boss, in, end, 28)
                        .zone(Zone.BRONZE)
                        .bar(Math.min(radius, 0.6 * boss), in - proud, end + proud, 18)
                        .mesh();
        out.add(name, PartKind.PIN, mesh, body, PartList.at(along, 0, 0));
    }

    private void crossBar(CrossBar bar) {
        int n = shape.stages();
        double length = shape.arm().length();
        int stage = Math.max(1, Math.min(n, bar.stage()));
        int body =
                switch (bar.at()) {
                    case BASE_FIXED -> out.bodies.rising(1);
                    case BASE_SLIDER -> out.bodies.falling(1);
                    case CENTRE -> out.bodies.rising(stage);
                    case JUNCTION -> out.bodies.rising(Math.min(n, stage + 1));
                    case DECK_FIXED -> out.bodies.falling(n);
                    case DECK_SLIDER -> out.bodies.rising(n);
                };
        double along =
                switch (bar.at()) {
                    case CENTRE -> shape.arm().centrePin() * length;
                    case DECK_FIXED, DECK_SLIDER -> length;
                    default -> 0;
                };
        double r = Math.min(bar.section().depth(), bar.section().width()) / 2;
        Mesh mesh =
                new Solid()
                        .zone(Zone.STEEL)
                        .at(0, 0, 0)
                        .alongY()
                        .bar(r, -shape.inside(), shape.inside(), 18)
                        .mesh();
        out.add("cross bar", PartKind.CROSS_BAR, mesh, body, PartList.at(along, 0, 0));
    }
}
