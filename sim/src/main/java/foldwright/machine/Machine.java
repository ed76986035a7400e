// SPDX-License-Identifier: Apache-2.0
package foldwright.machine;

import foldwright.machine.drive.Drive;
import foldwright.machine.drive.ScrewLine;
import foldwright.machine.gantry.Gantry;
import foldwright.machine.gantry.StandsOn;
import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.linkage.Anchor;
import foldwright.machine.linkage.FoldGeometry;
import foldwright.machine.linkage.Latch;
import foldwright.machine.linkage.Lift;
import foldwright.machine.linkage.OnBase;
import foldwright.machine.linkage.OnSlider;
import foldwright.machine.linkage.SliderLevel;
import foldwright.machine.linkage.Stop;
import foldwright.machine.part.Point;
import foldwright.machine.spring.HelperSpring;
import java.util.List;
import java.util.Optional;

/**
 * A machine as its file describes it. One component a section of the file, hence more of them than
 * a constructor should otherwise have.
 *
 * <p>All numbers are SI. Frames are given with {@link Base}, {@link Deck} and {@link Gantry}.
 *
 * @param name what the machine is called
 * @param purpose what it is for
 * @param notes remarks of the maker
 * @param assumed key paths of numbers that are assumed, not measured
 * @param base the base
 * @param deck the deck
 * @param lift the linkage
 * @param drive what opens the lift
 * @param springs helper springs
 * @param stops fixed stops
 * @param latch the latch of the folded machine
 * @param gantry the gantry
 * @param tool the tool and its seat
 * @param box what the folded machine must go into
 * @param limits limits asked for
 * @param cables cables
 * @param measured values measured on the built machine
 */
@Kind(value = "A machine that folds flat.", ignored = "$schema")
public record Machine(
        @Key(value = "What the machine is called", example = "Van bench") String name,
        @Key("What it is for") Optional<String> purpose,
        @Key(value = "Remarks of the maker", range = "[0, 200]") List<String> notes,
        @Key(
                        value = "Key paths of numbers that are assumed and should be measured",
                        range = "[0, 500]",
                        example = "[\"drive.source.motor.pullOut\"]")
                List<String> assumed,
        @Key("The base") Base base,
        @Key("The deck") Deck deck,
        @Key("The scissor linkage") Lift lift,
        @Key("What opens the lift") Drive drive,
        @Key(value = "Helper springs", range = "[0, 40]") List<HelperSpring> springs,
        @Key(value = "Fixed stops of the lift", range = "[0, 8]") List<Stop> stops,
        @Key("The latch of the folded machine") Optional<Latch> latch,
        @Key("The gantry") Optional<Gantry> gantry,
        @Key("The tool and its seat") Optional<Tool> tool,
        @Key("What the folded machine must go into") Optional<Box> box,
        @Key(value = "Limits asked for", orElse = "{}") Limits limits,
        @Key(value = "Cables", range = "[0, 40]") List<Cable> cables,
        @Key("Values measured on the built machine; each replaces the computed one")
                Optional<Measured> measured) {

    /** Checks every value against its key and copies the lists. */
    public Machine {
        Keys.check(
                Machine.class,
                name,
                purpose,
                notes,
                assumed,
                base,
                deck,
                lift,
                drive,
                springs,
                stops,
                latch,
                gantry,
                tool,
                box,
                limits,
                cables,
                measured);
        notes = List.copyOf(notes);
        assumed = List.copyOf(assumed);
        springs = List.copyOf(springs);
        stops = List.copyOf(stops);
        cables = List.copyOf(cables);
    }

    /**
     * Mass the lift raises, arms and pins not counted: deck, and a gantry that stands on it [kg].
     */
    public double raisedMass() {
        return deck.mass() + gantryOnDeck().map(Gantry::movingMass).orElse(0.0);
    }

    /** Mass of all arms and pins [kg]. */
    public double armMass() {
        return lift.arms() * lift.arm().massEach();
    }

    /** The gantry, if the lift raises it. */
    public Optional<Gantry> gantryOnDeck() {
        return gantry.filter(g -> g.stand().on() == StandsOn.DECK);
    }

    /**
     * Where a screw's bearing is: as stated, or else on the base at pin height, so that the nut
     * reaches the end of the screw when folded flat.
     */
    public Anchor startOf(ScrewLine line) {
        FoldGeometry fold = new FoldGeometry(lift);
        double foot = fold.spread(fold.angle(lift.travel().fold().low()), 0);
        double x = foot + drive.screw().nut().length() / 2 - drive.screw().length();
        return line.from().orElseGet(() -> new OnBase(new Point(x, line.y(), 0)));
    }

    /** Where a screw's nut is: as stated, or else on the slider ends of the base. */
    public Anchor endOf(ScrewLine line) {
        return line.to().orElseGet(() -> new OnSlider(SliderLevel.BASE, new Point(0, line.y(), 0)));
    }
}
