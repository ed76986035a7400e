// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import java.util.LinkedHashMap;
import java.util.Map;

/** The blocks of the leg rails as flat arrays; blocks that see the same way and play are one. */
final class GuideArrays {
    final int lateralCount;
    final double[] along;
    final double[] lateralStiffness;
    final double[] lateralPlay;
    final int[] rail;
    final int yawCount;
    final double[] yawStiffness;
    final double[] yawPlay;

    private record Lateral(int rail, double along, double play) {}

    GuideArrays(BridgeGuide guide) {
        Map<Lateral, Double> lateral = new LinkedHashMap<>();
        Map<Double, Double> yaw = new LinkedHashMap<>();
        for (GuideBlock b : guide.blocks()) {
            if (b.lateralStiffness() > 0) {
                // Load-dependent friction needs the rails apart; else both are one spring.
                int side = guide.frictionCoefficient() > 0 && b.rail().side() > 0 ? 1 : 0;
                Lateral key = new Lateral(side, b.along(), b.lateralPlay());
                lateral.merge(key, b.lateralStiffness(), Double::sum);
            }
            if (b.yawStiffness() > 0) {
                yaw.merge(b.yawPlay(), b.yawStiffness(), Double::sum);
            }
        }
        lateralCount = lateral.size();
        along = lateral.keySet().stream().mapToDouble(Lateral::along).toArray();
        lateralPlay = lateral.keySet().stream().mapToDouble(Lateral::play).toArray();
        rail = lateral.keySet().stream().mapToInt(Lateral::rail).toArray();
        lateralStiffness = lateral.values().stream().mapToDouble(Double::doubleValue).toArray();
        yawCount = yaw.size();
        yawPlay = yaw.keySet().stream().mapToDouble(Double::doubleValue).toArray();
        yawStiffness = yaw.values().stream().mapToDouble(Double::doubleValue).toArray();
    }
}
