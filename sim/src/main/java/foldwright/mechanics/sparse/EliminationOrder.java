// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.sparse;

import java.util.Arrays;
import java.util.PriorityQueue;

/**
 * A fill-reducing order of the blocks: greedy minimum degree on the block graph, degrees counted in
 * scalars, with joints held back by the {@link RankRule}.
 *
 * <p>Deterministic: ties are broken by the {@link Ties} rule and then by index. Cost is about
 * {@code n log n} for graphs of bounded degree.
 *
 * @see <a href="https://doi.org/10.1137/1031001">George and Liu, The evolution of the minimum
 *     degree ordering algorithm, SIAM Review 31 (1989)</a>
 */
final class EliminationOrder {
    /** Which of several blocks of least degree goes first. */
    enum Ties {
        /** The one added first. */
        BY_INDEX,
        /** The one whose neighbourhood changed last: follows a chain from its end. */
        BY_RECENCY
    }

    /** Whether a joint may go while one of its bodies is still there. */
    enum OpenJoints {
        ALLOWED,
        HELD_BACK
    }

    /** The least goes first. */
    private record Candidate(int block, int degree, int tie, int stamp)
            implements Comparable<Candidate> {
        @Override
        public int compareTo(Candidate o) {
            int c = Integer.compare(degree, o.degree);
            c = c != 0 ? c : Integer.compare(tie, o.tie);
            return c != 0 ? c : Integer.compare(block, o.block);
        }
    }

    private final BlockPattern pattern;
    private final RankRule rule;
    private final Ties ties;
    private final OpenJoints openJoints;
    private final int[][] adjacent;
    private final int[] stamp;
    private final int[] touched;
    private final boolean[] gone;
    private final PriorityQueue<Candidate> queue = new PriorityQueue<>();
    private final int[][] original;
    private final int[] bodiesLeft;
    private int[] waiting = new int[16];
    private int waitingCount;
    private final int[] sequence;
    private final int[][] borders;

    private EliminationOrder(BlockPattern pattern, Ties ties, OpenJoints openJoints) {
        this.pattern = pattern;
        this.ties = ties;
        this.openJoints = openJoints;
        int n = pattern.blocks();
        rule = new RankRule(pattern);
        original = new int[n][];
        for (int b = 0; b < n; b++) {
            original[b] = pattern.neighbours(b);
        }
        adjacent = original.clone();
        bodiesLeft = new int[n];
        for (int b = 0; b < n; b++) {
            for (int u : pattern.isJoint(b) ? new int[0] : original[b]) {
                bodiesLeft[u]++;
            }
        }
        stamp = new int[n];
        touched = new int[n];
        gone = new boolean[n];
        sequence = new int[n];
        borders = new int[n][];
    }

    /** Runs the greedy elimination of all blocks. */
    static EliminationOrder of(BlockPattern pattern, Ties ties, OpenJoints openJoints) {
        EliminationOrder order = new EliminationOrder(pattern, ties, openJoints);
        order.run();
        return order;
    }

    /** Blocks in the order of their elimination. */
    int[] sequence() {
        return sequence;
    }

    /**
     * Per block, the later blocks that it meets when eliminated (fill included), ascending index.
     */
    int[][] borders() {
        return borders;
    }

    private void run() {
        for (int b = 0; b < sequence.length; b++) {
            offer(b);
        }
        int done = 0;
        while (done < sequence.length) {
            Candidate c = queue.remove();
            if (gone[c.block] || c.stamp != stamp[c.block]) {
                continue;
            }
            if (mayGo(c.block)) {
                sequence[done++] = c.block;
                eliminate(c.block, done);
            } else {
                if (waitingCount == waiting.length) {
                    waiting = Arrays.copyOf(waiting, 2 * waitingCount);
                }
                waiting[waitingCount++] = c.block;
            }
        }
    }

    private boolean mayGo(int block) {
        if (!pattern.isJoint(block)) {
            rule.eliminateBody(block);
            return true;
        }
        boolean held = openJoints == OpenJoints.HELD_BACK && bodiesLeft[block] > 0;
        return !held && rule.eliminateJoint(block);
    }

    /** Turns the neighbours of a block into a clique. */
    private void eliminate(int block, int time) {
        gone[block] = true;
        int[] border = adjacent[block];
        borders[block] = border;
        adjacent[block] = null;
        for (int u : border) {
            adjacent[u] = union(adjacent[u], border, u, block);
            touched[u] = time;
            offer(u);
        }
        if (!pattern.isJoint(block)) {
            for (int u : original[block]) {
                bodiesLeft[u]--;
            }
            askAgain(block);
        }
    }

    /** Offers those waiting joints again whose answer may change now that a body is gone. */
    private void askAgain(int body) {
        int kept = 0;
        for (int w = 0; w < waitingCount; w++) {
            int joint = waiting[w];
            if (!rule.concerns(joint, body)) {
                waiting[kept++] = joint;
            } else if (!gone[joint]) {
                offer(joint);
            }
        }
        waitingCount = kept;
    }

    private void offer(int block) {
        int degree = 0;
        for (int u : adjacent[block]) {
            degree += pattern.size(u);
        }
        int tie = ties == Ties.BY_RECENCY ? -touched[block] : 0;
        queue.add(new Candidate(block, degree, tie, ++stamp[block]));
    }

    /** Union of two ascending lists without two given blocks. */
    private static int[] union(int[] a, int[] b, int without, int andWithout) {
        int[] out = new int[a.length + b.length];
        int n = 0;
        int i = 0;
        int j = 0;
        while (i < a.length || j < b.length) {
            int next;
            if (j == b.length || (i < a.length && a[i] <= b[j])) {
                next = a[i];
                j += j < b.length && b[j] == next ? 1 : 0;
                i++;
            } else {
                next = b[j++];
            }
            if (next != without && next != andWithout) {
                out[n++] = next;
            }
        }
        return Arrays.copyOf(out, n);
    }
}
