// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The blocks of the leg rails as springs; blocks that see the same way and play are one. */
final class GuideSprings {
    final LateralSpring[] lateral;
    final YawSpring[] yaw;

    private record Place(boolean left, double along, double play) {}

    GuideSprings(BridgeGuide guide, BodyMass bridge) {
        Map<Place, List<GuideBlock>> places = new LinkedHashMap<>();
        Map<Double, Double> yaws = new LinkedHashMap<>();
        for (GuideBlock b : guide.blocks()) {
            if (b.lateralStiffness() > 0) {
                // Load-dependent friction needs the rails apart; else both are one spring.
                boolean left = guide.frictionCoefficient() == 0 || b.rail().side() < 0;
                Place key = new Place(left, b.along(), b.lateralPlay());
                places.computeIfAbsent(key, k -> new ArrayList<>()).add(b);
            }
            if (b.yawStiffness() > 0) {
                yaws.merge(b.yawPlay(), b.yawStiffness(), Double::sum);
            }
        }
        lateral =
                places.entrySet().stream()
                        .map(e -> spring(guide, bridge, e.getKey().left(), e.getValue()))
                        .toArray(LateralSpring[]::new);
        yaw =
                yaws.entrySet().stream()
                        .map(e -> new YawSpring(e.getKey(), e.getValue()))
                        .toArray(YawSpring[]::new);
        for (int i = 1; i < lateral.length; i++) {
            lateral[i - 1].next = lateral[i];
        }
        for (int i = 1; i < yaw.length; i++) {
            yaw[i - 1].next = yaw[i];
        }
    }

    private static LateralSpring spring(
            BridgeGuide guide, BodyMass bridge, boolean left, List<GuideBlock> blocks) {
        double k = blocks.stream().mapToDouble(GuideBlock::lateralStiffness).sum();
        return new LateralSpring(guide, bridge, left, blocks.get(0), k);
    }

    LateralSpring firstLateral() {
        return lateral.length == 0 ? null : lateral[0];
    }

    YawSpring firstYaw() {
        return yaw.length == 0 ? null : yaw[0];
    }
}
