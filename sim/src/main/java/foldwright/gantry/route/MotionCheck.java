// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import foldwright.gantry.route.RouteFinding.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/** Whether the motors settle the place of the carriage and no belt has to stretch on the way. */
final class MotionCheck {
    /** Change of tension over the travel that counts as harmless, share of the pretension. */
    static final double TENSION_CHANGE = 0.05;

    /** Strain counted as pretension where a belt states less: a slack belt still has a length. */
    private static final double LEAST_STRAIN = 1e-3;

    /** Residual of the gradients, metre of stretch a metre of way, that counts as a stretch. */
    private static final double STRETCH = 1e-6;

    private final BeltLayout layout;
    private final BeltSystem system;
    private final List<RouteFinding> findings;
    private final double[] row;

    private MotionCheck(BeltLayout layout, BeltSystem system, List<RouteFinding> findings) {
        this.layout = layout;
        this.system = system;
        this.findings = findings;
        row = new double[BeltSystem.POSE_COLUMNS + system.axleNames().size()];
    }

    static void check(BeltLayout layout, BeltSystem system, List<RouteFinding> findings) {
        MotionCheck check = new MotionCheck(layout, system, findings);
        system.place(system.reference());
        check.checkHeld();
        check.checkMotors();
        if (!findings.isEmpty()) {
            return;
        }
        Optional<MotionRelation> relation = MotionRelation.of(system);
        relation.ifPresent(check::checkStretch);
        if (findings.isEmpty() && (relation.isEmpty() || !relation.get().settles())) {
            check.add(
                    Fault.MOTORS_DEPENDENT,
                    0,
                    List.copyOf(layout.drivenAxles()),
                    "the motors do not move the carriage in two directions independently; a"
                            + " second motor on another wheel would");
        }
    }

    /** With all axles held, the belts must hold the carriage along and across. */
    private void checkHeld() {
        int n = system.sections().size();
        RealMatrix g = new Array2DRowRealMatrix(Math.max(n, 2), 2);
        for (int i = 0; i < n; i++) {
            system.gradient(i, row);
            g.setEntry(i, 0, row[3]);
            g.setEntry(i, 1, row[1] + row[4]);
        }
        if (MotionRelation.rank(new SingularValueDecomposition(g)) < 2) {
            add(
                    Fault.CARRIAGE_NOT_HELD,
                    0,
                    List.of(nearestEnd()),
                    "with all motors held the carriage can still run along the bridge or the"
                            + " bridge along the rails: no belt holds it there");
        }
    }

    private String nearestEnd() {
        return layout.belts().get(0).points().get(0).name();
    }

    private void checkMotors() {
        for (String axle : layout.drivenAxles()) {
            int column = BeltSystem.POSE_COLUMNS + system.axle(axle);
            double largest = 0;
            for (int i = 0; i < system.sections().size(); i++) {
                system.gradient(i, row);
                largest = Math.max(largest, Math.abs(row[column]));
            }
            if (largest == 0 && !onShaft(axle)) {
                add(
                        Fault.MOTOR_MOVES_NOTHING,
                        0,
                        List.of(axle),
                        "the motor on axle \"" + axle + "\" moves nothing");
            }
        }
    }

    private boolean onShaft(String axle) {
        return layout.shafts().stream()
                .anyMatch(s -> s.first().equals(axle) || s.second().equals(axle));
    }

    /** Rolls the wheels by the relation over the travel and looks at every section's length. */
    private void checkStretch(MotionRelation relation) {
        Pose centre = system.reference();
        double[] angles = new double[system.axleNames().size()];
        double[] worst = new double[system.sections().size()];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double x = layout.travel().xAt(0.5 * i);
                double y = layout.travel().yAt(0.5 * j);
                for (int a = 0; a < angles.length; a++) {
                    angles[a] =
                            relation.anglePerX(a) * (x - centre.carriageX())
                                    + relation.anglePerY(a) * (y - centre.carriageY());
                }
                system.place(Pose.at(x, y));
                for (int s = 0; s < worst.length; s++) {
                    worst[s] = Math.max(worst[s], Math.abs(system.extension(s, angles)));
                }
            }
        }
        system.place(centre);
        for (int s = 0; s < worst.length; s++) {
            judge(s, worst[s], linearResidual(s, relation));
        }
    }

    private double linearResidual(int s, MotionRelation relation) {
        system.gradient(s, row);
        double byX = row[3];
        double byY = row[1] + row[4];
        for (int a = 0; a < system.axleNames().size(); a++) {
            byX += row[BeltSystem.POSE_COLUMNS + a] * relation.anglePerX(a);
            byY += row[BeltSystem.POSE_COLUMNS + a] * relation.anglePerY(a);
        }
        return Math.max(Math.abs(byX), Math.abs(byY));
    }

    private void judge(int s, double stretch, double residual) {
        Belt belt = layout.belts().get(system.sections().get(s).belt());
        double strain = Math.max(belt.pretension() / belt.stiffness(), LEAST_STRAIN);
        double change = stretch / system.length(s) / strain;
        if (change <= TENSION_CHANGE) {
            return;
        }
        Oblique oblique = Oblique.worstOf(system, s);
        Fault fault = residual > STRETCH ? Fault.BELT_MUST_STRETCH : Fault.LENGTH_CHANGES;
        List<String> points = new ArrayList<>(List.of(oblique.from(), oblique.to()));
        add(
                fault,
                system.sections().get(s).belt(),
                points,
                String.format(
                        Locale.ROOT,
                        "section \"%s\" would have to change its length by %.3g mm over the travel"
                                + " (%.0f %% of its tension; allowed 5 %%): the strand from \"%s\""
                                + " to \"%s\" stands %.2f degrees off the way its ends travel",
                        system.sections().get(s).name(),
                        1e3 * stretch,
                        100 * change,
                        oblique.from(),
                        oblique.to(),
                        Math.toDegrees(oblique.angle())));
    }

    private void add(Fault fault, int belt, List<String> points, String message) {
        findings.add(new RouteFinding(fault, layout.belts().get(belt).name(), points, message));
    }

    /** The strand of a section that stands most askew to the way its two ends travel. */
    private record Oblique(String from, String to, double angle) {
        static Oblique worstOf(BeltSystem system, int section) {
            Section s = system.sections().get(section);
            BeltGeometry g = system.geometry(s.belt());
            Oblique worst = null;
            for (int k = 0; k < s.spanCount(); k++) {
                int span = (s.firstSpan() + k) % g.spans();
                double angle = angle(g, span);
                if (worst == null || angle > worst.angle) {
                    worst =
                            new Oblique(
                                    g.belt().points().get(span).name(),
                                    g.belt().points().get(g.endOf(span)).name(),
                                    angle);
                }
            }
            return worst;
        }

        private static double angle(BeltGeometry g, int span) {
            Carrier a = g.belt().points().get(span).carrier();
            Carrier b = g.belt().points().get(g.endOf(span)).carrier();
            boolean alongX = a == Carrier.CARRIAGE != (b == Carrier.CARRIAGE);
            boolean alongY = a == Carrier.BASE != (b == Carrier.BASE);
            double offX = Math.asin(Math.min(1, Math.abs(g.directionY(span))));
            double offY = Math.asin(Math.min(1, Math.abs(g.directionX(span))));
            return Math.max(alongX ? offX : 0, alongY ? offY : 0);
        }
    }
}
