// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.sparse;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A random system {@code [S G'; G -C]} kept both as a dense matrix and as instructions for a {@link
 * BlockLdl}; the two are filled from the same numbers.
 */
final class QuasiDefinite {
    private record Block(boolean joint, int size, int start) {}

    final BlockPattern pattern = new BlockPattern();
    final double[][] dense;
    private final List<Block> blocks = new ArrayList<>();
    private final List<int[]> couplings = new ArrayList<>();
    private final Random random;

    /** A topology to be filled: blocks and couplings are added in any order. */
    static final class Builder {
        private final List<Integer> sizes = new ArrayList<>();
        private final List<int[]> couplings = new ArrayList<>();

        int body(int size) {
            sizes.add(size);
            return sizes.size() - 1;
        }

        int joint(int rows, int... with) {
            sizes.add(-rows);
            int joint = sizes.size() - 1;
            for (int w : with) {
                couple(joint, w);
            }
            return joint;
        }

        void couple(int a, int b) {
            couplings.add(new int[] {Math.max(a, b), Math.min(a, b)});
        }

        int count() {
            return sizes.size();
        }

        boolean isJoint(int block) {
            return sizes.get(block) < 0;
        }

        /** The same topology with the blocks added in another order. */
        Builder permuted(Random random) {
            List<Integer> order = new ArrayList<>();
            for (int i = 0; i < sizes.size(); i++) {
                order.add(i);
            }
            java.util.Collections.shuffle(order, random);
            Builder out = new Builder();
            int[] now = new int[sizes.size()];
            for (int old : order) {
                now[old] = out.sizes.size();
                out.sizes.add(sizes.get(old));
            }
            couplings.forEach(c -> out.couple(now[c[0]], now[c[1]]));
            return out;
        }

        QuasiDefinite fill(Random random, double compliance) {
            return new QuasiDefinite(this, random, compliance);
        }
    }

    private QuasiDefinite(Builder topology, Random random, double compliance) {
        this.random = random;
        int n = 0;
        for (int size : topology.sizes) {
            Block b = new Block(size < 0, Math.abs(size), n);
            blocks.add(b);
            n += b.size;
            if (b.joint) {
                pattern.addJoint(b.size);
            } else {
                pattern.addBody(b.size);
            }
        }
        dense = new double[n][n];
        for (Block b : blocks) {
            addDefinite(b, b.joint ? -compliance : 1);
        }
        for (int[] c : topology.couplings) {
            couplings.add(c);
            pattern.couple(c[0], c[1]);
            fillCoupling(blocks.get(c[0]), blocks.get(c[1]), compliance);
        }
    }

    int size() {
        return dense.length;
    }

    /** Replaces the rows of one joint by those of another, scaled: true redundancy. */
    void repeatRows(int of, int in, double scale) {
        Block a = blocks.get(of);
        Block b = blocks.get(in);
        for (int r = 0; r < Math.min(a.size, b.size); r++) {
            for (Block body : blocks) {
                if (!body.joint) {
                    for (int k = body.start; k < body.start + body.size; k++) {
                        set(b.start + r, k, scale * dense[a.start + r][k]);
                    }
                }
            }
        }
    }

    void set(int i, int j, double value) {
        dense[i][j] = value;
        dense[j][i] = value;
    }

    void write(BlockLdl ldl) {
        double[] v = ldl.values();
        for (int b = 0; b < blocks.size(); b++) {
            copy(v, ldl.diagonal(b), blocks.get(b), blocks.get(b));
        }
        for (int[] c : couplings) {
            copy(v, ldl.coupling(c[0], c[1]), blocks.get(c[0]), blocks.get(c[1]));
        }
    }

    double[] times(double[] x) {
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < x.length; j++) {
                y[i] += dense[i][j] * x[j];
            }
        }
        return y;
    }

    double[] randomVector() {
        double[] x = new double[size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = random.nextGaussian();
        }
        return x;
    }

    private void copy(double[] v, int at, Block rows, Block columns) {
        for (int i = 0; i < rows.size; i++) {
            for (int j = 0; j < columns.size; j++) {
                v[at + i * columns.size + j] = dense[rows.start + i][columns.start + j];
            }
        }
    }

    private void addDefinite(Block b, double scale) {
        double[][] m = new double[b.size][b.size];
        for (double[] row : m) {
            for (int j = 0; j < b.size; j++) {
                row[j] = 0.4 * random.nextGaussian();
            }
        }
        for (int i = 0; i < b.size; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = i == j ? 1 : 0;
                for (int k = 0; k < b.size; k++) {
                    sum += m[i][k] * m[j][k];
                }
                set(b.start + i, b.start + j, dense[b.start + i][b.start + j] + scale * sum);
            }
        }
    }

    /** Body-body and joint-joint couplings add a positive semidefinite pair, as a spring does. */
    private void fillCoupling(Block a, Block b, double compliance) {
        if (a.joint != b.joint) {
            for (int i = 0; i < a.size; i++) {
                for (int j = 0; j < b.size; j++) {
                    set(a.start + i, b.start + j, random.nextGaussian());
                }
            }
            return;
        }
        double sign = a.joint ? -compliance : 1;
        double[] u = new double[a.size + b.size];
        for (int i = 0; i < u.length; i++) {
            u[i] = random.nextGaussian();
        }
        for (int i = 0; i < u.length; i++) {
            for (int j = 0; j <= i; j++) {
                int r = i < a.size ? a.start + i : b.start + i - a.size;
                int c = j < a.size ? a.start + j : b.start + j - a.size;
                set(r, c, dense[r][c] + sign * u[i] * u[j]);
            }
        }
    }
}
