// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.sparse;

import java.util.Arrays;

/**
 * Says which joint blocks may be eliminated now without meeting a pivot that is small for no
 * physical reason.
 *
 * <p>After some bodies and joints are eliminated, the pivots of the joints are healthy if their
 * rows, restricted to the columns of the eliminated bodies, have full rank. Think of the eliminated
 * bodies as nodes and of the eliminated joints as edges between them; an edge whose other body is
 * still present is <em>open</em>. The rule, per connected component:
 *
 * <ul>
 *   <li>without open edges, the rows have the rank that the mechanism itself gives them: anything
 *       goes, and only true redundancy leaves pivots of the size of the compliance;
 *   <li>with an open edge, every joint must <em>claim</em> an eliminated body of its own with at
 *       least as many columns as the joint has rows. The component is then a tree whose rows are
 *       block triangular, hence of full rank.
 * </ul>
 *
 * Claims are a bipartite matching, grown by augmenting paths.
 */
final class RankRule {
    private static final int NONE = -1;

    private final BlockPattern pattern;
    private final int[][] bodiesOf;
    private final int[][] jointsOf;
    private final boolean[] gone;
    private final int[] claimedBy;
    private final int[] absentBodies;
    private final int[] component;
    private final int[] open;
    private final int[] unclaiming;
    private final int[] visited;
    private int visit;

    RankRule(BlockPattern pattern) {
        this.pattern = pattern;
        int n = pattern.blocks();
        bodiesOf = new int[n][];
        jointsOf = new int[n][];
        for (int b = 0; b < n; b++) {
            int[] all = pattern.neighbours(b);
            int joints = 0;
            for (int u : all) {
                joints += pattern.isJoint(u) ? 1 : 0;
            }
            bodiesOf[b] = new int[all.length - joints];
            jointsOf[b] = new int[joints];
            for (int i = 0, j = 0; i + j < all.length; ) {
                int u = all[i + j];
                if (pattern.isJoint(u)) {
                    jointsOf[b][j++] = u;
                } else {
                    bodiesOf[b][i++] = u;
                }
            }
        }
        gone = new boolean[n];
        claimedBy = new int[n];
        Arrays.fill(claimedBy, NONE);
        absentBodies = new int[n];
        component = new int[n];
        for (int b = 0; b < n; b++) {
            component[b] = b;
        }
        open = new int[n];
        unclaiming = new int[n];
        visited = new int[n];
    }

    /**
     * Eliminates a joint block if the rule allows it now.
     *
     * @return false, with nothing changed, if the joint has to wait for more bodies to go
     */
    boolean eliminateJoint(int joint) {
        int[] bodies = bodiesOf[joint];
        if (absentBodies[joint] == 0 && bodies.length > 0) {
            return false;
        }
        int opens = absentBodies[joint] < bodies.length ? 1 : 0;
        if (opens + sumOverComponents(joint, open) == 0) {
            record(joint, opens, claim(joint) ? 0 : 1);
            return true;
        }
        if (sumOverComponents(joint, unclaiming) > 0 || !claim(joint)) {
            return false;
        }
        record(joint, opens, 0);
        return true;
    }

    /** Records that a body has been eliminated, which is always allowed. */
    void eliminateBody(int body) {
        gone[body] = true;
        for (int j : jointsOf[body]) {
            absentBodies[j]++;
            if (gone[j]) {
                int root = joinBodiesOf(j);
                if (absentBodies[j] == bodiesOf[j].length) {
                    open[root]--;
                }
            }
        }
    }

    /** Whether the elimination of a body may have changed what is allowed to a joint. */
    boolean concerns(int joint, int body) {
        int root = find(body);
        for (int b : bodiesOf[joint]) {
            if (gone[b] && find(b) == root) {
                return true;
            }
        }
        return false;
    }

    private void record(int joint, int opens, int unclaims) {
        gone[joint] = true;
        if (absentBodies[joint] > 0) {
            int root = joinBodiesOf(joint);
            open[root] += opens;
            unclaiming[root] += unclaims;
        }
    }

    /** Sum of a per-component count over the components that the joint would touch. */
    private int sumOverComponents(int joint, int[] count) {
        int mark = ++visit;
        int sum = 0;
        for (int b : bodiesOf[joint]) {
            int root = find(b);
            if (gone[b] && visited[root] != mark) {
                visited[root] = mark;
                sum += count[root];
            }
        }
        return sum;
    }

    private boolean claim(int joint) {
        return augment(joint, ++visit);
    }

    /** Kuhn's augmenting path from a joint to an unclaimed body; changes claims only on success. */
    private boolean augment(int joint, int mark) {
        for (int b : bodiesOf[joint]) {
            if (!gone[b] || visited[b] == mark || pattern.size(b) < pattern.size(joint)) {
                continue;
            }
            visited[b] = mark;
            if (claimedBy[b] == NONE || augment(claimedBy[b], mark)) {
                claimedBy[b] = joint;
                return true;
            }
        }
        return false;
    }

    /** Makes one component of all eliminated bodies of a joint; returns its root. */
    private int joinBodiesOf(int joint) {
        int root = NONE;
        for (int b : bodiesOf[joint]) {
            if (gone[b]) {
                root = root == NONE ? find(b) : join(root, find(b));
            }
        }
        return root;
    }

    private int find(int body) {
        int root = body;
        while (component[root] != root) {
            component[root] = component[component[root]];
            root = component[root];
        }
        return root;
    }

    private int join(int a, int b) {
        if (a != b) {
            component[b] = a;
            open[a] += open[b];
            unclaiming[a] += unclaiming[b];
        }
        return a;
    }
}
