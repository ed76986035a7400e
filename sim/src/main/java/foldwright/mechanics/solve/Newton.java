// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.body.State;
import foldwright.mechanics.force.Force;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.Stop;
import java.util.function.DoubleSupplier;

/**
 * Newton within one step: evaluates, factorises when needed, solves, decides the one-sided rows.
 */
final class Newton {
    /**
     * Share of the largest load that counts as nothing when a row at rest decides whether it
     * slides: without it a row that may carry no friction slides and sticks in turn.
     */
    private static final double ROUNDING = 1e-9;

    private final Assembly asm;
    private final Scheme scheme;
    private final Settings settings;
    private final Kkt kkt;
    private final SlidingFriction sliding;
    private final Accelerations accelerations;
    private final double[] kept;
    private final DoubleSupplier rounding;

    /** Whether any force limits its update. */
    private final boolean limited;

    private final double[] freshLoads;
    private final double[] keptAccelerations;
    private final Keeping keeping = new Keeping();
    private long solves;
    private long factorisations;
    private boolean factored;
    private double factoredStep;
    private int age;
    private boolean modesChanged;
    private boolean jumped;
    private boolean switched;
    private double last;

    Newton(Assembly asm, Scheme scheme, Settings settings) {
        this.asm = asm;
        this.scheme = scheme;
        this.settings = settings;
        kkt = new Kkt(asm, Kkt.Geometry.PLAIN);
        sliding = new SlidingFriction(asm, kkt);
        accelerations = new Accelerations(asm, kkt);
        kept = new double[asm.rowCount];
        rounding = () -> ROUNDING * asm.largestLoad();
        boolean any = false;
        for (Force f : asm.forces) {
            any |= f.largestUpdate() < Double.POSITIVE_INFINITY;
        }
        limited = any;
        freshLoads = new double[asm.rowCount];
        keptAccelerations = new double[6 * asm.bodies];
    }

    long solves() {
        return solves;
    }

    long factorisations() {
        return factorisations;
    }

    /** Whether a friction row or a stop changed its state in the last step. */
    boolean switched() {
        return switched;
    }

    /** The next step factorises. */
    void forget() {
        factored = false;
        sliding.forget();
    }

    /** Start accelerations with their multipliers. */
    void startLoads(State s) {
        accelerations.accelerations(s);
        factored = false;
    }

    /**
     * Accelerations that fit the present contacts and friction; the multipliers stay. False where
     * there are none: then those of the state stay too.
     */
    boolean freshAccelerations(State s) {
        System.arraycopy(asm.lambda, 0, kept, 0, kept.length);
        System.arraycopy(s.a, 0, keptAccelerations, 0, keptAccelerations.length);
        boolean found = accelerations.accelerations(s);
        System.arraycopy(asm.lambda, 0, freshLoads, 0, kept.length);
        System.arraycopy(kept, 0, asm.lambda, 0, kept.length);
        if (!found) {
            System.arraycopy(keptAccelerations, 0, s.a, 0, keptAccelerations.length);
        }
        factored = false;
        return found;
    }

    /** Multipliers that belong to the last fresh accelerations. */
    double[] freshLoads() {
        return freshLoads;
    }

    /** One step of length {@code h} to time {@code end}; false if it did not settle. */
    boolean step(State s, double h, double end) {
        switched = false;
        asm.clock(end);
        boolean renew = !factored || h != factoredStep || keeping.renew(age);
        if (!renew && age == 1) {
            kkt.keep(s);
        }
        scheme.predict(s, h, asm.lambda, renew ? Scheme.Guess.SHARP : Scheme.Guess.CALM);
        s.time = end;
        sliding.begin(s);
        asm.engage();
        double before = 0;
        double first = 0;
        for (int i = 0; i < settings.iterations(); i++) {
            asm.evaluateAndReact(s);
            if (i == 0 && limited && astray(0, h)) {
                scheme.coast(s);
                asm.evaluateAndReact(s);
            }
            boolean even = solve(s, renew);
            last = Correction.size(asm, kkt.vector());
            if (!(last < 1e6)) {
                break;
            }
            first = i == 0 ? last : first;
            boolean settled = decide(s) && even;
            scheme.correct(s, kkt.vector());
            if (jumped) {
                break;
            }
            if (i > 0 && !renew) {
                keeping.measured(age, last / before);
            }
            if (settled && last * keeping.contraction(age, i > 0) < settings.tolerance()) {
                asm.engage();
                keeping.accepted(age, first, settings.tolerance());
                age++;
                return true;
            }
            if (modesChanged) {
                switched = true;
                sliding.forget();
            }
            boolean slow = i > 0 && last > Keeping.SLOW * before;
            if (slow && age > 0) {
                keeping.gaveUp();
            }
            renew = modesChanged || slow;
            asm.engage();
            before = last;
        }
        scheme.giveUp();
        forget();
        return false;
    }

