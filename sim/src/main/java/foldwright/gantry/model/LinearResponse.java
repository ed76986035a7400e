// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Small motions about a place while the motors follow a law: mode by mode, each mode an oscillator
 * with a damping ratio, exact for a force that is linear within a step (N. C. Nigam, P. C.
 * Jennings, Bull. Seismol. Soc. Am. 59(2), 1969, 909-922).
 *
 * <p>Rotors are on their commands, play is closed, no friction. Modes damp the motion beside the
 * one the motors ask for. Results are ways beside the rest state.
 */
public final class LinearResponse {
    private final GantryModel model;
    private final Modes modes;
    private final double[] masses;
    private final double x;
    private final double ratio;
    private final double toOriginX;
    private final double toOriginY;

    /**
     * Modes at a place.
     *
     * @param ratio damping ratio of every mode [1]
     */
    public LinearResponse(GantryModel model, double x, double y, double ratio) {
        Checks.notNegative("damping ratio", ratio);
        this.model = model;
        this.x = x;
        this.ratio = ratio;
        Statics statics = new Statics(Modes.taut(model), Statics.Hold.ROTORS);
        statics.kernel().stand(x, y);
        RealMatrix stiffness = statics.stiffness();
        masses = statics.masses();
        toOriginX = statics.kernel().ocx;
        toOriginY = statics.kernel().ocy;
        modes = Modes.of(stiffness, masses);
    }

    /**
     * One instant.
     *
     * @param time [s]
     * @param skew beside the rest state [rad]
     * @param toolX tool beside its command, along the bridge [m]
     * @param toolY along the rails [m]
     */
    public record Point(double time, double skew, double toolX, double toolY) {}

    /** Receives one instant after the other. */
    public interface Listener {
        void at(Point point);
    }

    /**
     * Moves along the bridge.
     *
     * @param acceleration commanded, over time [m/s2]
     * @param h step [s]
     * @param steps number of steps
     */
    public void alongBridge(DoubleUnaryOperator acceleration, double h, int steps, Listener out) {
        List<Modes.Mode> list = modes.modes();
        int n = list.size();
        Oscillator[] oscillators = new Oscillator[n];
        double[] pull = new double[n];
        for (int i = 0; i < n; i++) {
            Modes.Mode m = list.get(i);
            oscillators[i] = new Oscillator(2 * Math.PI * m.frequency(), ratio, h);
            pull[i] = -masses[3] * m.carriageX();
        }
        double before = acceleration.applyAsDouble(0);
        for (int k = 1; k <= steps; k++) {
            double now = acceleration.applyAsDouble(k * h);
            double skew = 0;
            double toolX = 0;
            double toolY = 0;
            for (int i = 0; i < n; i++) {
                double a = oscillators[i].step(pull[i] * before, pull[i] * now);
                Modes.Mode m = list.get(i);
                skew += a * m.skew();
                toolX += a * (m.carriageX() - leverY() * m.carriageYaw());
                toolY += a * (m.carriageY() + leverX() * m.carriageYaw());
            }
            before = now;
            out.at(new Point(k * h, skew, toolX, toolY));
        }
    }

    private double leverX() {
        return model.tool().x() + toOriginX;
    }

    private double leverY() {
        return model.tool().y() + toOriginY;
    }

    /** Place about which the motion is linear, along the bridge [m]. */
    public double place() {
        return x;
    }

    /** a'' + 2 z w a' + w^2 a = p(t), p linear within a step. */
    private static final class Oscillator {
        private final double omega2;
        private final double omega;
        private final double ratio;
        private final double h;
        private final double damped;
        private final double decay;
        private final double cos;
        private final double sin;
        private double a;
        private double v;

        Oscillator(double omega, double ratio, double h) {
            this.omega = omega;
            this.ratio = ratio;
            this.h = h;
            omega2 = omega * omega;
            damped = omega * Math.sqrt(1 - ratio * ratio);
            decay = Math.exp(-ratio * omega * h);
            cos = Math.cos(damped * h);
            sin = Math.sin(damped * h);
        }

        /** Particular solution alpha + beta t, then the free motion of what differs from it. */
        double step(double p0, double p1) {
            double slope = (p1 - p0) / h;
            double beta = slope / omega2;
            double alpha = p0 / omega2 - 2 * ratio * slope / (omega * omega2);
            double u = a - alpha;
            double w = (v - beta + ratio * omega * u) / damped;
            a = alpha + beta * h + decay * (u * cos + w * sin);
            v =
                    beta
                            + decay
                                    * ((damped * w - ratio * omega * u) * cos
                                            - (damped * u + ratio * omega * w) * sin);
            return a;
        }
    }
}
