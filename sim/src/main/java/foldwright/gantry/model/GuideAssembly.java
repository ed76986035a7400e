// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.machine.gantry.Floating;
import foldwright.machine.gantry.Guide;
import foldwright.machine.gantry.Legs;
import foldwright.machine.gantry.Preload;
import java.util.ArrayList;
import java.util.List;

/**
 * Blocks of a machine file as springs with play.
 *
 * <p>Play of a block with clearance c from stop to stop: c/2 to each side; its free yaw is c over
 * the ball length, that of blocks a distance s apart c over s. Blocks that are preloaded have none.
 * Yaw stiffness of blocks apart: sum of lateral stiffness times place squared, plus their own. A
 * single block without a stated yaw stiffness resists with its lateral stiffness spread evenly over
 * its ball length, k L^2/12.
 */
final class GuideAssembly {
    private GuideAssembly() {}

    static BridgeGuide bridge(Legs legs) {
        List<GuideBlock> blocks = new ArrayList<>();
        for (GuideBlock.Rail rail : GuideBlock.Rail.values()) {
            boolean floats =
                    legs.floating() == Floating.LEFT && rail == GuideBlock.Rail.LEFT
                            || legs.floating() == Floating.RIGHT && rail == GuideBlock.Rail.RIGHT;
            side(legs, rail, floats, blocks);
        }
        double friction = legs.guide().friction();
        return new BridgeGuide(legs.span() / 2, blocks, friction, friction, 0, 0);
    }

    private static void side(
            Legs legs, GuideBlock.Rail rail, boolean floats, List<GuideBlock> blocks) {
        Guide g = legs.guide();
        double lateral = floats ? 0 : g.block().lateralStiffness();
        boolean lumped =
                legs.yawStiffness().isPresent()
                        || legs.bracketStiffness().isPresent()
                        || g.blocks() == 1;
        if (!lumped) {
            for (int i = 0; i < g.blocks(); i++) {
                double own = g.block().yawStiffness().orElse(0);
                double free = play(g) / g.block().ballLength();
                blocks.add(new GuideBlock(rail, along(g, i), lateral, play(g) / 2, own, free));
            }
            return;
        }
        double fromBlocks = yaw(g, floats ? 0 : 1);
        double yaw =
                legs.yawStiffness()
                        .orElseGet(
                                () ->
                                        legs.bracketStiffness().isPresent() && fromBlocks > 0
                                                ? 1
                                                        / (1 / fromBlocks
                                                                + 1
                                                                        / legs.bracketStiffness()
                                                                                .getAsDouble())
                                                : fromBlocks);
        blocks.add(
                new GuideBlock(
                        rail,
                        0,
                        g.blocks() * lateral,
                        play(g) / 2,
                        yaw,
                        freeYaw(g),
                        new GuideBlock.Group(g.blocks(), g.blocks() > 1 ? g.spacing() : 0)));
    }

    static CarriageGuide carriage(Guide g) {
        return new CarriageGuide(
                g.blocks(),
                g.spacing(),
                g.blocks() * g.block().lateralStiffness(),
                play(g) / 2,
                yaw(g, 1),
                freeYaw(g),
                g.friction(),
                0);
    }

    private static double play(Guide g) {
        return g.preload() == Preload.CLEARANCE ? g.block().clearance() : 0;
    }

    private static double freeYaw(Guide g) {
        return play(g) / (g.blocks() > 1 ? g.spacing() : g.block().ballLength());
    }

    private static double along(Guide g, int i) {
        return g.blocks() == 1 ? 0 : g.spacing() * (i / (g.blocks() - 1.0) - 0.5);
    }

    /** Yaw stiffness of the blocks of one rail; a share of 0 drops what side forces give. */
    private static double yaw(Guide g, double lateralShare) {
        double k = lateralShare * g.block().lateralStiffness();
        double length = g.block().ballLength();
        double own =
                g.block().yawStiffness().orElse(g.blocks() == 1 ? k * length * length / 12 : 0);
        double sum = g.blocks() * own;
        for (int i = 0; i < g.blocks(); i++) {
            sum += k * along(g, i) * along(g, i);
        }
        return sum;
    }
}
