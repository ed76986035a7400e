// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.Machine;
import foldwright.machine.drive.SteadyTurning;
import foldwright.machine.keys.SameValues;
import foldwright.machine.linkage.Lift;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The lowest motor margin over the travel for many variants of one machine: what the force curve
 * shows as its worst point, from fewer heights and without what a curve tells besides.
 *
 * <p>Heights are even, with those added at which springs let go; about the worst one they are
 * halved twice. Against curves of 200 heights the margin is less than half a percent high on the
 * demo machines and everything that can be turned on them. Two things are computed once and used
 * again: whether friction locks the lift (a matter of its linkage, not of its loads), and what the
 * screws carry, for variants that differ only in thread friction and reduction. May be used by
 * several threads.
 */
public final class LeastMargin {
    private static final int RAISING = 10;
    private static final int LOWERING = 6;
    private static final int ROUNDS = 2;
    private static final double CLOSE = 1.5;

    /** Heights both ways at which the loads of the machine itself are kept. */
    private static final int KEPT = 30;

    private final Machine machine;
    private final Object guard = new Object();
    private List<Passing> kept;
    private volatile Known known;

    private record Known(Lift lift, boolean locked) {}

    /** Variants of this machine will be asked for. */
    public LeastMargin(Machine machine) {
        this.machine = machine;
    }

    /**
     * Variants of this machine will be asked for.
     *
     * @param curve of the machine itself, which knows whether friction locks it
     */
    public LeastMargin(Machine machine, ForceCurve curve) {
        this(machine);
        boolean locked =
                Stream.of(Finding.Kind.PINS_LOCK, Finding.Kind.GUIDE_JAMS)
                        .flatMap(kind -> curve.findings(kind).stream())
                        .anyMatch(lock -> insideTravel(machine.lift(), lock));
        known = new Known(machine.lift(), locked);
    }

    /**
     * The lowest margin of a variant [1]; 0 where friction locks the lift inside its travel or no
     * height could be solved.
     */
    public double of(Machine variant) {
        if (locks(variant)) {
            return 0;
        }
        DriveTrain train = new DriveTrain(variant.drive());
        double least = sameLoads(variant) ? least(kept(), train) : searched(variant, train);
        return Double.isInfinite(least) ? 0 : least;
    }

    /** Whether the screws carry what they carry in the machine itself. */
    private boolean sameLoads(Machine variant) {
        var a = machine.drive();
        var b = variant.drive();
        boolean chain =
                SameValues.in(a.source(), b.source())
                        && SameValues.in(a.rise(), b.rise())
                        && SameValues.in(a.lines(), b.lines())
                        && SameValues.in(a.screw().thread(), b.screw().thread())
                        && a.screw().length() == b.screw().length()
                        && (!(a.rise() instanceof SteadyTurning)
                                || SameValues.in(a.transmission(), b.transmission()));
        return chain
                && SameValues.in(machine.lift(), variant.lift())
                && SameValues.in(machine.base(), variant.base())
                && SameValues.in(machine.deck(), variant.deck())
                && SameValues.in(machine.springs(), variant.springs())
                && SameValues.in(machine.gantry(), variant.gantry())
                && SameValues.in(machine.tool(), variant.tool())
                && SameValues.in(machine.cables(), variant.cables())
                && SameValues.in(machine.measured(), variant.measured())
                && SameValues.in(machine.stops(), variant.stops());
    }

    private List<Passing> kept() {
        synchronized (guard) {
            if (kept == null) {
                kept = new ArrayList<>();
                Passes passes = new Passes(machine);
                kept.addAll(passes.run(KEPT, Direction.RAISING));
                kept.addAll(passes.run(KEPT, Direction.LOWERING));
            }
            return kept;
        }
    }

    private static double least(List<Passing> passings, DriveTrain train) {
        return passings.stream()
                .mapToDouble(p -> p.margin(train))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static double searched(Machine variant, DriveTrain train) {
        Passes passes = new Passes(variant);
        List<Passing> up = passes.run(RAISING, Direction.RAISING);
        refine(passes, up, train, Direction.RAISING);
        List<Passing> down = passes.run(LOWERING, Direction.LOWERING);
        double least = least(up, train);
        // Where the way down is far from the worst it need not be known closely.
        if (least(down, train) < CLOSE * least) {
            refine(passes, down, train, Direction.LOWERING);
        }
        return Math.min(least, least(down, train));
    }

    /** Halves the gaps about the worst height. */
    private static void refine(
            Passes passes, List<Passing> found, DriveTrain train, Direction way) {
        for (int round = 0; round < ROUNDS && found.size() > 1; round++) {
            int worst = worst(found, train);
            if (worst < found.size() - 1) {
                between(passes, found, worst, way);
            }
            if (worst > 0) {
                between(passes, found, worst - 1, way);
            }
        }
    }

    private static void between(Passes passes, List<Passing> found, int below, Direction way) {
        double middle = 0.5 * (found.get(below).height() + found.get(below + 1).height());
        passes.at(middle, way).ifPresent(p -> found.add(below + 1, p));
    }

    private static int worst(List<Passing> found, DriveTrain train) {
        int worst = 0;
        for (int i = 1; i < found.size(); i++) {
            worst = found.get(i).margin(train) < found.get(worst).margin(train) ? i : worst;
        }
        return worst;
    }

    private boolean locks(Machine variant) {
        Known before = known;
        if (before == null || !SameValues.in(before.lift, variant.lift())) {
            before = new Known(variant.lift(), search(variant));
            known = before;
        }
        return before.locked;
    }

    private static boolean search(Machine variant) {
        if (!LockSearch.worthLooking(variant)) {
            return false;
        }
        Optional<Finding> lock = new LockSearch(variant).find();
        return lock.filter(f -> insideTravel(variant.lift(), f)).isPresent();
    }

    private static boolean insideTravel(Lift lift, Finding lock) {
        return lock.to() > new Scissor(lift).at(lift.travel().fold().low()).height();
    }
}
