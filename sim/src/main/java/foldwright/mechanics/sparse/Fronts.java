// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.sparse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The elimination order grouped into dense fronts: each front eliminates some blocks (its pivots)
 * and passes an update of the later blocks that these meet (its border) to its parent.
 *
 * <p>A child is merged into its parent while that lowers the estimated time. Fronts come in
 * postorder: every front after its children, and the children of one front close before it, so that
 * few updates wait at a time.
 */
final class Fronts {
    /** Estimated time of a front [core cycles], fitted to runs of {@code BlockLdlBenchmark}. */
    private static final double CYCLES_A_FRONT = 120;

    private static final double CYCLES_A_TILE = 30;
    private static final double CYCLES_A_TILE_COLUMN = 10;
    private static final double CYCLES_A_PIVOT = 12;
    private static final double CYCLES_A_BORDER_ENTRY = 2;

    /** One front: blocks in elimination order, and the front that takes its update. */
    static final class Front {
        final int[] pivots;
        final int[] border;
        final int[] children;

        private Front(int[] pivots, int[] border, int[] children) {
            this.pivots = pivots;
            this.border = border;
            this.children = children;
        }
    }

    private final BlockPattern pattern;
    private final EliminationOrder order;
    private final int[] rank;
    private final List<List<Integer>> pivots = new ArrayList<>();
    private final List<List<Integer>> children = new ArrayList<>();
    private final List<Integer> roots = new ArrayList<>();
    private double cycles;

    private Fronts(BlockPattern pattern, EliminationOrder order) {
        this.pattern = pattern;
        this.order = order;
        int[] sequence = order.sequence();
        rank = new int[sequence.length];
        for (int i = 0; i < sequence.length; i++) {
            rank[sequence[i]] = i;
            pivots.add(null);
            children.add(new ArrayList<>());
        }
        for (int block : sequence) {
            pivots.set(block, new ArrayList<>(List.of(block)));
            mergeChildren(block);
            int parent = parent(block);
            (parent < 0 ? roots : children.get(parent)).add(block);
            cycles += cost(block);
        }
    }

    static Fronts of(BlockPattern pattern, EliminationOrder order) {
        return new Fronts(pattern, order);
    }

    /** Estimated time of one factorisation [core cycles]. */
    double cycles() {
        return cycles;
    }

    /** All fronts, children before parents. Child indices refer to this list. */
    List<Front> postorder() {
        List<Front> out = new ArrayList<>();
        int[] place = new int[pattern.blocks()];
        int[] nextChild = new int[pattern.blocks()];
        for (int root : roots) {
            List<Integer> path = new ArrayList<>(List.of(root));
            while (!path.isEmpty()) {
                int top = path.get(path.size() - 1);
                List<Integer> below = children.get(top);
                if (nextChild[top] < below.size()) {
                    path.add(below.get(nextChild[top]++));
                } else {
                    path.remove(path.size() - 1);
                    place[top] = out.size();
                    out.add(front(top, place));
                }
            }
        }
        return out;
    }

    private Front front(int top, int[] place) {
        int[] places = BlockPattern.numbers(children.get(top));
        for (int c = 0; c < places.length; c++) {
            places[c] = place[places[c]];
        }
        int[] own = inOrder(BlockPattern.numbers(pivots.get(top)));
        return new Front(own, inOrder(order.borders()[top].clone()), places);
    }

    /** The same blocks in the order of their elimination; sorts in place. */
    private int[] inOrder(int[] blocks) {
        for (int i = 0; i < blocks.length; i++) {
            blocks[i] = rank[blocks[i]];
        }
        Arrays.sort(blocks);
        for (int i = 0; i < blocks.length; i++) {
            blocks[i] = order.sequence()[blocks[i]];
        }
        return blocks;
    }

    /** The block of the border that is eliminated first, or -1. */
    private int parent(int block) {
        int best = -1;
        for (int u : order.borders()[block]) {
            if (best < 0 || rank[u] < rank[best]) {
                best = u;
            }
        }
        return best;
    }

    /** Merges, best first, every child whose front is cheaper inside this one. */
    private void mergeChildren(int block) {
        while (true) {
            int best = -1;
            double bestGain = 0;
            for (int c : children.get(block)) {
                double gain = cost(c) + cost(block) - mergedCost(c, block);
                if (gain > bestGain) {
                    best = c;
                    bestGain = gain;
                }
            }
            if (best < 0) {
                return;
            }
            merge(best, block);
        }
    }

    private void merge(int child, int block) {
        cycles -= cost(child);
        pivots.get(block).addAll(pivots.get(child));
        children.get(block).remove(Integer.valueOf(child));
        children.get(block).addAll(children.get(child));
        pivots.set(child, null);
        children.set(child, null);
    }

    private double cost(int block) {
        return cost(rows(pivots.get(block)), borderRows(block));
    }

    private double mergedCost(int child, int block) {
        return cost(rows(pivots.get(child)) + rows(pivots.get(block)), borderRows(block));
    }

    private int rows(List<Integer> blocks) {
        int sum = 0;
        for (int b : blocks) {
            sum += pattern.size(b);
        }
        return sum;
    }

    private int borderRows(int block) {
        int sum = 0;
        for (int b : order.borders()[block]) {
            sum += pattern.size(b);
        }
        return sum;
    }

    private static double cost(int p, int b) {
        int strips = (p + b + 3) / 4;
        double sum = CYCLES_A_FRONT + CYCLES_A_PIVOT * p + CYCLES_A_BORDER_ENTRY * b * (b + 1) / 2;
        for (int j = 0; j < strips; j++) {
            int tiles = strips - j;
            sum += tiles * (CYCLES_A_TILE + CYCLES_A_TILE_COLUMN * Math.min(4 * j, p));
        }
        return sum;
    }
}
