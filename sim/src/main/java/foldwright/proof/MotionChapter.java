// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import foldwright.motion.DoubleSRule;
import foldwright.motion.IsoReader;
import foldwright.motion.MotionLimits;
import foldwright.motion.MotionLimits.AxisLimits;
import foldwright.motion.MotionLimits.Ramps;
import foldwright.motion.MotionLimits.Rounded;
import foldwright.motion.Move;
import foldwright.motion.MoveSource;
import foldwright.motion.PathSurvey;
import foldwright.motion.Planner;
import foldwright.motion.ReaderSettings;
import foldwright.motion.SpeedProfile;
import foldwright.motion.TimedMove;
import foldwright.motion.ToolpathException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Speed profiles, corner speeds, look-ahead and the reading of toolpaths. */
public final class MotionChapter implements ProofChapter {
    private static final String TRAPEZOID =
            "trapezoidal profile, closed form of any mechanics text; cases our own";
    private static final String BOOK =
            "L. Biagiotti, C. Melchiorri, Trajectory Planning for Automatic Machines and Robots, Springer 2008,"
                    + " section 3.4";
    private static final String OPTIMUM =
            "shortest jerk-limited profile, own ramp each side; recomputed by bisection";
    private static final String CORNER =
            "S. Jeon, article on a cornering rule, 24 Sep 2011; recomputed";
    private static final String NIST =
            "NISTIR 6556 (Kramer, Proctor, Messina), 2000; lengths recomputed";

    private static final double PRINTED = 1e-6;
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    private final List<ProofValue> values = new ArrayList<>();

    @Override
    public String title() {
        return "Moves over time and toolpaths";
    }

    @Override
    public List<ProofValue> compute() {
        values.clear();
        try {
            trapezoids();
            publishedRule();
            optimum();
            cornersAndLookAhead();
            files();
        } catch (ToolpathException e) {
            throw new IllegalStateException(
                    "a toolpath of the proof cannot be read: " + e.getMessage(), e);
        }
        return List.copyOf(values);
    }

    private void trapezoids() {
        SpeedProfile p = new SpeedProfile();
        p.plan(0.2, 0, 0, 0.15, 3, INFINITE);
        profile("T1", p, TRAPEZOID, 0.15, 0.05, 1.2833333333333333, 0.05, 1.3833333333333333);
        p.plan(0.005, 0, 0, 0.15, 3, INFINITE);
        profile("T2", p, TRAPEZOID, 0.12247448713915891, 0.040824829, 0, 0.040824829, 0.081649658);
        p.plan(0.04, 0.05, 0.02, 0.12, 2, INFINITE);
        profile("T3", p, TRAPEZOID, 0.12, 0.035, 0.279375, 0.05, 0.364375);
    }

    private void profile(
            String id,
            SpeedProfile p,
            String source,
            double peak,
            double ta,
            double tc,
            double td,
            double total) {
        near(id + " peak speed", p.peak(), peak, "m/s", source);
        near(
                id + " speeding up",
                p.phaseTime(0) + p.phaseTime(1) + p.phaseTime(2),
                ta,
                "s",
                source);
        values.add(ProofValue.absolute(id + " cruising", p.phaseTime(3), tc, "s", 1e-7, source));
        near(
                id + " slowing down",
                p.phaseTime(4) + p.phaseTime(5) + p.phaseTime(6),
                td,
                "s",
                source);
        near(id + " whole time", p.duration(), total, "s", source);
    }

