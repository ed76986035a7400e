// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.proof.GantryCases;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Quasi-static skew, tensions and tool error against the closed forms, point wheels. Loads and
 * differences of pretension are taken at 3 parts in 10 000 of the worked cases: the closed forms
 * are linear, the model is not (at full load the carriage's own shift of 0.05 mm changes a span's
 * length, and with it the result, by 1.5e-4).
 */
class StaticsTest {
    private static final double CLOSE = 1e-6;

    static List<GantryCases> cases() {
        return List.of(small(GantryCases.S1), small(GantryCases.S2));
    }

    private static GantryCases small(GantryCases c) {
        double k = 3e-4;
        Load l = c.load();
        return new GantryCases(
                c.id(),
                c.x(),
                c.y(),
                30 + k * (c.pretension1() - 30),
                30 + k * (c.pretension2() - 30),
                new Load(
                        k * l.ax(),
                        k * l.ay(),
                        k * l.carriageFriction(),
                        k * l.railFriction(),
                        0,
                        0));
    }

    private static GantryState settle(GantryModel model, GantryCases c) {
        // Soft across the bridge, so that rounding of places does not show as force.
        CarriageGuide soft = new CarriageGuide(2, 0.05, 1e7, 0, 1e7, 0, 0, 0);
        return new Statics(model.with(soft), Statics.Hold.ROTORS).settle(c.x(), c.y(), c.load());
    }

