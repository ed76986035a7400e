// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.machine.Machine;
import foldwright.machine.MachineNumbers;
import foldwright.machine.drive.BeltReduction;
import foldwright.machine.drive.SteadyRise;
import foldwright.machine.file.MachineText;
import foldwright.machine.linkage.ArmPlanes;
import foldwright.machine.spring.Coil;
import foldwright.machine.spring.RatedCoil;
import foldwright.machine.spring.SpringLaw;
import foldwright.study.Numerals;
import foldwright.study.Shown;
import foldwright.viewer.scene.LiftShape;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A number of the machine that can be turned while looking.
 *
 * @param path key path in the file
 * @param name what it is called
 * @param unit unit in which it is read
 * @param low least value [SI]
 * @param high greatest value [SI]
 * @param kind how it is written into the file
 * @param value reads it from a machine [SI]
 */
public record Dial(
        String path,
        String name,
        Shown unit,
        double low,
        double high,
        Kind kind,
        ToDoubleFunction<Machine> value) {

    private static final String THREAD_FRICTION = "drive.screw.nut.friction";

    /** How a value is written into the file. */
    public enum Kind {
        /** A number with its unit. */
        NUMBER,
        /** A reduction as tooth counts, motor:screw. */
        TEETH,
        /** A number without unit. */
        PURE
    }

    /** The dials a machine has, the most telling first. */
    public static List<Dial> of(Machine machine) {
        List<Dial> out = new ArrayList<>();
        if (machine.drive().transmission() instanceof BeltReduction) {
            out.add(
                    new Dial(
                            "drive.transmission.teeth",
                            "belt to screws",
                            Shown.NUMBER,
                            1,
                            4.5,
                            Kind.TEETH,
                            m -> ((BeltReduction) m.drive().transmission()).teeth().ratio()));
        }
        mass(machine, out);
        spring(machine, out);
        double friction = machine.drive().screw().nut().friction();
        out.add(
                new Dial(
                        THREAD_FRICTION,
                        "thread friction",
                        Shown.NUMBER,
                        0.05,
                        Math.max(0.25, round(1.5 * friction)),
                        Kind.PURE,
                        m -> m.drive().screw().nut().friction()));
        double pin = machine.lift().pins().usual().bearing().friction();
        out.add(
                new Dial(
                        "lift.pins.usual.bearing.friction",
                        "pin friction",
                        Shown.NUMBER,
                        0.01,
                        Math.max(0.35, round(1.3 * pin)),
                        Kind.PURE,
                        m -> m.lift().pins().usual().bearing().friction()));
        if (machine.drive().rise() instanceof SteadyRise rise) {
            out.add(
                    new Dial(
                            "drive.rise.speed",
                            "rise speed",
                            Shown.MILLIMETRE_PER_SECOND,
                            0.25 * rise.speed(),
                            4 * rise.speed(),
                            Kind.NUMBER,
                            m ->
                                    m.drive().rise() instanceof SteadyRise r
                                            ? r.speed()
                                            : Double.NaN));
        }
        double arm = machine.lift().arm().length();
        out.add(
                new Dial(
                        "lift.arm.length",
                        "arm length",
                        Shown.MILLIMETRE,
                        Math.max(round3(0.85 * arm), leastArm(machine)),
                        round3(1.15 * arm),
                        Kind.NUMBER,
                        m -> m.lift().arm().length()));
        return out;
    }

    private static void mass(Machine machine, List<Dial> out) {
        if (machine.deck().masses().isEmpty()) {
            return;
        }
        var first = machine.deck().masses().get(0);
        out.add(
                new Dial(
                        "deck.masses[0].mass",
                        "deck: " + first.name(),
                        Shown.KILOGRAM,
                        round(0.4 * first.mass()),
                        round(2.2 * first.mass()),
                        Kind.NUMBER,
                        m -> m.deck().masses().get(0).mass()));
    }

    private static void spring(Machine machine, List<Dial> out) {
        if (machine.springs().isEmpty()) {
            return;
        }
        SpringLaw law = machine.springs().get(0).law();
        if (law instanceof Coil coil) {
            out.add(
                    new Dial(
                            "springs[0].law.freeLength",
                            "spring free length",
                            Shown.MILLIMETRE,
                            round3(0.75 * coil.freeLength()),
                            round3(1.35 * coil.freeLength()),
                            Kind.NUMBER,
                            m ->
                                    m.springs().get(0).law() instanceof Coil c
                                            ? c.freeLength()
                                            : Double.NaN));
        } else if (law instanceof RatedCoil rated) {
            out.add(
                    new Dial(
                            "springs[0].law.rate",
                            "spring rate, each",
                            Shown.NEWTON_PER_MILLIMETRE,
                            round(0.3 * rated.rate()),
                            round(1.8 * rated.rate()),
                            Kind.NUMBER,
                            m ->
                                    m.springs().get(0).law() instanceof RatedCoil c
                                            ? c.rate()
                                            : Double.NaN));
        }
    }

    /**
     * The shortest arm at which arms of neighbouring stages in one plane do not meet, folded at the
     * same angle, up to a whole millimetre; 0 where they cannot meet [m].
     */
    private static double leastArm(Machine machine) {
        var lift = machine.lift();
        if (lift.stages() < 2 || lift.arm().planes() == ArmPlanes.OFFSET) {
            return 0;
        }
        double sine = new LiftShape(machine).flat() / lift.stages() / lift.arm().length();
        double least = lift.arm().section().depth() / (sine * Math.sqrt(1 - sine * sine));
        return Math.ceil(1000 * least - 1e-6) / 1000;
    }

    /** To two significant digits. */
    private static double round(double value) {
        double power = Math.pow(10, Math.floor(Math.log10(value)) - 1);
        return Math.round(value / power) * power;
    }

    /** To a whole millimetre. */
    private static double round3(double metres) {
        return Math.round(metres * 1000) / 1000.0;
    }

    /** Where a value lies on the rule, 0 to 1. */
    public double share(double si) {
        return Math.max(0, Math.min(1, (si - low) / (high - low)));
    }

    /** The value at a place on the rule, rounded to what a hand can mean [SI]. */
    public double at(double share) {
        double value = low + Math.max(0, Math.min(1, share)) * (high - low);
        double grain = unit.toSi(grain());
        return Math.max(low, Math.min(high, Math.round(value / grain) * grain));
    }

    /** The step of a value, in its unit: about a two-hundredth of the range. */
    private double grain() {
        double range = unit.fromSi(high - low) / 200;
        double power = Math.pow(10, Math.floor(Math.log10(range)));
        return range < 2 * power ? power : range < 5 * power ? 2 * power : 5 * power;
    }

    /** A value with its unit. */
    public String text(double si) {
        return switch (kind) {
            case TEETH -> Numerals.given(Math.round(si * 100) / 100.0) + ":1";
            case PURE -> Numerals.given(rounded(si));
            case NUMBER -> Numerals.with(si, unit);
        };
    }

    /** A value without its unit, for the left end of the rule. */
    public String bare(double si) {
        return kind == Kind.TEETH ? text(si) : Numerals.given(rounded(unit.fromSi(si)));
    }

    private static double rounded(double value) {
        return Math.round(value * 1e6) / 1e6;
    }

    /** The text of a file with this value in it. */
    public MachineText write(MachineText text, double si, Machine file) {
        if (kind == Kind.TEETH && file.drive().transmission() instanceof BeltReduction belt) {
            int motor = belt.teeth().motor();
            return text.with(path, motor + ":" + Math.round(motor * si));
        }
        MachineText out = text;
        for (String along : along(si, file)) {
            out = out.with(along, si);
        }
        return out.with(path, si);
    }

    /**
     * The machine of a file with this value, what reading {@link #write} would give but for the
     * last digits; its values may contradict each other.
     *
     * @throws IllegalArgumentException where the value is not allowed
     */
    public Machine on(Machine file, double si) {
        if (kind == Kind.TEETH && file.drive().transmission() instanceof BeltReduction belt) {
            double screw = Math.round(belt.teeth().motor() * si);
            return MachineNumbers.with(file, path + ".screw", screw);
        }
        Machine out = file;
        for (String along : along(si, file)) {
            out = MachineNumbers.with(out, along, si);
        }
        return MachineNumbers.with(out, path, si);
    }

    /**
     * What moves along: the range of friction to expect must hold the friction itself, and a tool
     * is part of its head.
     */
    private List<String> along(double si, Machine file) {
        if (path.equals(GantryDials.HEAD)) {
            return file.tool()
                    .filter(t -> si < t.mass())
                    .map(t -> List.of("tool.mass"))
                    .orElse(List.of());
        }
        var nut = file.drive().screw().nut();
        if (!path.equals(THREAD_FRICTION)) {
            return List.of();
        } else if (si < nut.frictionLow().orElse(si)) {
            return List.of("drive.screw.nut.frictionLow");
        }
        return si > nut.frictionHigh().orElse(si)
                ? List.of("drive.screw.nut.frictionHigh")
                : List.of();
    }
}