    private void factorAndSolve(State s, double[] x) {
        double h = scheme.step();
        kkt.fill(s, scheme.massFactor(), 1, scheme.rateFactor(), scheme.rateFactor());
        kkt.factorAndSolve(x);
        factorisations++;
        factored = true;
        if (h != factoredStep) {
            sliding.forget();
        }
        factoredStep = h;
        age = 0;
    }

    /** One solve; true if the friction of sliding rows agrees with the loads found. */
    private boolean solve(State s, boolean renew) {
        double[] x = kkt.vector();
        asm.imbalance(s, x);
        gaps(s, x);
        if (renew) {
            factorAndSolve(s, x);
        } else {
            kkt.solve(s, x);
        }
        solves++;
        boolean even = sliding.balance(s, x);
        for (int row = 0; row < asm.rowCount; row++) {
            if (asm.engaged[row]) {
                asm.lambda[row] -= x[kkt.rowPlace(row)];
            }
        }
        return even;
    }

    /** Writes minus the remainders of the engaged rows. */
    private void gaps(State s, double[] x) {
        int at = kkt.rowPlace(0);
        for (int row = 0; row < asm.rowCount; row++) {
            x[at + row] = asm.engaged[row] ? -asm.phi[row] - asm.c[row] * asm.lambda[row] : 0;
        }
        double rate = scheme.rateFactor();
        for (int row : asm.damped) {
            if (asm.engaged[row]) {
                double d = asm.d[row];
                x[at + row] = (x[at + row] - d * asm.rate(row, s.v)) / (1 + d * rate);
            }
        }
    }

    /** Friction and stops after an update; true if nothing that matters changed. */
    private boolean decide(State s) {
        double[] x = kkt.vector();
        modesChanged = false;
        for (Friction f : asm.frictions) {
            int row = f.rowAt();
            if (f.mode() == Friction.Mode.STICK) {
                f.load(asm.lambda, 0);
            }
            double phi = asm.phi[row] + asm.change(row, x);
            modesChanged |= f.decide(phi, asm.lambda[row], rounding);
        }
        for (Stop stop : asm.stops) {
            int row = stop.rowAt();
            double move = asm.change(stop.rowAt(), x);
            double rate = asm.rate(row, s.v) + scheme.rateFactor() * move;
            double approach = asm.phi[row] + move + asm.d[row] * rate;
            // an open stop is only met by a gap that has closed
            boolean open = !stop.engaged() && asm.phi[row] + move >= 0;
            modesChanged |= !open && stop.decide(approach, asm.lambda[row]);
        }
        jumped = limited && (leaps() || astray(scheme.rateFactor(), scheme.step()));
        return !modesChanged;
    }

    /** Whether a coordinate with a limited update was moved further than that. */
    private boolean leaps() {
        boolean found = false;
        for (Force f : asm.forces) {
            found |= Math.abs(f.change(kkt.vector(), -6)) > f.largestUpdate();
        }
        return found;
    }

    /** Whether a rate changed so much that such a coordinate may have left its place. */
    private boolean astray(double rateFactor, double h) {
        boolean found = false;
        for (Force f : asm.forces) {
            found |= f.astray(kkt.vector(), -6, rateFactor, h) > f.largestUpdate();
        }
        return found;
    }

    Failure failure(double time) {
        return Correction.failure(asm, kkt.vector(), time, last);
    }
}
