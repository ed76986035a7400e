// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Natural frequencies and mode shapes of a gantry at a place, all play closed, all spans taut,
 * without damping. The tangent is that of the kernel's own forces.
 *
 * @param modes by rising frequency
 */
public record Modes(List<Mode> modes) {

    /**
     * One mode, scaled to unit modal mass.
     *
     * @param frequency [Hz]
     * @param bridgeX shape at the bridge's centre of mass [1/sqrt kg]
     * @param bridgeY [1/sqrt kg]
     * @param skew yaw of the bridge [rad/(m sqrt kg)]
     * @param carriageX shape at the carriage's centre of mass [1/sqrt kg]
     * @param carriageY [1/sqrt kg]
     * @param carriageYaw [rad/(m sqrt kg)]
     * @param axles turn of the free axles, in the order of the model's axles
     */
    public record Mode(
            double frequency,
            double bridgeX,
            double bridgeY,
            double skew,
            double carriageX,
            double carriageY,
            double carriageYaw,
            List<Double> axles) {
        public Mode {
            axles = List.copyOf(axles);
        }
    }

    public Modes {
        modes = List.copyOf(modes);
    }

    /**
     * Modes at a place.
     *
     * @param hold whether rotors are fixed or hang in their fields
     */
    public static Modes at(GantryModel model, double x, double y, Statics.Hold hold) {
        Statics statics = new Statics(taut(model), hold);
        statics.kernel().stand(x, y);
        return of(statics.stiffness(), statics.masses());
    }

    /** Closed guides and belts too tight to go slack; neither changes a tangent. */
    static GantryModel taut(GantryModel model) {
        GantryModel taut = model.closed();
        for (int b = 0; b < model.layout().belts().size(); b++) {
            var belt = model.layout().belts().get(b);
            var tight =
                    belt.withPretension(Math.max(belt.pretension(), 10 + 1e-4 * belt.stiffness()));
            taut = taut.with(taut.layout().withBelt(b, tight));
        }
        return taut;
    }

    static Modes of(RealMatrix stiffness, double[] masses) {
        int n = masses.length;
        RealMatrix scaled = new Array2DRowRealMatrix(n, n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double k = 0.5 * (stiffness.getEntry(i, j) + stiffness.getEntry(j, i));
                scaled.setEntry(i, j, k / Math.sqrt(masses[i] * masses[j]));
            }
        }
        EigenDecomposition eigen = new EigenDecomposition(scaled);
        List<Mode> modes = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double omega2 = Math.max(0, eigen.getRealEigenvalue(i));
            double[] v = eigen.getEigenvector(i).toArray();
            for (int d = 0; d < n; d++) {
                v[d] /= Math.sqrt(masses[d]);
            }
            List<Double> axles = new ArrayList<>();
            for (int d = 6; d < n; d++) {
                axles.add(v[d]);
            }
            modes.add(
                    new Mode(
                            Math.sqrt(omega2) / (2 * Math.PI),
                            v[0],
                            v[1],
                            v[2],
                            v[3],
                            v[4],
                            v[5],
                            axles));
        }
        modes.sort(Comparator.comparingDouble(Mode::frequency));
        return new Modes(modes);
    }

    /** The mode in which the bridge yaws most. */
    public Mode yawMode() {
        return modes.stream()
                .max(Comparator.comparingDouble(m -> Math.abs(m.skew())))
                .orElseThrow();
    }
}
