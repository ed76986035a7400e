// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.gantry.route.Pose;
import foldwright.gantry.route.Travel;
import foldwright.machine.file.MachineFile;
import foldwright.proof.GantryCases;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Belts that weigh something. Hand sums for point wheels: belt that does not stretch runs at x' +
 * y' or y' - x' along the rails and at x' along the bridge, which carries it sideways at y'. Summed
 * over the strands the place drops out: a single loop moves with all its 4 D + 4 w in x and in y.
 */
class BeltMassTest {
    private static final double MU = 0.0083;
    private static final double W = GantryCases.W;
    private static final double D = GantryCases.DEPTH;

    private static GantryModel heavy(GantryModel model) {
        return model.with(model.layout().withBelts(b -> b.withLinearMass(MU)));
    }

    private static RidingLoad riding(GantryModel model, double x, double y) {
        GantryKernel k = new GantryKernel(model);
        k.system.place(Pose.at(x, y));
        return RidingLoad.standing(model, k.system, k.relation);
    }

    private static void agree(double found, double expected) {
        assertThat(found).isCloseTo(expected, within(1e-3 * expected));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.09, 0, 0.05})
    void singleLoopMovesWithItsWholeLength(double x) {
        RidingLoad r = riding(heavy(GantryCases.S1.singleLoop(GantryCases.POINT)), x, 0.2 + x);
        agree(r.totalX(), MU * (4 * D + 4 * W));
        agree(r.totalY(), MU * (4 * D + 4 * W));
        // Of it the strands along the bridge pull at its ends; the rest turns with the motors.
        agree(r.massX(), MU * 4 * W);
        agree(r.massY(), MU * 4 * W);
        agree(r.axleInertia(0), MU * 2 * D * GantryCases.POINT * GantryCases.POINT);
    }

    @Test
    void crossedAndSideDrivenLayouts() {
        RidingLoad crossed = riding(heavy(GantryCases.S1.crossed(GantryCases.POINT)), 0.04, 0.1);
        agree(crossed.totalX(), MU * (4 * D + 8 * W));
        agree(crossed.totalY(), MU * (4 * D + 8 * W));
        agree(crossed.massX(), MU * 4 * W);
        GantryModel sides = GantryCases.S1.sideDriven(GantryCases.POINT, 4e4, 2e4, 3);
        RidingLoad both = riding(heavy(sides), 0.04, 0.1);
        // The belt on the bridge turns with its motor; along the rails the bridge carries it.
        agree(both.totalX(), MU * 4 * W);
        agree(both.massY(), MU * 4 * W);
        agree(both.totalY(), MU * (4 * W + 2 * 2 * D));
        assertThat(both.massX()).isLessThan(1e-30);
    }

    /** The strands along the bridge are two bars of 2 w with it in yaw. */
    @Test
    void strandsAlongTheBridgeTurnWithIt() {
        GantryModel model = heavy(GantryCases.S1.singleLoop(GantryCases.POINT));
        double own = model.bridge().yawInertia();
        agree(new GantryKernel(model).bridge.inertia - own, MU * 4 * W * W * W / 3);
    }

    /** Steady acceleration along the bridge: the ends of the bridge feel carriage and 4 w. */
    @Test
    void rackingAndTensionsBySteadyAcceleration() {
        double a = 1e-3;
        GantryModel model =
                heavy(GantryCases.S1.singleLoop(GantryCases.POINT))
                        .with(new CarriageGuide(2, 0.05, 1e7, 0, 1e7, 0, 0, 0));
        GantryState s =
                new Statics(model, Statics.Hold.ROTORS).settle(0, 0.18, Load.accelerating(a, 0));
        double pulled = GantryCases.CARRIAGE + MU * 4 * W;
        double moment = (-W * pulled + GantryCases.CARRIAGE * GantryCases.CENTRE) * a;
        double skew = moment / GantryCases.GUIDE;
        assertThat(s.skew()).isCloseTo(skew, within(1e-4 * Math.abs(skew)));
        double difference = s.tensions().get(2) - s.tensions().get(0);
        assertThat(difference).isCloseTo(pulled * a, within(1e-4 * pulled * a));
    }

    /**
     * Two bars of belt of length y + w from held motors to the carriage, as waves: beta tan(beta) =
     * 2 mu L / m, f = beta sqrt(EA/mu) / (2 pi L) (tip mass on elastic bars, S. P. Timoshenko,
     * Vibration Problems in Engineering, from memory). The model lets the strands along the bridge
     * ride at full speed, and is 0.5 % low.
     */
    @Test
    void ringingOfTheCarriageIsHalfAPercentLow() {
        GantryCases c = GantryCases.S1;
        GantryModel model = heavy(c.singleLoop(GantryCases.POINT)).with(GantryCases.guide(1e6));
        double length = 0.18 + W;
        double wave = wave(2 * MU * length / GantryCases.CARRIAGE);
        double f = wave * Math.sqrt(GantryCases.EA / MU) / (2 * Math.PI * length);
        Modes.Mode mode =
                Modes.at(model, 0, 0.18, Statics.Hold.ROTORS).modes().stream()
                        .filter(m -> Math.abs(m.carriageX()) > 1.2)
                        .findFirst()
                        .orElseThrow();
        assertThat(mode.frequency() / f).isBetween(0.994, 0.997);
    }

    private static double wave(double ratio) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double mid = 0.5 * (low + high);
            if (mid * Math.tan(mid) < ratio) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return low;
    }

    /** Real wheels, all layouts: energy of every point of the belt, its place differenced. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "class-plotter",
                "van-bench",
                "field-printer",
                "gantry-one-end",
                "gantry-riding-motors"
            })
    void energyOfEveryPointOfTheBelt(String scene) throws Exception {
        Path file = Path.of("..", "scenes", scene + ".json");
        GantryModel model =
                GantryAssembly.of(MachineFile.read(file).machine().gantry().orElseThrow())
                        .weightlessIdlers();
        Travel t = model.layout().travel();
        RidingLoad riding = riding(model, 0.01, t.yMid());
        BeltPoints points = new BeltPoints(model, 0.01, t.yMid());
        double[] mass = points.movingMass();
        agree(riding.totalX(), mass[0]);
        agree(riding.totalY(), mass[1]);
        // A belt on the bridge turns with its motor, though rounded places tilt it by a hair.
        if (!scene.contains("plotter") && !scene.contains("van")) {
            assertThat(riding.massX()).isLessThan(0.1 * riding.totalX() + 4e-4);
        }
        // What one strand loses another gains.
        RidingLoad corner = riding(model, t.xMax(), t.yMin());
        agree(corner.totalX(), riding.totalX());
        agree(corner.totalY(), riding.totalY());
        agree(corner.massX() + 1, riding.massX() + 1);
        // What the diagonal leaves out.
        assertThat(Math.abs(mass[2])).isLessThan(2e-3 * Math.max(mass[0], mass[1]));
    }
}
