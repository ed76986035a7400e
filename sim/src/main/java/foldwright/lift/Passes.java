// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.Machine;
import foldwright.mechanics.body.State;
import foldwright.mechanics.solve.MovingBalance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Passes heights of a machine and keeps what the screws carry. Belongs to one thread. */
final class Passes {
    private final LiftModel model;
    private final MovingLift lift;
    private final RiseLaw rise;
    private final List<SpringEvents.Event> events;

    Passes(Machine machine) {
        model = new LiftModel(machine, LiftSolver.giveOf(machine));
        lift = new MovingLift(model);
        rise = new RiseLaw(machine.drive().rise(), new DriveTrain(machine.drive()));
        events = new SpringEvents(model).find();
    }

    /**
     * Even heights and those where springs let go, rising; heights without a balance are left out.
     */
    List<Passing> run(int heights, Direction way) {
        TreeSet<Double> grid = new TreeSet<>();
        double low = model.lowest();
        double travel = model.highest() - low;
        for (int i = 0; i < heights; i++) {
            grid.add(low + travel * i / (heights - 1));
        }
        events.forEach(e -> grid.add(e.height()));
        List<Passing> out = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (double h : grid) {
            // Equal springs let go within rounding of each other.
            if (h - last > 1e-9) {
                at(h, way).ifPresent(out::add);
                last = h;
            }
        }
        return out;
    }

    /** One height; empty where the lift has no balance. */
    Optional<Passing> at(double height, Direction way) {
        NutPath path = model.path(0);
        double deck = rise.deckSpeed(height, Math.abs(path.rate(height)));
        MovingBalance b = lift.following(model.scissor().atHeight(height), way.sign() * deck);
        if (b.outcome() != MovingBalance.Outcome.BALANCED) {
            return Optional.empty();
        }
        State s = b.balance().state();
        double[] along = new double[model.screws().size()];
        double speed = 0;
        for (int i = 0; i < along.length; i++) {
            ScrewPart part = model.screws().get(i);
            double rate = part.length().rate(s);
            along[i] = b.balance().load(part.row()) * Math.signum(rate);
            speed = Math.max(speed, Math.abs(rate));
        }
        double change = path.acceleration(height) * Math.signum(path.rate(height));
        return Optional.of(new Passing(height, along, speed, way.sign() * change * deck * deck));
    }
}
