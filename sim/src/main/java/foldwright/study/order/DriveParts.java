// SPDX-License-Identifier: Apache-2.0
package foldwright.study.order;

import foldwright.elements.screw.TrapezoidalThread;
import foldwright.machine.Machine;
import foldwright.machine.drive.BeltReduction;
import foldwright.machine.drive.Collar;
import foldwright.machine.drive.Drive;
import foldwright.machine.drive.HandCrank;
import foldwright.machine.drive.Nut;
import foldwright.machine.drive.Screw;
import foldwright.machine.drive.ScrewLine;
import foldwright.machine.drive.ScrewThread;
import foldwright.machine.drive.StepperDrive;
import foldwright.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** Screws, nuts, collars, pulleys, belt or coupling, motor or crank. */
final class DriveParts {
    private static final String[] NO_MORE = {};

    private final Drive drive;
    private final Uses uses;
    private final List<OrderLine> out = new ArrayList<>();

    DriveParts(Machine machine, Uses uses) {
        this.drive = machine.drive();
        this.uses = uses;
    }

    List<OrderLine> lines() {
        screws();
        if (drive.transmission() instanceof BeltReduction belt) {
            pulleys(belt);
        } else if (drive.source() instanceof StepperDrive) {
            add(
                    screwCount(),
                    "shaft coupling",
                    "motor to screw",
                    Optional.empty(),
                    "bores, torque");
        }
        source();
        return out;
    }

    private void add(
            int count, String part, String size, Optional<OrderLine.Use> use, String... open) {
        out.add(new OrderLine(OrderLine.Group.DRIVE, count, part, size, use, List.of(open)));
    }

    private int screwCount() {
        return drive.lines().size();
    }

    private void screws() {
        Screw screw = drive.screw();
        ScrewThread thread = screw.thread();
        boolean listed = TrapezoidalThread.find(thread.name()).isPresent();
        String name = listed ? thread.name() + ", ISO 2904 profile" : byNumbers(thread);
        add(
                screwCount(),
                "lead screw",
                name
                        + ", "
                        + Sizes.length(screw.length())
                        + " free, "
                        + ends(screw)
                        + ", "
                        + Sizes.name(screw.material()),
                uses.of("order.buckling"),
                "shaped ends beyond the free length, hand of thread");
        Nut nut = screw.nut();
        String play = nut.play() > 0 ? ", play up to " + Sizes.length(nut.play()) : "";
        String pressure =
                nut.allowedPressure().isPresent()
                        ? ", flanks for "
                                + Sizes.given(Dimension.STRESS, nut.allowedPressure().getAsDouble())
                        : "";
        add(
                screwCount(),
                "nut",
                (listed ? thread.name() : "to the same thread")
                        + ", "
                        + Sizes.length(nut.length())
                        + " of thread engaged"
                        + pressure
                        + play,
                uses.of("order.nut"),
                "material, flange");
        Collar collar = screw.collar();
        if (collar.diameter() > 0) {
            add(
                    screwCount(),
                    "thrust bearing or collar",
                    "mean diameter "
                            + Sizes.length(collar.diameter())
                            + ", friction "
                            + Sizes.given(Dimension.RATIO, collar.friction()),
                    Optional.empty(),
                    "bore, load rating");
        }
    }

    private static String ends(Screw screw) {
        return switch (screw.ends()) {
            case FIXED_FREE -> "one end clamped, one free";
            case FIXED_SUPPORTED -> "one end clamped, one in a bearing";
            case SUPPORTED_SUPPORTED -> "both ends in bearings";
            case FIXED_FIXED -> "both ends clamped";
        };
    }

    private static String byNumbers(ScrewThread t) {
        return (t.starts() > 1 ? t.starts() + "-start thread " : "thread ")
                + Sizes.length(t.majorDiameter())
                + " outside, pitch "
                + Sizes.length(t.pitch())
                + ", not in the table of ISO 2904";
    }

    private void pulleys(BeltReduction belt) {
        String width =
                " teeth, pitch "
                        + Sizes.length(belt.pitch())
                        + ", for a belt "
                        + Sizes.length(belt.width())
                        + " wide";
        add(
                drive.motors(),
                "pulley on the motor",
                belt.teeth().motor() + width,
                Optional.empty(),
                "tooth profile");
        add(
                screwCount(),
                "pulley on the screw",
                belt.teeth().screw() + width,
                Optional.empty(),
                "bore, tooth profile");
        String size =
                "pitch " + Sizes.length(belt.pitch()) + ", " + Sizes.length(belt.width()) + " wide";
        if (drive.motors() == 1 && screwCount() > 1) {
            size += ", more than " + Sizes.length(around(belt)) + " round";
        }
        add(
                drive.motors(),
                "closed toothed belt",
                size,
                Optional.empty(),
                "length, by the motor's place");
    }

    /** Round the screw pulleys alone; the motor pulley makes it longer [m]. */
    private double around(BeltReduction belt) {
        double spread = across().max().orElse(0) - across().min().orElse(0);
        return 2 * spread + belt.teeth().screw() * belt.pitch();
    }

    private DoubleStream across() {
        return drive.lines().stream().mapToDouble(ScrewLine::y);
    }

    private void source() {
        if (drive.source() instanceof StepperDrive stepper) {
            add(
                    drive.motors(),
                    "lift motor",
                    Sizes.motor(stepper.motor()),
                    uses.of("fold.motor"),
                    Sizes.motorOpen(stepper.motor().pullOut()).toArray(NO_MORE));
        } else if (drive.source() instanceof HandCrank crank) {
            add(
                    1,
                    "hand crank",
                    "radius "
                            + Sizes.length(crank.radius())
                            + ", for a hand of "
                            + Sizes.given(Dimension.FORCE, crank.allowedForce()),
                    uses.of("fold.motor"),
                    "bore");
        }
    }
}
