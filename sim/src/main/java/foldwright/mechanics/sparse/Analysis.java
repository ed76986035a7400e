// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.sparse;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What is found once a topology: addresses of the caller's blocks and of the fronts. Immutable, so
 * solvers of the same topology share it; studies build the same machine thousands of times.
 *
 * <p>The last few small ones are remembered. Whether one is remembered or found anew changes the
 * time only, never a result.
 */
record Analysis(BlockPattern pattern, BlockLayout layout, FrontPlan plan) {
    /** Topologies remembered, and the largest of them [blocks]; about 50 kB each at the most. */
    private static final int REMEMBERED = 32;

    private static final int LARGEST = 400;

    private static final Map<Key, Analysis> MEMORY = new LinkedHashMap<>(64, 0.75f, true);

    /** A topology by its content. */
    private static final class Key {
        private final int[] content;

        Key(int[] content) {
            this.content = content;
        }

        @Override
        public boolean equals(Object o) {
            return o instanceof Key && Arrays.equals(content, ((Key) o).content);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(content);
        }
    }

    /** The analysis of a pattern, which may grow later without harm. */
    static Analysis of(BlockPattern pattern) {
        if (pattern.blocks() > LARGEST) {
            return find(pattern.copy());
        }
        Key key = new Key(pattern.content());
        synchronized (MEMORY) {
            Analysis known = MEMORY.get(key);
            if (known != null) {
                return known;
            }
        }
        Analysis found = find(pattern.copy());
        synchronized (MEMORY) {
            MEMORY.put(key, found);
            if (MEMORY.size() > REMEMBERED) {
                MEMORY.remove(MEMORY.keySet().iterator().next());
            }
        }
        return found;
    }

    /** Tries several greedy orders and takes the one with the least estimated time. */
    private static Analysis find(BlockPattern pattern) {
        Fronts best = null;
        for (EliminationOrder.OpenJoints open : EliminationOrder.OpenJoints.values()) {
            for (EliminationOrder.Ties ties : EliminationOrder.Ties.values()) {
                Fronts fronts = Fronts.of(pattern, EliminationOrder.of(pattern, ties, open));
                if (best == null || fronts.cycles() < best.cycles()) {
                    best = fronts;
                }
            }
        }
        var fronts = best.postorder();
        BlockLayout layout = new BlockLayout(pattern, fronts);
        return new Analysis(pattern, layout, new FrontPlan(pattern, fronts, layout));
    }
}
