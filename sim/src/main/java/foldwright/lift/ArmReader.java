// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.Linkage.ArmPart;
import foldwright.mechanics.body.State;
import foldwright.mechanics.solve.Equilibrium;

/**
 * Reads bending and thrust of an arm from the pins at its ends, which must have been read before.
 *
 * <p>Bending is that at the centre pin, where it is largest; it differs between the two sides of
 * the pin by the friction moment of the pin and by what is screwed to it.
 */
final class ArmReader {
    /** A side of the centre pin. */
    enum Half {
        LOWER,
        UPPER
    }

    private final ArmPart part;
    private final PinReader lower;
    private final PinReader upper;
    private final NetSection net;

    ArmReader(ArmPart part, NetSection net, PinReader lower, PinReader upper) {
        this.part = part;
        this.lower = lower;
        this.upper = upper;
        this.net = net;
    }

    ArmPart part() {
        return part;
    }

    ArmLoad load(Equilibrium balance, State s, double gravity) {
        double bottom = bending(Half.LOWER, balance, s, gravity);
        double top = bending(Half.UPPER, balance, s, gravity);
        double bend = Math.max(Math.abs(bottom), Math.abs(top));
        double thrust = axial(lower, s);
        double other = -axial(upper, s);
        double axial = Math.abs(thrust) > Math.abs(other) ? thrust : other;
        return new ArmLoad(part.name(), bend, axial, net.stress(bend, axial));
    }

    /** The side of the centre pin with the larger bending moment. */
    Half worse(Equilibrium balance, State s, double gravity) {
        double bottom = bending(Half.LOWER, balance, s, gravity);
        double top = bending(Half.UPPER, balance, s, gravity);
        return Math.abs(top) > Math.abs(bottom) ? Half.UPPER : Half.LOWER;
    }

    /**
     * Bending moment at the centre pin with its sign: force across the arm times the lever, less
     * the weight of that part of the arm, and the friction moment of the end pin [N·m].
     *
     * @param gravity that the arm's own weight is counted with [m/s²]
     */
    double bending(Half half, Equilibrium balance, State s, double gravity) {
        double share = part.arm().centrePin();
        return half == Half.LOWER
                ? forced(lower, share, s, gravity) + turned(lower, balance)
                : forced(upper, 1 - share, s, gravity) + turned(upper, balance);
    }

    private double forced(PinReader end, double share, State s, double gravity) {
        int r = 9 * part.body().index();
        double wx = s.r[r + 2];
        double wz = s.r[r + 8];
        double across = end.sign(part.body()) * (end.along() * wx + end.up() * wz);
        double lever = share * part.arm().length();
        double weight = share * part.body().mass().mass() * gravity;
        return lever * (across - 0.5 * weight * wz);
    }

    /** Friction moment of the end pin on the arm. */
    private double turned(PinReader end, Equilibrium balance) {
        double lever = end == lower ? 1 : -1;
        return lever * end.sign(part.body()) * balance.load(end.part().friction());
    }

    /** Force at an end along the arm, towards its upper pin. */
    private double axial(PinReader end, State s) {
        int r = 9 * part.body().index();
        double sign = end.sign(part.body());
        return sign * (end.along() * s.r[r] + end.up() * s.r[r + 6]);
    }
}
