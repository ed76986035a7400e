// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.Stop;

/**
 * Fixed-step integrator of a mechanism: generalised-alpha on R3 x SO(3), second order, with damping
 * of the highest frequencies set by its spectral radius.
 *
 * <p>M. Arnold, O. Bruels, Convergence of the generalized-alpha scheme for constrained mechanical
 * systems, Multibody System Dynamics 18 (2007) 185-202; O. Bruels, A. Cardona, M. Arnold, Lie group
 * generalized-alpha time integration of constrained flexible multibody systems, Mechanism and
 * Machine Theory 48 (2012) 121-137.
 *
 * <p>Each step predicts accelerations and multipliers from the steps before, then Newton corrects;
 * a correction is the last one when it, times the contraction measured with the present factor, is
 * below the tolerance. A step that does not settle is halved inside the fixed grid. No allocation
 * in a step. Same input, same bits.
 */
public final class Stepper {
    /** How a step ended. */
    public enum Outcome {
        DONE,
        FAILED
    }

    /** Most halvings within one step of the grid. */
    private static final int MOST_HALVINGS = 300;

    private final Settings settings;
    private final Assembly asm;
    private final Scheme scheme;
    private final State state;
    private final State saved;
    private final Newton newton;
    private final EnergyLedger ledger;
    private final double[] savedLambda;
    private final double[] savedAnchors;
    private final Friction.Mode[] savedModes;
    private final boolean[] savedStops;
    private final double startTime;
    private long steps;
    private long halvings;

    /** Halvings before the present grid step. */
    private long before;

    private Failure failure;

    /**
     * Starts from a state whose pose satisfies the joints; start accelerations and multipliers are
     * found from it.
     */
    public Stepper(Mechanism mechanism, State start, Settings settings) {
        this(mechanism, start, null, settings);
    }

    /** Starts from an equilibrium: takes over its pose, multipliers and friction states. */
    public Stepper(Mechanism mechanism, Equilibrium start, Settings settings) {
        this(mechanism, start.state(), start.multipliers(), settings);
    }

    private Stepper(Mechanism mechanism, State start, double[] lambda, Settings settings) {
        this.settings = settings;
        asm = new Assembly(mechanism);
        asm.relaxStops(settings.step());
        state = start.copy();
        saved = start.copy();
        scheme = new Scheme(asm.bodies, settings.spectralRadius());
        newton = new Newton(asm, scheme, settings);
        ledger = new EnergyLedger(asm);
        savedLambda = new double[asm.rowCount];
        savedAnchors = new double[asm.frictions.length];
        savedModes = new Friction.Mode[asm.frictions.length];
        savedStops = new boolean[asm.stops.length];
        startTime = start.time;
        begin(lambda);
    }

    private void begin(double[] lambda) {
        asm.clock(state.time);
        asm.evaluate(state);
        for (Stop stop : asm.stops) {
            stop.start(state);
        }
        if (lambda != null) {
            System.arraycopy(lambda, 0, asm.lambda, 0, lambda.length);
        } else {
            for (Friction f : asm.frictions) {
                f.mode(Friction.Mode.STICK);
                f.anchor(state, 0);
            }
        }
        asm.engage();
        if (lambda == null) {
            newton.startLoads(state);
        } else {
            newton.freshAccelerations(state);
        }
        scheme.restart(state, asm.lambda);
        ledger.begin(state);
    }

    /** Energy account since the start. */
    public EnergyLedger ledger() {
        return ledger;
    }

    /** Present state; the integrator changes it in place. */
    public State state() {
        return state;
    }

    /** Multiplier of a row at the present state [N or N m]. */
    public double multiplier(int row) {
        return asm.lambda[row];
    }

    /** Multipliers of all rows, shared, read only. */
    public double[] multipliers() {
        return asm.lambda;
    }

    /** Steps done. */
    public long steps() {
        return steps;
    }

    /** Newton solves done. */
    public long solves() {
        return newton.solves();
    }

    /** Factorisations done. */
    public long factorisations() {
        return newton.factorisations();
    }

    /** Times that a step had to be halved. */
    public long halvings() {
        return halvings;
    }

    /** Why the last step failed; null if it did not. */
    public Failure failure() {
        return failure;
    }

    /** Tells the integrator that laws, settings or engagements changed between steps. */
    public void changed() {
        asm.refreshSettings();
        asm.relaxStops(settings.step());
        newton.forget();
    }

    /** One step of the fixed grid. */
    public Outcome step() {
        double h = settings.step();
        double end = startTime + (steps + 1) * h;
        before = halvings;
        if (!advance(h, end, 0)) {
            return Outcome.FAILED;
        }
        state.time = end;
        steps++;
        return Outcome.DONE;
    }

    /** Steps until {@code time} [s] is reached (to within half a step). */
    public Outcome runTo(double time) {
        while (state.time < time - 0.5 * settings.step()) {
            if (step() == Outcome.FAILED) {
                return Outcome.FAILED;
            }
        }
        return Outcome.DONE;
    }

    private boolean advance(double h, double end, int depth) {
        save();
        boolean last = depth >= settings.halvings() || halvings - before > MOST_HALVINGS;
        if (newton.step(state, h, end) && (last || fine())) {
            accept();
            return true;
        }
        restore();
        scheme.giveUp();
        if (last) {
            failure = newton.failure(end);
            return false;
        }
        halvings++;
        newton.forget();
        boolean both =
                advance(0.5 * h, end - 0.5 * h, depth + 1) && advance(0.5 * h, end, depth + 1);
        newton.forget();
        return both;
    }

    /** Whether every force finds the step just solved fine enough. */
    private boolean fine() {
        boolean fine = true;
        for (int f = 0; f < asm.forces.length; f++) {
            fine &= !asm.forces[f].coarse();
        }
        return fine;
    }

    private void accept() {
        asm.accept(state);
        for (int f = 0; f < asm.forces.length; f++) {
            asm.forces[f].accept(state);
        }
        scheme.accepted(state, asm.lambda);
        ledger.account(state, scheme.z);
        // Where forces jumped the next step starts from accelerations that fit the new contacts.
        if (newton.switched() && newton.freshAccelerations(state)) {
            scheme.jumped(state);
            ledger.resume(newton.freshLoads());
        }
    }

    private void save() {
        saved.set(state);
        System.arraycopy(asm.lambda, 0, savedLambda, 0, savedLambda.length);
        for (int i = 0; i < savedAnchors.length; i++) {
            savedAnchors[i] = asm.frictions[i].target();
            savedModes[i] = asm.frictions[i].mode();
        }
        for (int i = 0; i < savedStops.length; i++) {
            savedStops[i] = asm.stops[i].engaged();
        }
    }

    private void restore() {
        state.set(saved);
        System.arraycopy(savedLambda, 0, asm.lambda, 0, savedLambda.length);
        for (int i = 0; i < savedAnchors.length; i++) {
            asm.frictions[i].restore(savedAnchors[i], savedModes[i]);
        }
        for (int i = 0; i < savedStops.length; i++) {
            asm.stops[i].restore(savedStops[i]);
        }
        asm.engage();
    }
}
