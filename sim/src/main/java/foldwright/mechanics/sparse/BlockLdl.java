// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.sparse;

import java.util.Arrays;

/**
 * Sparse {@code L D L'} factorisation, without pivoting, of a symmetric quasi-definite matrix given
 * in blocks; multifrontal, with all storage and all addresses fixed by {@link #analyse}.
 *
 * <p>Use: write the entries into {@link #values()} at {@link #diagonal} and {@link #coupling}, call
 * {@link #factor}, then {@link #solve} as often as needed. Every entry that the pattern names must
 * be written before each {@code factor} or keep its last value; nothing else is kept between calls.
 * {@code factor} and {@code solve} allocate nothing and give the same bits for the same input.
 *
 * <p>A quasi-definite matrix has an {@code L D L'} for every symmetric order (Vanderbei, Symmetric
 * quasidefinite matrices, SIAM J. Optim. 5 (1995) 100-113); {@link RankRule} chooses among the
 * orders those whose pivots are not small without reason. What remains small are pivots of truly
 * redundant rows: they have the size of the compliance. Not thread-safe.
 */
public final class BlockLdl {
    private final BlockPattern pattern;
    private final BlockLayout layout;
    private final FrontPlan plan;
    private final double[] values;
    private final double[] arena;
    private final double[] factor;
    private final double[] pivots;
    private final double[] inverse;
    private final FrontElimination elimination;
    private final FactorSolve substitution;
    private final PivotHealth health;

    private BlockLdl(Analysis analysis, int room) {
        pattern = analysis.pattern();
        layout = analysis.layout();
        plan = analysis.plan();
        values = new double[layout.valueCount() + room];
        arena = new double[plan.arenaSize];
        factor = new double[plan.factorSize];
        pivots = new double[plan.dimension + FrontPlan.TILE];
        inverse = new double[plan.dimension + FrontPlan.TILE];
        elimination = new FrontElimination(arena, factor, pivots, inverse);
        substitution = new FactorSolve(plan, factor, inverse);
        health = new PivotHealth(pattern, layout, plan);
    }

    /**
     * Finds order, fronts and addresses for a topology. Several greedy orders are tried and the one
     * with the least estimated time is taken. The pattern is copied.
     */
    public static BlockLdl analyse(BlockPattern pattern) {
        return analyse(pattern, 0);
    }

    /** The same with {@code room} numbers behind the {@link #values} for the caller's own use. */
    public static BlockLdl analyse(BlockPattern pattern, int room) {
        return new BlockLdl(Analysis.of(pattern), room);
    }

    /** The entries of the matrix; the caller writes here. Zero at first. */
    public double[] values() {
        return values;
    }

    /**
     * Start in {@link #values()} of the diagonal block of {@code block}: its parts one after the
     * other, each square and row-major, of which the lower triangle is read.
     */
    public int diagonal(int block) {
        pattern.size(block);
        return layout.diagonal(block);
    }

    /**
     * Start in {@link #values()} of the block with the rows of {@code a} and the columns of {@code
     * b}, row-major, {@code a} added after {@code b}.
     *
     * @throws IllegalArgumentException if the pattern does not couple the two, or {@code a <= b}
     */
    public int coupling(int a, int b) {
        return layout.coupling(a, b);
    }

    /** Rows of the system. */
    public int dimension() {
        return plan.dimension;
    }

    /** Row at which a block starts in the vectors given to {@link #solve}. */
    public int offset(int block) {
        pattern.size(block);
        return layout.offset(block);
    }

    /**
     * Factors the matrix now in {@link #values()}. A zero pivot leaves values that are not finite.
     */
    public void factor() {
        for (int f = 0; f < plan.fronts(); f++) {
            eliminate(f);
        }
    }

    /**
     * {@link #factor} and {@link #solve} in one: the same bits, but each front is used while it is
     * still in the nearest memory.
     */
    public void factorAndSolve(double[] rhs) {
        for (int f = 0; f < plan.fronts(); f++) {
            eliminate(f);
            substitution.forward(f, rhs);
        }
        substitution.backward(rhs);
    }

    private void eliminate(int f) {
        assemble(f);
        elimination.run(
                plan.front[f],
                plan.factor[f],
                plan.pivots[f] + plan.borderRows[f],
                plan.pivots[f],
                plan.firstPivot[f]);
    }

    /**
     * Replaces a right-hand side by the solution.
     *
     * @param rhs {@link #dimension()} entries or more, blocks in order of addition
     */
    public void solve(double[] rhs) {
        substitution.run(rhs);
    }

    /**
     * How much the worst pivot lost by cancellation: the least, over all rows, of the size of the
     * pivot divided by the sum of the sizes of the terms that it is the difference of. 1 is
     * perfect; a value of {@code r} costs about {@code -log10 r} digits in that direction; a pivot
     * of the wrong sign gives a negative value and one that is not finite gives NaN. Truly
     * redundant rows show their compliance here. Costs about as much as half a {@link #solve}; call
     * it when in doubt.
     */
    public double smallestPivotRatio() {
        return health.smallestRatio(values, factor, pivots);
    }

    /**
     * Number of negative pivots, which by Sylvester's law of inertia is the number of negative
     * eigenvalues. It equals the number of joint rows exactly if the stiffness or mass that the
     * bodies show within the constraints is positive definite: for statics, if the equilibrium is
     * stable.
     */
    public int negativePivots() {
        int count = 0;
        for (int i = 0; i < plan.dimension; i++) {
            count += pivots[i] < 0 ? 1 : 0;
        }
        return count;
    }

    /**
     * Useful floating-point operations of one {@link #factor}: a multiplication and a subtraction
     * for each entry that each pivot changes, lower triangle only, padding not counted.
     */
    public long operations() {
        long sum = 0;
        for (int f = 0; f < plan.fronts(); f++) {
            long rows = plan.pivots[f] + (long) plan.borderRows[f];
            for (long m = plan.borderRows[f]; m < rows; m++) {
                sum += m * (m + 1);
            }
        }
        return sum;
    }

    private void assemble(int f) {
        double[] a = arena;
        int base = plan.front[f];
        Arrays.fill(a, base, base + FrontPlan.frontSize(plan.strips[f]), 0);
        int[] entries = plan.entries;
        int end = plan.entryStart[f + 1];
        for (int e = plan.entryStart[f]; e < end; e++) {
            a[base + entries[e]] = values[e];
        }
        for (int c = plan.childStart[f]; c < plan.childStart[f + 1]; c++) {
            extendAdd(plan.children[c], base);
        }
    }

    /** Adds the update of a child to its places in the parent. */
    private void extendAdd(int child, int base) {
        double[] a = arena;
        int[] from = plan.liftFrom;
        int[] to = plan.liftTo;
        int source = plan.front[child];
        int end = plan.liftStart[child + 1];
        for (int e = plan.liftStart[child]; e < end; e++) {
            a[base + to[e]] += a[source + from[e]];
        }
    }
}
