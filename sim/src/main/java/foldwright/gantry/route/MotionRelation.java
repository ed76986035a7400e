// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * How axle angles and the place of the carriage belong together, derived from a route: the belts
 * keep their length, so G (x, y) + H phi = 0, with G and H the gradients of the sections over the
 * place and over the axles. Shafts count as rigid here.
 */
public final class MotionRelation {
    /** Columns shorter than this share of the longest count as zero. */
    private static final double RANK_LIMIT = 1e-9;

    private final List<String> axles;
    private final int driven;
    private final double[][] angle;
    private final double[][] place;

    private MotionRelation(List<String> axles, int driven, double[][] angle, double[][] place) {
        this.axles = axles;
        this.driven = driven;
        this.angle = angle;
        this.place = place;
    }

    /**
     * Least squares over all sections at the pose in which the system stands.
     *
     * @return empty where some axle may turn while the carriage stands; where the motors do not
     *     settle the place of the carriage it says so in {@link #settles()}
     */
    static Optional<MotionRelation> of(BeltSystem system) {
        Columns columns = Columns.of(system);
        RealMatrix h = columns.turning(system);
        SingularValueDecomposition turning = new SingularValueDecomposition(h);
        if (rank(turning) < h.getColumnDimension()) {
            return Optional.empty();
        }
        RealMatrix phi = turning.getSolver().solve(columns.place.scalarMultiply(-1));
        double[][] angle = columns.spread(phi);
        int driven = system.layout().drivenAxles().size();
        double[][] byMotor = new double[Math.max(2, driven)][2];
        for (int m = 0; m < driven; m++) {
            byMotor[m] = angle[system.axle(system.layout().drivenAxles().get(m))];
        }
        SingularValueDecomposition moving =
                new SingularValueDecomposition(new Array2DRowRealMatrix(byMotor));
        double[][] place =
                driven < 2 || rank(moving) < 2 ? null : moving.getSolver().getInverse().getData();
        return Optional.of(new MotionRelation(system.axleNames(), driven, angle, place));
    }

    /** Whether the motors move the carriage in two directions independently. */
    boolean settles() {
        return place != null;
    }

    static int rank(SingularValueDecomposition svd) {
        double[] sigma = svd.getSingularValues();
        int rank = 0;
        for (double s : sigma) {
            if (s > RANK_LIMIT * sigma[0] && s > 0) {
                rank++;
            }
        }
        return rank;
    }

    /** Turn of an axle per way of the carriage along the bridge [rad/m]. */
    public double anglePerX(int axle) {
        return angle[axle][0];
    }

    /** Turn of an axle per way of the bridge along the rails [rad/m]. */
    public double anglePerY(int axle) {
        return angle[axle][1];
    }

    /** Way along the bridge per turn of a motor, the others held [m/rad]. */
    public double xPerAngle(int motor) {
        return place[0][motor];
    }

    /** Way along the rails per turn of a motor, the others held [m/rad]. */
    public double yPerAngle(int motor) {
        return place[1][motor];
    }

    /** The relation in words and millimetres, one line an axis. */
    public String describe() {
        StringBuilder text = new StringBuilder();
        for (int row = 0; row < 2; row++) {
            text.append(row == 0 ? "x [mm] =" : "y [mm] =");
            boolean first = true;
            for (int m = 0; m < driven; m++) {
                double mm = 1e3 * place[row][m];
                if (Math.abs(mm) < 1e-9) {
                    continue;
                }
                text.append(mm < 0 ? " - " : first ? " " : " + ");
                text.append(String.format(Locale.ROOT, "%.5g %s", Math.abs(mm), axles.get(m)));
                first = false;
            }
            text.append(" [rad]").append(row == 0 ? "\n" : "");
        }
        return text.toString();
    }

    /** Gradients with axles on a common shaft added up. */
    private record Columns(RealMatrix place, int[] group, int groups) {
        static Columns of(BeltSystem system) {
            int axles = system.axleNames().size();
            int[] group = new int[axles];
            for (int i = 0; i < axles; i++) {
                group[i] = i;
            }
            for (CrossShaft shaft : system.layout().shafts()) {
                int a = system.axle(shaft.first());
                int b = system.axle(shaft.second());
                if (a >= 0 && b >= 0) {
                    int keep = Math.min(group[a], group[b]);
                    int drop = Math.max(group[a], group[b]);
                    for (int i = 0; i < axles; i++) {
                        group[i] = group[i] == drop ? keep : group[i];
                    }
                }
            }
            List<Integer> kept = new ArrayList<>();
            for (int i = 0; i < axles; i++) {
                if (!kept.contains(group[i])) {
                    kept.add(group[i]);
                }
                group[i] = kept.indexOf(group[i]);
            }
            return new Columns(placeColumns(system), group, kept.size());
        }

        private static RealMatrix placeColumns(BeltSystem system) {
            int n = system.sections().size();
            double[] row = new double[BeltSystem.POSE_COLUMNS + system.axleNames().size()];
            RealMatrix g = new Array2DRowRealMatrix(n, 2);
            for (int i = 0; i < n; i++) {
                system.gradient(i, row);
                g.setEntry(i, 0, row[3]);
                g.setEntry(i, 1, row[1] + row[4]);
            }
            return g;
        }

        RealMatrix turning(BeltSystem system) {
            int n = system.sections().size();
            double[] row = new double[BeltSystem.POSE_COLUMNS + group.length];
            RealMatrix h = new Array2DRowRealMatrix(n, Math.max(1, groups));
            for (int i = 0; i < n; i++) {
                system.gradient(i, row);
                for (int a = 0; a < group.length; a++) {
                    h.addToEntry(i, group[a], row[BeltSystem.POSE_COLUMNS + a]);
                }
            }
            return h;
        }

        double[][] spread(RealMatrix phi) {
            double[][] angle = new double[group.length][2];
            for (int a = 0; a < group.length; a++) {
                angle[a][0] = phi.getEntry(group[a], 0);
                angle[a][1] = phi.getEntry(group[a], 1);
            }
            return angle;
        }
    }
}
