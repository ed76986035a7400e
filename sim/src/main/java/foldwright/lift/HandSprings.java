// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static foldwright.lift.HandSum.mm;
import static foldwright.lift.HandSum.newton;
import static foldwright.lift.HandSum.number;

/** Hand sums of coil springs that stand between base and deck and are merely touched. */
public final class HandSprings {
    private final int count;
    private final double rate;
    private final double freeLength;

    /**
     * @param count how many equal springs stand side by side
     * @param rate of one spring [N/m]
     * @param freeLength of one spring [m]
     */
    public HandSprings(int count, double rate, double freeLength) {
        if (count < 1 || !(rate > 0) || !(freeLength > 0)) {
            throw new IllegalArgumentException(
                    "needs a spring with rate and free length, got "
                            + count
                            + " × "
                            + rate
                            + " N/m, "
                            + freeLength
                            + " m");
        }
        this.count = count;
        this.rate = rate;
        this.freeLength = freeLength;
    }

    private double force(double gap) {
        return count * rate * Math.max(0, freeLength - gap);
    }

    /** S = N k (L0 - gap), nothing once the gap is larger [N]. */
    public HandSum lift(double gap) {
        double value = force(gap);
        return new HandSum(
                "Lift of the springs",
                "S = N k (L0 - gap)",
                count
                        + " × "
                        + number(rate / 1e3)
                        + " N/mm × ("
                        + mm(freeLength)
                        + " - "
                        + mm(gap)
                        + ")",
                value,
                newton(value),
                "Cylindrical coils; zero once the gap exceeds the free length.",
                "Hooke's law");
    }

    /**
     * W + Wa/2 - S: what still presses the deck down with springs in [N]. Below zero it pops open.
     *
     * @param deck W [N]
     * @param arms Wa [N]
     * @param gap length left for the springs [m]
     */
    public HandSum residual(double deck, double arms, double gap) {
        double spring = force(gap);
        double value = deck + arms / 2 - spring;
        return new HandSum(
                "Weight left on the folded deck",
                "R = W + Wa/2 - S",
                newton(deck) + " + " + newton(arms) + "/2 - " + newton(spring),
                value,
                newton(value),
                "Below zero the springs lift the deck as soon as the latch opens.",
                "Virtual work");
    }

    /** E = N k (L0 - gap)²/2: energy in the springs [J]. */
    public HandSum energy(double gap) {
        double squeezed = Math.max(0, freeLength - gap);
        double value = count * rate * squeezed * squeezed / 2;
        return new HandSum(
                "Energy in the springs",
                "E = N k (L0 - gap)²/2",
                count + " × " + number(rate / 1e3) + " N/mm × (" + mm(squeezed) + ")²/2",
                value,
                number(value) + " J",
                "Cylindrical coils.",
                "Hooke's law");
    }
}
