// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.Machine;
import foldwright.machine.gantry.BeltRoute;
import foldwright.machine.gantry.Gantry;
import foldwright.machine.gantry.GantryMotor;
import foldwright.machine.gantry.Guide;
import foldwright.machine.gantry.Reach;
import foldwright.machine.gantry.RouteItem;
import foldwright.machine.gantry.ToothedWheel;
import foldwright.machine.gantry.Wheel;
import foldwright.machine.part.Carrier;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Whether the gantry's names, travels and masses agree. Belt routes are judged by the gantry. */
final class GantryChecks {
    private final Machine machine;
    private final Contradictions report;

    GantryChecks(Machine machine, Contradictions report) {
        this.machine = machine;
        this.report = report;
    }

    void check() {
        machine.gantry().ifPresent(this::checkGantry);
        checkTool();
    }

    private void checkTool() {
        boolean heavy =
                machine.gantry().isPresent()
                        && machine.tool().isPresent()
                        && machine.tool().get().mass() > machine.gantry().get().carriage().mass();
        if (heavy) {
            report.add(
                    "tool.mass",
                    "heavier than the carriage it is part of",
                    "at most " + machine.gantry().get().carriage().mass() + " kg");
        }
    }

    private void checkGantry(Gantry gantry) {
        checkMassesOnce();
        checkRail(gantry.legs().guide(), gantry.legs().travel(), "gantry.legs.guide");
        checkRail(gantry.bridge().guide(), gantry.bridge().travel(), "gantry.bridge.guide");
        double half = gantry.legs().span() / 2;
        Reach travel = gantry.bridge().travel();
        if (travel.low() < -half || travel.high() > half) {
            report.add(
                    "gantry.bridge.travel",
                    "it leads over the rails",
                    "between " + mm(-half) + " and " + mm(half));
        }
        Set<String> turners = checkMotors(gantry.motors());
        Set<String> used = new HashSet<>();
        Set<String> beltNames = new HashSet<>();
        for (int i = 0; i < gantry.belts().size(); i++) {
            BeltRoute belt = gantry.belts().get(i);
            String path = "gantry.belts[" + i + "]";
            if (!beltNames.add(belt.name())) {
                report.add(path + ".name", "another belt has this name", "each name once");
            }
            checkRoute(belt, path + ".route", turners, used);
        }
        checkMotorsUsed(gantry, used);
    }

    private void checkMassesOnce() {
        for (int i = 0; i < machine.deck().masses().size(); i++) {
            if (machine.deck().masses().get(i).moves() != Carrier.WITH_DECK) {
                report.add(
                        "deck.masses[" + i + "].moves",
                        "the gantry section states bridge and carriage already",
                        "with-deck");
            }
        }
    }

    private void checkRail(Guide guide, Reach travel, String path) {
        double needed = travel.length() + guide.spacing() + guide.block().ballLength();
        if (guide.length().isPresent() && guide.length().getAsDouble() < needed) {
            report.add(
                    path + ".length",
                    mm(guide.length().getAsDouble())
                            + ", where travel, block spacing and block need "
                            + mm(needed),
                    "at least " + mm(needed));
        }
    }

    private Set<String> checkMotors(List<GantryMotor> motors) {
        Set<String> names = new LinkedHashSet<>();
        for (int i = 0; i < motors.size(); i++) {
            String path = "gantry.motors[" + i + "]";
            if (!names.add(motors.get(i).name())) {
                report.add(path + ".name", "another motor has this name", "each name once");
            }
            int at = i;
            motors.get(i)
                    .crossShaft()
                    .filter(shaft -> !names.add(shaft.name()))
                    .ifPresent(
                            shaft ->
                                    report.add(
                                            "gantry.motors[" + at + "].crossShaft.name",
                                            "a motor or shaft has this name",
                                            "each name once"));
        }
        return names;
    }

    private void checkRoute(BeltRoute belt, String path, Set<String> turners, Set<String> used) {
        Set<String> names = new HashSet<>();
        for (int i = 0; i < belt.route().size(); i++) {
            RouteItem item = belt.route().get(i);
            String here = path + "[" + i + "]";
            if (!names.add(item.name())) {
                report.add(here + ".name", "the route meets this name twice", "each name once");
            }
            if (item instanceof ToothedWheel wheel && wheel.turnedBy().isPresent()) {
                String by = wheel.turnedBy().get();
                used.add(by);
                if (!turners.contains(by)) {
                    report.add(
                            here + ".turnedBy",
                            "there is no motor or cross shaft " + Words.quoted(by),
                            String.join(", ", turners));
                }
            }
        }
        if (belt.route().stream().noneMatch(Wheel.class::isInstance)) {
            report.add(path, "the belt runs over no wheel", "at least one");
        }
    }

    private void checkMotorsUsed(Gantry gantry, Set<String> used) {
        for (int i = 0; i < gantry.motors().size(); i++) {
            GantryMotor motor = gantry.motors().get(i);
            boolean turns =
                    used.contains(motor.name())
                            || motor.crossShaft().filter(s -> used.contains(s.name())).isPresent();
            if (!turns) {
                report.add(
                        "gantry.motors[" + i + "].name",
                        "no wheel is turned by this motor",
                        "a motor that moves something");
            }
        }
    }

    private static String mm(double metres) {
        return Contradictions.mm(metres);
    }
}
