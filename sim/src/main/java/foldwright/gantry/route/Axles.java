// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The turning parts of a layout that have an angle of their own: driven axles first, then axles on
 * shafts, then free idlers where these count as states. Axles joined by a rigid shaft are one.
 */
final class Axles {
    private final List<String> names = new ArrayList<>();
    private final Map<String, Integer> index = new HashMap<>();

    Axles(BeltLayout layout, IdlerModel idlers) {
        Map<String, String> joined = new HashMap<>();
        for (CrossShaft shaft : layout.shafts()) {
            if (Double.isInfinite(shaft.stiffness())) {
                joined.put(shaft.second(), shaft.first());
            }
        }
        layout.drivenAxles().forEach(axle -> add(axle, joined));
        wheels(layout).forEach(wheel -> wheel.axle().ifPresent(axle -> add(axle, joined)));
        if (idlers == IdlerModel.STATES) {
            wheels(layout).stream()
                    .filter(wheel -> wheel.axle().isEmpty() && wheel.inertia() > 0)
                    .forEach(wheel -> add(wheel.name(), joined));
        }
    }

    private static List<Wheel> wheels(BeltLayout layout) {
        return layout.belts().stream()
                .flatMap(belt -> belt.points().stream())
                .filter(Wheel.class::isInstance)
                .map(Wheel.class::cast)
                .toList();
    }

    private void add(String axle, Map<String, String> joined) {
        String root = axle;
        for (int hops = 0; joined.containsKey(root) && hops < joined.size(); hops++) {
            root = joined.get(root);
        }
        if (!index.containsKey(root)) {
            index.put(root, names.size());
            names.add(root);
        }
        index.put(axle, index.get(root));
    }

    /** Axle that carries a wheel, or -1 where the wheel only passes tension on. */
    int of(Wheel wheel) {
        return index.getOrDefault(wheel.axle().orElse(wheel.name()), -1);
    }

    int of(String axle) {
        return index.getOrDefault(axle, -1);
    }

    List<String> names() {
        return List.copyOf(names);
    }
}
