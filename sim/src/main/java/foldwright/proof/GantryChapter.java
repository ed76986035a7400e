// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import foldwright.gantry.model.ErrorSplit;
import foldwright.gantry.model.GantryKernel;
import foldwright.gantry.model.GantryModel;
import foldwright.gantry.model.GantryState;
import foldwright.gantry.model.LinearResponse;
import foldwright.gantry.model.Load;
import foldwright.gantry.model.Modes;
import foldwright.gantry.model.Statics;
import foldwright.gantry.route.BeltSystem;
import foldwright.gantry.route.IdlerModel;
import foldwright.gantry.route.Pose;
import java.util.ArrayList;
import java.util.List;

/**
 * Belt gantries with point wheels: lengths, motor relation, tensions, skew, tool error, natural
 * frequencies, time response.
 */
public final class GantryChapter implements ProofChapter {
    private static final String DERIVED =
            "own closed form, derived from belt lengths and statics wheel by wheel";
    private static final String LOOP =
            "closed form; belt terms as in K. S. Sollmann, M. K. Jouaneh, D. Lavender, IEEE/ASME"
                    + " Trans. Mechatronics 15(2) 2010, 280-290, eq. 19";

    private final List<ProofValue> values = new ArrayList<>();

    @Override
    public String title() {
        return "Belt gantries";
    }

    @Override
    public List<ProofValue> compute() {
        values.clear();
        relation();
        lengths();
        skew(GantryCases.S1, -4.875e-05, -1.86545e-05);
        skew(GantryCases.S2, -2.54167e-05, 0.000119713);
        tensions();
        tool();
        frequencies();
        response();
        return List.copyOf(values);
    }

    private void add(
            String id, double computed, double published, String unit, double tol, String source) {
        values.add(ProofValue.relative("GA " + id, computed, published, unit, tol, source));
    }

    private void relation() {
        GantryKernel k = new GantryKernel(GantryCases.S1.singleLoop(GantryCases.RADIUS));
        // Angles 3 and 1 rad in the closed form's senses; the second motor counts the other way.
        double x = 3 * k.relation().xPerAngle(0) - 1 * k.relation().xPerAngle(1);
        double y = 3 * k.relation().yPerAngle(0) - 1 * k.relation().yPerAngle(1);
        add("S1 x of 3 and 1 rad", x, 0.00636619772, "m", 1e-9, LOOP);
        add("S1 y of 3 and 1 rad", y, 2 * 0.00636619772, "m", 1e-9, LOOP);
    }

    private void lengths() {
        GantryCases c = GantryCases.S2;
        double[] expected = {0.36, 1.5, 0.18};
        BeltSystem h = new BeltSystem(c.singleLoop(GantryCases.POINT).layout(), IdlerModel.LUMPED);
        h.place(Pose.at(c.x(), c.y()));
        for (int i = 0; i < 3; i++) {
            add("S2 loop section " + i, h.length(i), expected[i], "m", 1e-6, DERIVED);
        }
        double[] crossed = {0.36, 0.96, 0.18, 1.14};
        BeltSystem x = new BeltSystem(c.crossed(GantryCases.POINT).layout(), IdlerModel.LUMPED);
        x.place(Pose.at(c.x(), c.y()));
        for (int i = 0; i < 4; i++) {
            add("S2 crossed section " + i, x.length(i), crossed[i], "m", 1e-6, DERIVED);
        }
    }

    private static GantryState settle(GantryModel model, GantryCases c) {
        return new Statics(model, Statics.Hold.ROTORS).settle(c.x(), c.y(), c.load());
    }

    private void skew(GantryCases c, double loop, double crossed) {
        // At full load the carriage's own shift changes lengths by 1.5e-4: tolerance 5e-4.
        double h = settle(c.singleLoop(GantryCases.POINT), c).skew();
        double x = settle(c.crossed(GantryCases.POINT), c).skew();
        add(c.id() + " skew, single loop", h, loop, "rad", 5e-4, DERIVED);
        add(c.id() + " skew, crossed", x, crossed, "rad", 5e-4, DERIVED);
    }

    private void tensions() {
        double[][] expected = {{27.7103, 30.4853, 30.2603}, {33.2765, 31.2765, 35.4765}};
        GantryCases[] cases = {GantryCases.S1, GantryCases.S2};
        for (int c = 0; c < 2; c++) {
            GantryState s = settle(cases[c].singleLoop(GantryCases.POINT), cases[c]);
            for (int i = 0; i < 3; i++) {
                String id = cases[c].id() + " loop tension " + i;
                add(id, s.tensions().get(i), expected[c][i], "N", 5e-5, LOOP);
            }
        }
        GantryCases c = GantryCases.S2;
        double rest =
                new Statics(c.crossed(GantryCases.POINT), Statics.Hold.ROTORS)
                        .settle(c.x(), c.y(), Load.NONE)
                        .skew();
        add("S2 crossed skew at rest", rest, 0.000140127, "rad", 1e-4, DERIVED);
    }

