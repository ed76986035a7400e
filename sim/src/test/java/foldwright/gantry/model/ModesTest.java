// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.gantry.route.BeltLayout;
import foldwright.proof.GantryCases;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Natural frequencies with point wheels; expected values and closed forms are derived by hand. */
class ModesTest {
    private static final double CLOSE = 1e-4;

    private static double[] three(GantryModel model, GantryCases c) {
        return Modes.at(model, c.x(), c.y(), Statics.Hold.ROTORS).modes().stream()
                .mapToDouble(Modes.Mode::frequency)
                .limit(3)
                .toArray();
    }

    private static void agree(double[] found, double... expected) {
        for (int i = 0; i < expected.length; i++) {
            assertThat(found[i]).isCloseTo(expected[i], within(CLOSE * expected[i]));
        }
    }

    @Test
    void lockedMotors() {
        GantryCases c = GantryCases.S1;
        agree(three(c.singleLoop(GantryCases.POINT), c), 53.2609, 62.1924, 214.381);
        agree(three(c.crossed(GantryCases.POINT), c), 50.5828, 75.6581, 221.922);
        agree(three(side(c, Double.POSITIVE_INFINITY), c), 35.5881, 53.677, 214.035);
        agree(three(side(c, 0), c), 24.4016, 53.6714, 208.126);
        c = GantryCases.S2;
        agree(three(c.singleLoop(GantryCases.POINT), c), 52.2231, 77.2795, 188);
        agree(three(c.crossed(GantryCases.POINT), c), 53.5917, 86.5282, 193.067);
        agree(three(side(c, Double.POSITIVE_INFINITY), c), 35.447, 53.6758, 184.651);
        agree(three(side(c, 0), c), 23.975, 53.6742, 182.009);
    }

    private static GantryModel side(GantryCases c, double shaft) {
        return c.sideDriven(GantryCases.POINT, 4e4, 2e4, shaft);
    }

    /** omega^2 = (a + b -+ sqrt((a - b)^2 + 4c))/2, carriage in the middle, no offset. */
    @Test
    void pairOfCarriageAndYawInClosedForm() {
        GantryCases c = GantryCases.S1;
        GantryModel model =
                c.singleLoop(GantryCases.POINT)
                        .withCarriage(new BodyMass(GantryCases.CARRIAGE, 1e-7, 0, 0, 0));
        double w = GantryCases.W;
        double k = GantryCases.EA / (c.y() + w);
        double jb = GantryCases.BRIDGE_INERTIA + 1e-7;
        double a = 2 * k / GantryCases.CARRIAGE;
        double b = (2 * k * w * w + GantryCases.GUIDE) / jb;
        double cc = 4 * k * k * w * w / (GantryCases.CARRIAGE * jb);
        double root = Math.sqrt((a - b) * (a - b) + 4 * cc);
        double[] f = three(model, c);
        double low = Math.sqrt((a + b - root) / 2) / (2 * Math.PI);
        double high = Math.sqrt((a + b + root) / 2) / (2 * Math.PI);
        assertThat(f[1]).isCloseTo(low, within(1e-5 * low));
        assertThat(f[2]).isCloseTo(high, within(1e-5 * high));
        assertThat(low).isCloseTo(60.2567, within(1e-4 * low));
        assertThat(high).isCloseTo(221.268, within(1e-4 * high));
    }

    /**
     * Rigid belts leave the single loop one yaw mode in which the carriage runs along by w theta.
     */
    @Test
    void rigidBeltsLeaveTheYawModeOfTheSingleLoop() {
        for (GantryCases c : List.of(GantryCases.S1, GantryCases.S2)) {
            GantryModel model = c.singleLoop(GantryCases.POINT);
            BeltLayout stiff =
                    model.layout().withBelt(0, model.layout().belts().get(0).withStiffness(1e9));
            double w = GantryCases.W;
            double e = GantryCases.CENTRE;
            double inertia =
                    GantryCases.BRIDGE_INERTIA
                            + GantryCases.CARRIAGE * ((w - e) * (w - e) + c.x() * c.x());
            double f = Math.sqrt(GantryCases.GUIDE / inertia) / (2 * Math.PI);
            assertThat(three(model.with(stiff), c)[0]).isCloseTo(f, within(CLOSE * f));
        }
    }

    /**
     * Rotors free in the belts, no field: two zero modes, one of the carriage, one of the bridge.
     * Structure of the model: Sollmann, Jouaneh, Lavender 2010, eq. 19; closed forms ours.
     */
    @Test
    void freeRotors() {
        GantryCases c = GantryCases.S1;
        double[] f = free(c);
        double k = GantryCases.EA / 0.33;
        double kb = GantryCases.EA / 1.38;
        double r = GantryCases.RADIUS;
        double rotor = r * r / (2 * 5.7e-6);
        double carriage = Math.sqrt(2 * k * (1 / GantryCases.CARRIAGE + rotor)) / (2 * Math.PI);
        double bridge =
                Math.sqrt(
                                (2 * k + 4 * kb)
                                        * (1 / (GantryCases.BRIDGE + GantryCases.CARRIAGE) + rotor))
                        / (2 * Math.PI);
        assertThat(f[0]).isCloseTo(0, within(0.05));
        assertThat(f[1]).isCloseTo(0, within(0.05));
        agree(new double[] {f[2], f[3]}, carriage, bridge);
        agree(new double[] {f[2], f[3]}, 99.2166, 104.4254);
        double[] g = free(GantryCases.S2);
        agree(new double[] {g[2], g[3]}, 97.7531, 131.7893);
    }

    /** Rails that hold the bridge square and no torque: the case of the published structure. */
    private static double[] free(GantryCases c) {
        double tiny = 1e-6;
        GantryModel model = c.singleLoop(tiny);
        double scale = tiny / GantryCases.RADIUS;
        List<AxisMotor> loose =
                model.motors().stream()
                        .map(m -> AxisMotor.plain(m.axle(), 0, 5.7e-6 * scale * scale))
                        .toList();
        GantryModel square = model.with(GantryCases.guide(1e9)).withMotors(loose);
        return Modes.at(square, c.x(), c.y(), Statics.Hold.FIELDS).modes().stream()
                .mapToDouble(Modes.Mode::frequency)
                .toArray();
    }

    /** Stepper held by current: 50 T_hold = 13 N m/rad, free rotor 240.4 Hz (computed by hand). */
    @Test
    void rotorInItsField() {
        AxisMotor motor = AxisMotor.plain("a", 0.26, 5.7e-6);
        assertThat(motor.fieldStiffness()).isCloseTo(13, within(1e-9));
        double f = Math.sqrt(motor.fieldStiffness() / 5.7e-6) / (2 * Math.PI);
        assertThat(f).isCloseTo(240.4, within(0.05));
    }
}
