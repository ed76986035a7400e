// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.gantry.replay.Plotters;
import foldwright.gantry.route.Belt;
import foldwright.gantry.route.IdlerModel;
import foldwright.gantry.route.RoutePoint;
import foldwright.gantry.route.Wheel;
import foldwright.machine.file.MachineFile;
import foldwright.machine.gantry.Floating;
import foldwright.machine.gantry.Gantry;
import foldwright.machine.gantry.Guide;
import foldwright.machine.gantry.Legs;
import foldwright.proof.GantryCases;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a rail that floats and what the drag of bearings change, against sums by hand. */
class GuideEffectsTest {
    private static final double SPACING = 0.06;
    private static final double LATERAL = 8e6;

    private static Gantry plotter() throws Exception {
        Path file = Path.of("..", "scenes", "class-plotter.json");
        return MachineFile.read(file).machine().gantry().orElseThrow();
    }

    /** Two blocks a leg that give by their side springs alone. */
    private static GantryModel legs(Floating floating) throws Exception {
        Gantry g = plotter();
        Guide one = g.legs().guide();
        Guide two =
                new Guide(
                        one.size(),
                        one.length(),
                        2,
                        SPACING,
                        one.block(),
                        one.preload(),
                        one.friction());
        Legs legs =
                new Legs(
                        g.legs().span(),
                        g.legs().travel(),
                        two,
                        floating,
                        OptionalDouble.empty(),
                        OptionalDouble.empty());
        return GantryAssembly.of(g)
                .weightlessBelts()
                .weightlessIdlers()
                .with(GuideAssembly.bridge(legs));
    }

    private static GantryState accelerated(GantryModel model) {
        return new Statics(model, Statics.Hold.ROTORS)
                .settle(0, model.layout().travel().yMid(), Load.accelerating(4, 0));
    }

    /**
     * K = rails x k s^2/2, the one that floats not counted, so a floating rail doubles the skew.
     * Its blocks carry nothing, the others a couple and the push of the carriage.
     */
    @ParameterizedTest
    @EnumSource(
            value = Floating.class,
            names = {"LEFT", "RIGHT"})
    void aFloatingRailDoublesTheSkewAndCarriesNothing(Floating floating) throws Exception {
        GantryModel held = legs(Floating.NONE);
        GantryModel floats = legs(floating);
        double pair = LATERAL * SPACING * SPACING / 2;
        assertThat(held.bridgeGuide().yawStiffness()).isCloseTo(2 * pair, within(1e-9 * pair));
        assertThat(floats.bridgeGuide().yawStiffness()).isCloseTo(pair, within(1e-9 * pair));
        GantryState both = accelerated(held);
        GantryState one = accelerated(floats);
        double moment = 0.42 * 4 * 0.22;
        assertThat(Math.abs(both.skew()))
                .isCloseTo(moment / (2 * pair), within(2e-2 * moment / pair));
        assertThat(one.skew() / both.skew()).isCloseTo(2, within(0.02));
        boolean left = floating == Floating.LEFT;
        RailLoad free = left ? one.blocks().left() : one.blocks().right();
        RailLoad guiding = left ? one.blocks().right() : one.blocks().left();
        assertThat(free.side()).isZero();
        assertThat(free.yaw()).isZero();
        assertThat(Math.abs(guiding.yaw())).isCloseTo(moment, within(0.02 * moment));
        // The belts pull the carriage along the bridge, and the bridge back: m a on the rails.
        assertThat(Math.abs(guiding.side())).isCloseTo(0.42 * 4, within(0.02 * 0.42 * 4));
        double block = moment / SPACING + 0.42 * 4 / 2;
        assertThat(one.blocks().legSide()).isCloseTo(block, within(0.02 * block));
    }

    /** Loads of blocks taken together are those of the blocks one by one. */
    @Test
    void blocksTakenTogetherCarryWhatEachCarries() throws Exception {
        GantryModel each = legs(Floating.NONE);
        GuideBlock.Group pair = new GuideBlock.Group(2, SPACING);
        double yaw = LATERAL * SPACING * SPACING / 2;
        List<GuideBlock> lumped =
                Stream.of(GuideBlock.Rail.values())
                        .map(r -> new GuideBlock(r, 0, 2 * LATERAL, 0, yaw, 0, pair))
                        .toList();
        BlockLoads one = accelerated(each).blocks();
        BlockLoads together =
                accelerated(each.with(new BridgeGuide(each.span() / 2, lumped, 0, 0, 0, 0)))
                        .blocks();
        assertThat(together.legSide()).isCloseTo(one.legSide(), within(1e-6 * one.legSide()));
        assertThat(together.legYaw()).isZero();
    }

