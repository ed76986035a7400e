// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.machine.Machine;
import foldwright.machine.MachineNumbers;
import foldwright.quantity.Printed;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The assumed inputs of a machine file, with a way to measure each. */
final class Assumptions {
    private Assumptions() {}

    /** Those that lie under one of the given key paths. */
    static List<Assumption> under(Machine machine, String... paths) {
        List<String> keys =
                machine.assumed().stream()
                        .filter(key -> Arrays.stream(paths).anyMatch(key::startsWith))
                        .toList();
        if (keys.isEmpty()) {
            return List.of();
        }
        List<MachineNumbers.Entry> all = MachineNumbers.all(machine);
        return keys.stream().map(key -> of(all, key)).toList();
    }

    private static Assumption of(List<MachineNumbers.Entry> all, String path) {
        List<MachineNumbers.Entry> numbers =
                all.stream()
                        .filter(e -> e.path().equals(path) || e.path().startsWith(path + "."))
                        .toList();
        if (numbers.size() == 1) {
            MachineNumbers.Entry only = numbers.get(0);
            return new Assumption(
                    path,
                    part(path) + ": " + only.key().about().toLowerCase(Locale.ROOT),
                    Printed.given(only.key().dimension(), only.value()),
                    measure(path));
        }
        return new Assumption(path, whole(path), several(numbers), measure(path));
    }

    /** What a key with keys below it describes: "collar of the screw", "stepper of the motors". */
    private static String whole(String path) {
        String[] steps = path.replaceAll("\\[\\d+]", "").split("\\.");
        String own = words(steps[steps.length - 1]);
        return steps.length < 2 ? own : own + " of the " + words(steps[steps.length - 2]);
    }

    /** Two values, or how many there are. */
    private static String several(List<MachineNumbers.Entry> numbers) {
        if (numbers.isEmpty()) {
            return "see the file";
        }
        if (numbers.size() > 2) {
            return numbers.size() + " values";
        }
        return numbers.stream()
                .map(e -> Printed.given(e.key().dimension(), e.value()))
                .collect(Collectors.joining(", "));
    }

    private static String words(String step) {
        return step.replaceAll("([a-z])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
    }

    /** The part a key belongs to: "drive.screw.nut.friction" is of the nut. */
    private static String part(String path) {
        String[] steps = path.replaceAll("\\[\\d+]", "").split("\\.");
        int owner = Math.max(0, steps.length - 2);
        return switch (steps[owner]) {
            case "source" -> words(steps[steps.length - 1]);
            case "usual" -> words(steps[Math.max(0, owner - 1)]);
            default -> words(steps[owner]);
        };
    }

    private static String measure(String key) {
        String k = key.toLowerCase(Locale.ROOT);
        if (k.contains("stiffness")) {
            return "pull with 10 N and read a dial indicator";
        }
        if (k.contains("nut") && k.contains("friction")) {
            return "hang a weight on the nut and turn the screw with a lever and a scale";
        }
        if (k.contains("pins") && k.contains("friction")) {
            return "pull an unloaded arm round with a scale";
        }
        if (k.contains("slider") && k.contains("friction")) {
            return "pull the loaded foot along with a luggage scale";
        }
        if (k.contains("motor") || k.contains("pullout")) {
            return "data sheet curve at your supply voltage, or a lever and a scale";
        }
        if (k.contains("mass")) {
            return "kitchen scale";
        }
        if (k.contains("length") || k.contains("diameter") || k.contains("width")) {
            return "calipers";
        }
        return "measure it, or ask for the data sheet";
    }
}
