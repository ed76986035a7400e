// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.sparse;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/**
 * Which blocks a system has and which of them meet off the diagonal: the topology, without numbers.
 *
 * <p>A <em>body</em> block has a positive definite diagonal block (inertia, stiffness), a
 * <em>joint</em> block a negative semidefinite one (minus compliance). Blocks are numbered in order
 * of addition. Built once, then handed to {@link BlockLdl#analyse}; not meant for use while
 * stepping.
 */
public final class BlockPattern {
    private enum Kind {
        BODY,
        JOINT
    }

    private final List<Kind> kinds = new ArrayList<>();
    private final List<int[]> parts = new ArrayList<>();
    private final List<Integer> sizes = new ArrayList<>();
    private final List<TreeSet<Integer>> neighbours = new ArrayList<>();

    /**
     * Adds a block of coordinates; returns its index.
     *
     * @param parts sizes of the parts that do not meet each other in the block itself: one number
     *     for a full diagonal block
     */
    public int addBody(int... parts) {
        return add(Kind.BODY, parts);
    }

    /** Adds a block of constraint rows, likewise; returns its index. */
    public int addJoint(int... parts) {
        return add(Kind.JOINT, parts);
    }

    /**
     * States that the off-diagonal block between two blocks may hold numbers. Order of the two and
     * repetition do not matter; a block always meets itself.
     */
    public void couple(int a, int b) {
        check(a);
        check(b);
        if (a != b) {
            neighbours.get(a).add(b);
            neighbours.get(b).add(a);
        }
    }

    /** Number of blocks added so far. */
    public int blocks() {
        return sizes.size();
    }

    /** Rows (and columns) of a block. */
    public int size(int block) {
        check(block);
        return sizes.get(block);
    }

    /** Sizes of the parts that the diagonal block consists of. */
    int[] parts(int block) {
        return parts.get(block);
    }

    boolean isJoint(int block) {
        return kinds.get(block) == Kind.JOINT;
    }

    /** Blocks that meet this one off the diagonal, ascending. */
    int[] neighbours(int block) {
        return numbers(neighbours.get(block));
    }

    BlockPattern copy() {
        BlockPattern out = new BlockPattern();
        for (int b = 0; b < blocks(); b++) {
            out.add(kinds.get(b), parts.get(b));
        }
        for (int b = 0; b < blocks(); b++) {
            out.neighbours.get(b).addAll(neighbours.get(b));
        }
        return out;
    }

    /** All that makes the topology, as numbers: equal content, equal topology. */
    int[] content() {
        List<Integer> out = new ArrayList<>();
        for (int b = 0; b < blocks(); b++) {
            out.add(isJoint(b) ? -parts.get(b).length : parts.get(b).length);
            for (int part : parts.get(b)) {
                out.add(part);
            }
            out.add(neighbours.get(b).size());
            out.addAll(neighbours.get(b));
        }
        return numbers(out);
    }

    /** The same numbers, in the same order. */
    static int[] numbers(Collection<Integer> list) {
        int[] out = new int[list.size()];
        int n = 0;
        for (int e : list) {
            out[n++] = e;
        }
        return out;
    }

    private int add(Kind kind, int... blockParts) {
        int size = 0;
        int least = blockParts.length == 0 ? 0 : Integer.MAX_VALUE;
        for (int part : blockParts) {
            size += part;
            least = Math.min(least, part);
        }
        if (least < 1) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "block %d: size %d, every part must be 1 or more",
                            blocks(),
                            size));
        }
        kinds.add(kind);
        parts.add(blockParts.clone());
        sizes.add(size);
        neighbours.add(new TreeSet<>());
        return blocks() - 1;
    }

    private void check(int block) {
        if (block < 0 || block >= blocks()) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "block %d: there are blocks 0 to %d",
                            block,
                            blocks() - 1));
        }
    }
}