    private void publishedRule() {
        String memory = BOOK + ", digits from memory and recomputed";
        DoubleSRule ds1 = DoubleSRule.plan(10, 1, 0, 5, 10, 30);
        near("DS1 (ex. 3.9) speeding up", ds1.ta(), 0.7333333333, "s", memory);
        near("DS1 (ex. 3.9) cruising", ds1.tv(), 1.1433333333, "s", memory);
        near("DS1 (ex. 3.9) slowing down", ds1.td(), 0.8333333333, "s", memory);
        near("DS1 (ex. 3.9) whole time", ds1.duration(), 2.71, "s", memory);
        near("DS1 way at 0.5 s", ds1.at(0.5).way(), 1.0968519, "m", memory);
        near("DS1 speed at 0.5 s", ds1.at(0.5).speed(), 4.1833333, "m/s", memory);
        near("DS1 acceleration at 0.5 s", ds1.at(0.5).acceleration(), 7, "m/s2", memory);
        DoubleSRule ds2 = DoubleSRule.plan(10, 1, 0, 10, 10, 30);
        near("DS2 (ex. 3.10) speeding up", ds2.ta(), 1.07469, "s", memory);
        near("DS2 (ex. 3.10) slowing down", ds2.td(), 1.17469, "s", memory);
        near("DS2 (ex. 3.10) peak speed", ds2.vlim(), 8.413567, "m/s", memory);
        near("DS2 (ex. 3.10) whole time", ds2.duration(), 2.2493801, "s", memory);
        near("DS2 way at 1.5 s", ds2.at(1.5).way(), 8.2559292, "m", memory);
        DoubleSRule ds3 = DoubleSRule.plan(10, 7, 0, 10, 10, 30);
        near("DS3 (ex. 3.11) speeding up", ds3.ta(), 0.4666095, "s", memory);
        near("DS3 (ex. 3.11) slowing down", ds3.td(), 1.4717599, "s", memory);
        near("DS3 (ex. 3.11) acceleration", ds3.speedingUp(), 6.9641322, "m/s2", memory);
        near("DS3 (ex. 3.11) whole time", ds3.duration(), 1.9383693, "s", memory);
        DoubleSRule ds4 = DoubleSRule.plan(10, 7.5, 0, 10, 10, 30);
        near("DS4 (ex. 3.12) jerk time", ds4.tj2(), 0.0973003, "s", memory);
        near("DS4 (ex. 3.12) slowing down", ds4.slowingDown(), -2.9190076, "m/s2", memory);
        near("DS4 (ex. 3.12) whole time", ds4.duration(), 2.6666667, "s", memory);
        DoubleSRule ds5 = DoubleSRule.plan(0.2, 0, 0, 0.15, 3, 60);
        near("DS5 whole time", ds5.duration(), 1.4333333333, "s", BOOK + ", own case");
        DoubleSRule ds6 = DoubleSRule.plan(0.005, 0, 0, 0.15, 3, 60);
        near("DS6 peak speed", ds6.vlim(), 0.07211171, "m/s", BOOK + ", own case");
        near("DS6 whole time", ds6.duration(), 0.13867373, "s", BOOK + ", own case");
        DoubleSRule ds7 = DoubleSRule.plan(0.0004, 0, 0, 0.15, 3, 60);
        near("DS7 peak speed", ds7.vlim(), 0.013388376, "m/s", BOOK + ", own case");
        near("DS7 whole time", ds7.duration(), 0.059753327, "s", BOOK + ", own case");
    }

    private void optimum() {
        SpeedProfile p = new SpeedProfile();
        p.plan(10, 7, 0, 10, 10, 30);
        profile("DS3 optimum", p, OPTIMUM, 9.1353149, 0.533581, 0, 1.2468648, 1.7804458);
        p.plan(10, 7.5, 0, 10, 10, 30);
        profile("DS4 optimum", p, OPTIMUM, 9.3041687, 0.4904649, 0, 1.2637502, 1.7542151);
        p.plan(0.005, 0, 0, 0.15, 3, 60);
        profile("DS6 optimum", p, OPTIMUM, 0.072112479, 0.069336127, 0, 0.069336127, 0.13867225);
        p.plan(0.0004, 0, 0, 0.15, 3, 60);
        near(
                "DS7 optimum whole time",
                p.duration(),
                4 * Math.cbrt(0.0004 / (2 * 60)),
                "s",
                "T = 4 (h/(2 j))^(1/3)");
    }

    private void cornersAndLookAhead() throws ToolpathException {
        MotionLimits limits =
                MotionLimits.alongPath(
                        new AxisLimits(1, 3, 1e9), Ramps.TRAPEZOID, new Rounded(2e-5));
        near(
                "C1 corner of 90 deg",
                secondStartSpeed("G1 X100 F60000\nY100", limits),
                0.012035481,
                "m/s",
                CORNER);
        near("C2 turn of 30 deg", secondStartSpeed(turn(30), limits), 0.041241538, "m/s", CORNER);
        near(
                "C3 turn of 135 deg",
                secondStartSpeed(turn(135), limits),
                0.0060987592,
                "m/s",
                CORNER);
        near(
                "C4 arc of 5 mm",
                planned("G3 X-5 Y5 I-5 F60000", limits).get(0).peak(),
                0.12247449,
                "m/s",
                CORNER);
        String look = "backward and forward pass over " + CORNER;
        near(
                "L1 square of 20 mm",
                total("G1 X20 F6000\nY20\nX0\nY0", limits),
                0.9107109,
                "s",
                look);
        near("L2 polygon of 24 sides", total(polygon(), limits), 0.68101939, "s", look);
        near("L3 zig-zag", total("G1 X4 F6000\nY.3\nX0\nY.6\nX4", limits), 0.23196998, "s", look);
    }

