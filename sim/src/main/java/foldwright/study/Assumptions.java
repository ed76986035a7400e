// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.machine.Machine;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The assumed inputs of a machine file, with a way to measure each. */
final class Assumptions {
    private Assumptions() {}

    /** Those that lie under one of the given key paths. */
    static List<Assumption> under(Machine machine, String... paths) {
        return machine.assumed().stream()
                .filter(key -> Arrays.stream(paths).anyMatch(key::startsWith))
                .map(
                        key ->
                                new Assumption(
                                        key, words(key), KeyValue.text(machine, key), measure(key)))
                .toList();
    }

    /** The last steps of a key path as words: "drive.screw.nut.friction" is "nut friction". */
    private static String words(String key) {
        String[] steps = key.replaceAll("\\[\\d+]", "").split("\\.");
        int from = Math.max(0, steps.length - 2);
        return String.join(" ", Arrays.copyOfRange(steps, from, steps.length))
                .replaceAll("([a-z])([A-Z])", "$1 $2")
                .toLowerCase(Locale.ROOT);
    }

    private static String measure(String key) {
        String k = key.toLowerCase(Locale.ROOT);
        if (k.contains("nut") && k.contains("friction")) {
            return "hang a weight on the nut and turn the screw with a lever and a scale";
        }
        if (k.contains("pins") || k.contains("bearing")) {
            return "pull an unloaded arm round with a scale";
        }
        if (k.contains("slider")) {
            return "pull the loaded foot along with a luggage scale";
        }
        if (k.contains("motor") || k.contains("pullout")) {
            return "data sheet curve at your supply voltage, or a lever and a scale";
        }
        if (k.contains("stiffness")) {
            return "pull with 10 N and read a dial indicator";
        }
        if (k.contains("mass")) {
            return "kitchen scale";
        }
        return "measure or ask for the data sheet";
    }
}
