// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.Machine;
import foldwright.machine.linkage.Lift;
import foldwright.machine.part.Point;
import foldwright.machine.part.PointMass;
import foldwright.mechanics.body.Inertia;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * Mass, centre and inertia of the deck with all it carries, in its frame.
 *
 * <p>Parts without a stated place stand above the middle of the deck pins, midway through the
 * travel. The whole is spread over length and width of the deck as a plate; stated places add their
 * parallel-axis terms. A gantry on the deck stands with bridge and carriage at its origin.
 */
final class DeckMass {
    private DeckMass() {}

    /**
     * Something with weight on the deck.
     *
     * @param name as the machine file calls it
     * @param mass [kg]
     * @param at its centre of mass in the deck frame
     */
    record Part(String name, double mass, Vec3 at) {}

    /** All that the deck carries and itself, in the order of the file. */
    static List<Part> parts(Machine machine) {
        Vec3 middle = middle(machine.lift());
        List<Part> parts = new ArrayList<>();
        for (PointMass p : machine.deck().masses()) {
            parts.add(new Part(p.name(), p.mass(), p.at().map(DeckMass::vector).orElse(middle)));
        }
        machine.gantryOnDeck()
                .map(g -> new Part("gantry", g.movingMass(), vector(g.stand().origin())))
                .ifPresent(parts::add);
        return parts;
    }

    static MassProperties of(Machine machine) {
        double mass = 0;
        Vec3 moment = Vec3.ZERO;
        Inertia spread = Inertia.ZERO;
        for (Part part : parts(machine)) {
            mass += part.mass();
            moment = moment.plus(part.at().times(part.mass()));
            spread = spread.plus(Inertia.ofPoint(part.mass(), part.at()));
        }
        if (!(mass > 0)) {
            throw new IllegalArgumentException("the deck carries no mass at all");
        }
        Vec3 centre = moment.times(1 / mass);
        return new MassProperties(mass, centre, about(centre, mass, spread, machine));
    }

    /** Steiner's theorem backwards to the common centre, plus the plate's own inertia. */
    private static Inertia about(Vec3 centre, double mass, Inertia spread, Machine machine) {
        Inertia shift = Inertia.ofPoint(mass, centre);
        double x = machine.deck().length() * machine.deck().length() / 12 * mass;
        double y = machine.deck().width() * machine.deck().width() / 12 * mass;
        return new Inertia(
                positive(spread.xx() - shift.xx()) + y,
                positive(spread.yy() - shift.yy()) + x,
                positive(spread.zz() - shift.zz()) + x + y,
                spread.xy() - shift.xy(),
                spread.xz() - shift.xz(),
                spread.yz() - shift.yz());
    }

    private static double positive(double value) {
        return Math.max(0, value);
    }

    private static Vec3 middle(Lift lift) {
        Scissor scissor = new Scissor(lift);
        double flat = scissor.at(lift.travel().fold().low()).foot();
        double open = scissor.at(lift.travel().fold().high()).foot();
        double half = (flat + open) / 4;
        return new Vec3(LiftPlaces.deckFixedOverFixedEnd(lift) ? half : -half, 0, 0);
    }

    private static Vec3 vector(Point p) {
        return new Vec3(p.x(), p.y(), p.z());
    }
}