    private void tool() {
        double[][] expected = {
            {-4.71937e-05, -3.34853e-05, -3.21159e-05, -3.7125e-05},
            {-1.09805e-05, 5.19772e-05, -1.23978e-06, 6.71528e-05}
        };
        GantryCases[] cases = {GantryCases.S1, GantryCases.S2};
        for (int c = 0; c < 2; c++) {
            tool(
                    cases[c].id() + " loop",
                    cases[c].singleLoop(GantryCases.POINT),
                    cases[c],
                    expected[c][0],
                    expected[c][1]);
            tool(
                    cases[c].id() + " crossed",
                    cases[c].crossed(GantryCases.POINT),
                    cases[c],
                    expected[c][2],
                    expected[c][3]);
        }
    }

    private void tool(String id, GantryModel model, GantryCases c, double x, double y) {
        ErrorSplit e = settle(model, c).error();
        double size = Math.hypot(x, y);
        values.add(
                ProofValue.absolute(
                        "GA " + id + " tool x",
                        e.total().x() - e.blockGive().x() - e.carriageTwist().x(),
                        x,
                        "m",
                        5e-4 * size,
                        DERIVED));
        values.add(
                ProofValue.absolute(
                        "GA " + id + " tool y",
                        e.total().y() - e.blockGive().y() - e.carriageTwist().y(),
                        y,
                        "m",
                        5e-4 * size,
                        DERIVED));
    }

    private void frequencies() {
        GantryCases a = GantryCases.S1;
        GantryCases b = GantryCases.S2;
        double rigid = Double.POSITIVE_INFINITY;
        three("S1 loop", a.singleLoop(GantryCases.POINT), a, 53.2609, 62.1924, 214.381);
        three("S1 crossed", a.crossed(GantryCases.POINT), a, 50.5828, 75.6581, 221.922);
        three("S1 both ends", side(a, rigid), a, 35.5881, 53.677, 214.035);
        three("S1 one end", side(a, 0), a, 24.4016, 53.6714, 208.126);
        three("S2 loop", b.singleLoop(GantryCases.POINT), b, 52.2231, 77.2795, 188);
        three("S2 crossed", b.crossed(GantryCases.POINT), b, 53.5917, 86.5282, 193.067);
        three("S2 both ends", side(b, rigid), b, 35.447, 53.6758, 184.651);
        three("S2 one end", side(b, 0), b, 23.975, 53.6742, 182.009);
    }

    private static GantryModel side(GantryCases c, double shaft) {
        return c.sideDriven(GantryCases.POINT, 4e4, 2e4, shaft);
    }

    private void three(
            String id, GantryModel model, GantryCases c, double f1, double f2, double f3) {
        List<Modes.Mode> modes = Modes.at(model, c.x(), c.y(), Statics.Hold.ROTORS).modes();
        double[] published = {f1, f2, f3};
        for (int i = 0; i < 3; i++) {
            add(id + " f" + (i + 1), modes.get(i).frequency(), published[i], "Hz", 1e-4, DERIVED);
        }
    }

    private void response() {
        GantryCases a = GantryCases.S1;
        GantryCases b = GantryCases.S2;
        response(
                "S1 loop",
                a.singleLoop(GantryCases.POINT),
                a,
                0.04,
                0.1,
                -0.000169529,
                -0.000183407);
        response(
                "S1 crossed",
                a.crossed(GantryCases.POINT),
                a,
                0.04,
                0.1,
                -5.26206e-05,
                -0.000123386);
        response(
                "S2 loop",
                b.singleLoop(GantryCases.POINT),
                b,
                0.03,
                0.08,
                0.000181681,
                0.000160603);
        response(
                "S2 crossed", b.crossed(GantryCases.POINT), b, 0.03, 0.08, 8.1048e-05, 0.000123794);
    }

    /** A cycloidal move of d in t along the bridge, damping 0.02 in every mode. */
    private void response(
            String id,
            GantryModel model,
            GantryCases c,
            double d,
            double t,
            double skew,
            double toolX) {
        double[] worst = new double[2];
        double w = 2 * Math.PI / t;
        double h = 1e-4;
        new LinearResponse(model, c.x(), c.y(), 0.02)
                .alongBridge(
                        time -> time < t ? d / t * w * Math.sin(w * time) : 0,
                        h,
                        (int) Math.round(3 * t / h),
                        p -> {
                            worst[0] =
                                    Math.abs(p.skew()) > Math.abs(worst[0]) ? p.skew() : worst[0];
                            worst[1] =
                                    Math.abs(p.toolX()) > Math.abs(worst[1]) ? p.toolX() : worst[1];
                        });
        add(id + " largest skew in time", worst[0], skew, "rad", 1e-4, DERIVED);
        add(id + " largest tool error in time", worst[1], toolX, "m", 1e-4, DERIVED);
    }
}