    private static void agree(String what, double found, double expected) {
        assertThat(found).as(what).isCloseTo(expected, within(CLOSE * Math.abs(expected)));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void singleLoop(GantryCases c) {
        ClosedForms f = new ClosedForms(c);
        GantryState s = settle(c.singleLoop(GantryCases.POINT), c);
        agree("skew", s.skew(), f.skewSingleLoop());
        double[] t = f.tensionsSingleLoop();
        for (int i = 0; i < 3; i++) {
            agree("tension " + i, s.tensions().get(i), t[i]);
        }
        agreeTool(s.error(), f.toolSingleLoop());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void crossed(GantryCases c) {
        ClosedForms f = new ClosedForms(c);
        GantryState s = settle(c.crossed(GantryCases.POINT), c);
        agree("skew", s.skew(), f.skewCrossed());
        double[] t = f.tensionsCrossed();
        for (int i = 0; i < 4; i++) {
            agree("tension " + i, s.tensions().get(i), t[i]);
        }
        agreeTool(s.error(), f.toolCrossed());
    }

    /** The closed forms know rigid blocks: their give is taken off. */
    private static void agreeTool(ErrorSplit e, double[] tool) {
        // In case S2 the parts of x cancel to a fortieth: measured against the whole way.
        double close = CLOSE * Math.hypot(tool[0], tool[1]);
        assertThat(e.total().x() - e.blockGive().x() - e.carriageTwist().x())
                .isCloseTo(tool[0], within(close));
        assertThat(e.total().y() - e.blockGive().y() - e.carriageTwist().y())
                .isCloseTo(tool[1], within(close));
    }

    /** Real wheels (20 teeth) shift skew by up to 2.5 %, frequencies by up to 0.6 %. */
    @Test
    void realWheelsShiftResultsByAFewPercent() {
        for (GantryCases c : List.of(GantryCases.S1, GantryCases.S2)) {
            double point = settle(c.crossed(GantryCases.POINT), c).skew();
            double real = settle(c.crossed(GantryCases.RADIUS), c).skew();
            assertThat(real).isNotEqualTo(point).isCloseTo(point, within(0.03 * Math.abs(point)));
            double[] f = new double[2];
            double[] radius = {GantryCases.POINT, GantryCases.RADIUS};
            for (int i = 0; i < 2; i++) {
                GantryModel model = c.singleLoop(radius[i]);
                f[i] =
                        Modes.at(model, c.x(), c.y(), Statics.Hold.ROTORS)
                                .modes()
                                .get(1)
                                .frequency();
            }
            assertThat(f[1]).isNotEqualTo(f[0]).isCloseTo(f[0], within(0.01 * f[0]));
        }
    }

    @Test
    void causesAddUpToTheWhole() {
        for (GantryCases c : List.of(GantryCases.S1, GantryCases.S2)) {
            ErrorSplit e = settle(c.crossed(GantryCases.RADIUS), c).error();
            double x =
                    e.beltStretch().x()
                            + e.squareness().x()
                            + e.skewPlay().x()
                            + e.skewFlex().x()
                            + e.blockGive().x()
                            + e.bending().x()
                            + e.carriageTwist().x()
                            + e.motorLag().x();
            assertThat(x).isCloseTo(e.total().x(), within(1e-18));
        }
    }

    /** Equal pretension in the crossed layout: no skew at rest. */
    @Test
    void equalTensionsStandSquare() {
        GantryState s =
                new Statics(GantryCases.S1.crossed(GantryCases.RADIUS), Statics.Hold.ROTORS)
                        .settle(0.03, 0.2, Load.NONE);
        assertThat(s.skew()).isCloseTo(0, within(1e-17));
    }

    /** Side drives: each term of the 2 x 2 balance of y and skew. */
    @ParameterizedTest
    @MethodSource("cases")
    void sideDriven(GantryCases c) {
        ClosedForms f = new ClosedForms(c);
        double k = 2e4;
        double w = ClosedForms.W;
        double r = GantryCases.RADIUS;
        for (double shaft : new double[] {Double.POSITIVE_INFINITY, 3.0, 0}) {
            double right = shaft == 0 ? 0 : 1 / (1 / k + r * r / shaft);
            double scale = GantryCases.POINT / r;
            GantryState s =
                    settle(c.sideDriven(GantryCases.POINT, 4e4, k, shaft * scale * scale), c);
            double a = k + right;
            double b = w * (right - k);
            double d = w * w * (k + right) + GantryCases.GUIDE;
            double m = f.inertiaMoment();
            double det = a * d - b * b;
            double y = (-f.forceY() * d - b * m) / det;
            double theta = (a * m + b * f.forceY()) / det;
            agree("skew", s.skew(), theta);
            agree("y", s.pose().bridgeY() - c.y(), y);
        }
    }

    /** Frictionless push on a bridge with held motors: single loop lets it, crossed resists. */
    @Test
    void onlyTheCrossedLayoutHoldsTheBridgeSquareByBelt() {
        GantryCases c = GantryCases.S1;
        double w = GantryCases.W;
        GantryModel soft = c.singleLoop(GantryCases.POINT).with(GantryCases.guide(1));
        GantryModel crossed = c.crossed(GantryCases.POINT).with(GantryCases.guide(1));
        double push = 1e-4;
        Load load = new Load(0, 0, 0, 0, 0, push);
        double x = 0.05;
        GantryState h = new Statics(soft, Statics.Hold.ROTORS).settle(x, 0.18, load);
        GantryState two = new Statics(crossed, Statics.Hold.ROTORS).settle(x, 0.18, load);
        assertThat(h.skew()).isGreaterThan(1000 * Math.abs(two.skew()));
        // The carriage runs by w theta along the bridge and the bridge by y, tensions unchanged.
        double drag = h.pose().carriageX() - x;
        assertThat(drag).isCloseTo(w * h.skew(), within(2e-3 * Math.abs(drag)));
    }

    /**
     * Moments of both rails add up to what the rails give to the bridge, and each carries half of
     * it: on equal rails a pure yaw moment goes half to each (equilibrium and symmetry).
     */
    @ParameterizedTest
    @MethodSource("cases")
    void railsShareTheMomentOfTheBridge(GantryCases c) {
        GantryState s = settle(c.singleLoop(GantryCases.POINT), c);
        RailLoad left = s.blocks().left();
        RailLoad right = s.blocks().right();
        agree("both rails", left.yaw() + right.yaw(), s.guideMoment());
        agree("left rail", left.yaw(), s.guideMoment() / 2);
        assertThat(Math.signum(left.yaw())).isEqualTo(-Math.signum(s.skew()));
    }
}
