// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.machine.Machine;
import foldwright.machine.drive.BeltReduction;
import foldwright.machine.drive.SteadyRise;
import foldwright.machine.linkage.BallBearing;
import foldwright.machine.linkage.Bush;
import foldwright.machine.linkage.SliderKind;
import foldwright.machine.part.Spot;
import foldwright.machine.part.Teeth;
import foldwright.machine.spring.Contact;
import foldwright.machine.spring.HelperSpring;
import foldwright.machine.spring.RatedCoil;
import foldwright.machine.spring.Upright;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Changes that ease the drive. Each says a value the maker can buy or make; whether it helps is for
 * the run with it to say.
 */
final class DriveChanges {
    /**
     * Friction of a sintered bronze bush on a steel pin, oiled; and of rollers. Common practice.
     */
    private static final double BRONZE = 0.10;

    private static final double ROLLERS = 0.005;
    private static final double GREASED = 0.10;

    /** Share of the weight at flat that added springs carry; the rest keeps the deck down. */
    private static final double CARRIED = 0.84;

    private DriveChanges() {}

    static List<Change> of(Machine m) {
        List<Change> out = new ArrayList<>();
        springs(m).ifPresent(out::add);
        pins(m, out);
        rollers(m).ifPresent(out::add);
        reduction(m, out);
        thread(m).ifPresent(out::add);
        out.add(lighter());
        slower(m).ifPresent(out::add);
        return out;
    }

    private static void pins(Machine m, List<Change> out) {
        var pin = m.lift().pins().usual();
        if (pin.bearing() instanceof Bush bush && (bush.friction() > BRONZE)) {
            double d = Math.min(pin.diameter(), 0.006);
            out.add(
                    new Change(
                            "bronze bushes on "
                                    + Numerals.given(Shown.MILLIMETRE.fromSi(d))
                                    + " mm pins",
                            x ->
                                    Edit.with(
                                            Edit.with(
                                                    Edit.with(x, "lift.pins.usual.diameter", d),
                                                    "lift.pins.usual.bearing.friction",
                                                    BRONZE),
                                            "lift.pins.usual.bearing.material",
                                            "bronze")));
        } else if (pin.bearing() instanceof Bush) {
            BallBearing ball =
                    new BallBearing(
                            0.0015,
                            pin.bearing().clearance(),
                            2,
                            OptionalDouble.empty(),
                            Optional.empty());
            out.add(
                    new Change(
                            "ball bearings in the pins",
                            x -> Edit.with(x, "lift.pins.usual.bearing", ball)));
        }
    }

    private static Optional<Change> rollers(Machine m) {
        if (m.lift().sliders().base().friction() <= 2 * ROLLERS) {
            return Optional.empty();
        }
        return Optional.of(
                new Change(
                        "rollers at the feet",
                        x -> {
                            Machine base = rolling(x, "lift.sliders.base");
                            return base.lift().sliders().deck().isPresent()
                                    ? rolling(base, "lift.sliders.deck")
                                    : base;
                        }));
    }

    private static Machine rolling(Machine m, String end) {
        return Edit.with(
                Edit.with(m, end + ".kind", SliderKind.ROLLERS), end + ".friction", ROLLERS);
    }

    private static void reduction(Machine m, List<Change> out) {
        if (m.drive().transmission() instanceof BeltReduction belt) {
            for (double ratio : new double[] {2, 3, 4.5}) {
                if (ratio > belt.teeth().ratio() * 1.01) {
                    int teeth = (int) Math.round(belt.teeth().motor() * ratio);
                    Teeth wheels = new Teeth(belt.teeth().motor(), teeth);
                    out.add(
                            new Change(
                                    "belt " + Numerals.given(wheels.ratio()) + ":1",
                                    x -> Edit.with(x, "drive.transmission.teeth", wheels)));
                }
            }
        } else {
            BeltReduction belt =
                    new BeltReduction(
                            new Teeth(16, 32), 0.95, OptionalDouble.empty(), 0.002, 0.006);
            out.add(
                    new Change(
                            "a 2:1 belt to the screws",
                            x -> Edit.with(x, "drive.transmission", belt)));
        }
    }

    private static Optional<Change> thread(Machine m) {
        if (m.drive().screw().nut().friction() <= GREASED) {
            return Optional.empty();
        }
        return Optional.of(
                new Change(
                        "grease the thread to friction 0.10",
                        x -> {
                            var nut = x.drive().screw().nut();
                            double low = Math.min(GREASED, nut.frictionLow().orElse(GREASED));
                            Machine y = Edit.with(x, "drive.screw.nut.frictionLow", low);
                            return Edit.with(y, "drive.screw.nut.friction", GREASED);
                        }));
    }

    private static Change lighter() {
        return new Change(
                "deck a tenth lighter",
                m -> {
                    Machine out = m;
                    for (int i = 0; i < m.deck().masses().size(); i++) {
                        double mass = 0.9 * m.deck().masses().get(i).mass();
                        out = Edit.with(out, "deck.masses[" + i + "].mass", mass);
                    }
                    return out;
                });
    }

    private static Optional<Change> slower(Machine m) {
        if (m.drive().rise() instanceof SteadyRise rise) {
            return Optional.of(
                    new Change(
                            "rise at half the speed",
                            x -> Edit.with(x, "drive.rise.speed", 0.5 * rise.speed())));
        }
        return Optional.empty();
    }

    /**
     * Four upright coils between base and deck that carry most of the weight at flat and let go
     * after 30 % of the travel: rate k = c W/(4 s), s the travel over which they act.
     */
    private static Optional<Change> springs(Machine m) {
        if (!m.springs().isEmpty()) {
            return Optional.empty();
        }
        double act = 0.3 * (Bench.top(m) - Bench.flat(m));
        double carried = CARRIED * (Bench.deckWeight(m) + 0.5 * Bench.armWeight(m));
        double rate = carried / (4 * act);
        double gap = 0.006;
        double free = Bench.flat(m) + gap + act;
        double solid = Math.min(0.25 * free, 0.8 * (Bench.flat(m) + gap));
        double x = 0.3 * m.lift().arm().length();
        double y = 0.5 * m.lift().width();
        List<Spot> at =
                List.of(
                        new Spot(x, y),
                        new Spot(x, -y),
                        new Spot(2.5 * x, y),
                        new Spot(2.5 * x, -y));
        HelperSpring coils =
                new HelperSpring(
                        "added coils",
                        new RatedCoil(
                                rate,
                                free,
                                solid,
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                "hard drawn A227"),
                        new Upright(at, gap),
                        Contact.TOUCHING,
                        OptionalDouble.empty());
        return Optional.of(
                new Change(
                        "four springs "
                                + Numerals.with(rate, Shown.NEWTON_PER_MILLIMETRE)
                                        .replace('\u00a0', ' '),
                        machine -> Edit.with(machine, "springs", List.of(coils))));
    }
}