    private static String turn(double degrees) {
        double a = Math.toRadians(degrees);
        return String.format(
                Locale.ROOT,
                "G1 X100 F60000\nG91 X%.9f Y%.9f",
                100 * Math.cos(a),
                100 * Math.sin(a));
    }

    private static String polygon() {
        StringBuilder text = new StringBuilder("G92 X10 Y0\nG1 F6000\n");
        for (int i = 1; i <= 24; i++) {
            double a = 2 * Math.PI * i / 24;
            text.append(
                    String.format(
                            Locale.ROOT, "X%.12f Y%.12f%n", 10 * Math.cos(a), 10 * Math.sin(a)));
        }
        return text.toString();
    }

    /** Duration and speeds of a planned move. */
    private record Planned(double startSpeed, double peak, double duration) {}

    private static List<Planned> planned(String text, MotionLimits limits)
            throws ToolpathException {
        InputStream in = new ByteArrayInputStream(text.getBytes(StandardCharsets.US_ASCII));
        Planner planner = new Planner(new IsoReader(in, ReaderSettings.standard()), limits);
        List<Planned> all = new ArrayList<>();
        TimedMove move = new TimedMove();
        while (planner.next(move)) {
            SpeedProfile p = move.profile();
            all.add(new Planned(p.speed(0), p.peak(), p.duration()));
        }
        return all;
    }

    private static double secondStartSpeed(String text, MotionLimits limits)
            throws ToolpathException {
        return planned(text, limits).get(1).startSpeed();
    }

    private static double total(String text, MotionLimits limits) throws ToolpathException {
        double sum = 0;
        for (Planned move : planned(text, limits)) {
            sum += move.duration();
        }
        return sum;
    }

    private void files() throws ToolpathException {
        file(
                "nist_c1_text.ngc",
                new double[] {252.0528, 126.9785, 44.6710, 11.7810, 550.2914},
                new double[] {81, 5, 50});
        file(
                "nist_t12_contour.ngc",
                new double[] {0, 18.0990, 6.2832, 1.5708, 2.5953},
                new double[] {2, 3, 0});
        file(
                "nist_cds_inch.ngc",
                new double[] {983.6712, 4057.9152, 417.7869, 140.9886, 681.598},
                new double[] {92.075, 101.6, 76.2});
    }

    private void file(String name, double[] expected, double[] end) throws ToolpathException {
        PathSurvey survey = survey(name);
        double[] found = {
            survey.rapidLength() * 1e3,
            survey.feedLength() * 1e3,
            survey.clockwiseLength() * 1e3,
            survey.counterclockwiseLength() * 1e3,
            survey.feedTime()
        };
        String[] what = {"rapid length", "feed length", "G2 length", "G3 length", "feed time"};
        for (int i = 0; i < found.length; i++) {
            String unit = i < 4 ? "mm" : "s";
            if (expected[i] == 0) {
                values.add(
                        ProofValue.absolute(name + " " + what[i], found[i], 0, unit, 1e-9, NIST));
            } else {
                values.add(
                        ProofValue.relative(
                                name + " " + what[i], found[i], expected[i], unit, 1e-4, NIST));
            }
        }
        for (int i = 0; i < 3; i++) {
            String id = name + " end " + (char) ('x' + i);
            values.add(ProofValue.absolute(id, survey.end(i) * 1e3, end[i], "mm", 1e-9, NIST));
        }
    }

    private static PathSurvey survey(String name) throws ToolpathException {
        try (InputStream in = MotionChapter.class.getResourceAsStream("gcode/" + name)) {
            MoveSource source = new IsoReader(in, ReaderSettings.standard());
            PathSurvey survey = new PathSurvey();
            Move move = new Move();
            while (source.next(move)) {
                survey.add(move);
            }
            return survey;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void near(String id, double computed, double published, String unit, String source) {
        values.add(ProofValue.relative(id, computed, published, unit, PRINTED, source));
    }
}