    /**
     * Single loop at a steady speed, every idler with a drag d, wheels of radius r. The four on the
     * bridge turn with the carriage: belts pull it with 4 d/r, which racks the bridge by w times
     * that, and each motor gives half of it, 2 d, and d for the idler behind it. Along the rails
     * only those turn.
     */
    @ParameterizedTest
    @EnumSource(IdlerModel.class)
    void dragOfBearings(IdlerModel idlers) {
        double d = 2e-3;
        double r = GantryCases.RADIUS;
        GantryModel plain = Plotters.cured().frictionless().closed();
        GantryModel dragging =
                plain.with(plain.layout().withBelts(b -> dragged(b, d))).with(idlers);
        Steady along = new Steady(dragging, 0.1, 0);
        assertThat(Math.abs(along.torque[0])).isCloseTo(3 * d, within(0.01 * d));
        assertThat(Math.abs(along.torque[1])).isCloseTo(3 * d, within(0.01 * d));
        // Of idlers that are states the pull acts at their axles: their drag does not turn the
        // bridge.
        double lever = idlers == IdlerModel.STATES ? 0.22 - r : 0.22;
        double skew = -lever * 4 * d / r / 7200;
        assertThat(along.skew).isCloseTo(skew, within(0.01 * Math.abs(skew)));
        Steady rails = new Steady(dragging, 0, 0.1);
        assertThat(Math.abs(rails.torque[0])).isCloseTo(d, within(0.01 * d));
        assertThat(Math.abs(rails.torque[1])).isCloseTo(d, within(0.01 * d));
        assertThat(rails.skew).isCloseTo(0, within(1e-3 * Math.abs(skew)));
    }

    private static Belt dragged(Belt belt, double drag) {
        List<RoutePoint> points =
                belt.points().stream()
                        .map(
                                p ->
                                        p instanceof Wheel w && w.axle().isEmpty()
                                                ? w.withBearing(2e-7, drag)
                                                : p)
                        .toList();
        return belt.through(points);
    }

    /** Mean torques and skew over the last of half a second at a steady speed. */
    private static final class Steady {
        final double[] torque = new double[2];
        double skew;

        Steady(GantryModel model, double vx, double vy) {
            double h = 5e-5;
            int steps = 12_000;
            int kept = 4_000;
            GantryKernel k = new GantryKernel(model.with(new Damping(2e-4, 3e-5)));
            double x0 = -0.5 * vx * steps * h;
            double y0 = 0.28 - 0.5 * vy * steps * h;
            k.stand(x0, y0);
            for (int n = 0; n < steps; n++) {
                double t = n * h;
                // Eased in from rest, so that it hardly rings.
                double ease = Math.min(1, t / 0.1);
                double way = t < 0.1 ? 0.05 * ease * ease * ease * (2 - ease) : t - 0.05;
                double share = t < 0.1 ? ease * ease * (3 - 2 * ease) : 1;
                k.command(x0 + vx * way, y0 + vy * way, vx * share, vy * share);
                k.evaluate(h);
                if (n >= steps - kept) {
                    torque[0] += k.motorTorque(0) / kept;
                    torque[1] += k.motorTorque(1) / kept;
                    skew += k.skew() / kept;
                }
                k.advance(h);
            }
        }
    }

    /**
     * A carriage that pushes the bridge towards the motors drags itself w theta aside when the
     * single loop lets the bridge skew by theta, so its push F turns the bridge on by 2 F w theta.
     * The pretension resists with its yaw stiffness K; beyond F = K/(2 w) the middle of the play is
     * no place to stay, although it still is a balance. Own derivation, energy -F w theta^2.
     */
    @Test
    void aPushBeyondWhatThePretensionHoldsTakesTheBridgeToTheEndOfItsPlay() {
        GantryModel model = Plotters.bad().weightlessBelts().weightlessIdlers().frictionless();
        Statics statics = new Statics(model, Statics.Hold.FIELDS);
        double held = statics.kernel().belts.pretensionStiffness + Statics.TETHER * 220;
        double most = held / (model.span() * model.carriage().mass());
        double y = model.layout().travel().yMid();
        double play = model.bridgeGuide().freeYaw();
        for (double share = 0.9; share < 0.985; share += 0.01) {
            GantryState s = statics.settle(0, y, Load.accelerating(0, -share * most));
            assertThat(s.skew()).as("%s of it", share).isCloseTo(0, within(1e-3 * play));
        }
        for (double share = 1.02; share < 1.1; share += 0.01) {
            GantryState s = statics.settle(0, y, Load.accelerating(0, -share * most));
            assertThat(Math.abs(s.skew())).as("%s of it", share).isBetween(play, 1.05 * play);
        }
    }
}
