// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.State;
import java.util.List;

/**
 * Weighted sum of coordinates: gear and belt couplings (angles), screws (travel minus lead times
 * turns), slip along a helix.
 */
public final class Combination extends Coordinate {
    private final Coordinate[] parts;
    private final double[] weights;

    /** Place of each body of each part in the merged list. */
    private final int[][] places;

    private final double[] scratch = new double[24];

    /**
     * @param parts coordinates
     * @param weights one factor a part
     */
    public Combination(List<Coordinate> parts, double... weights) {
        super(
                parts.stream()
                        .flatMapToInt(p -> java.util.Arrays.stream(p.bodies()))
                        .distinct()
                        .toArray());
        if (parts.size() != weights.length) {
            throw new IllegalArgumentException(
                    parts.size() + " coordinates, but " + weights.length + " weights");
        }
        this.parts = parts.toArray(Coordinate[]::new);
        this.weights = weights.clone();
        places = new int[parts.size()][];
        for (int p = 0; p < places.length; p++) {
            places[p] = new int[this.parts[p].count()];
            for (int k = 0; k < places[p].length; k++) {
                places[p][k] = find(this.parts[p].body(k));
            }
        }
    }

    private int find(int body) {
        int k = 0;
        while (body(k) != body) {
            k++;
        }
        return k;
    }

    @Override
    public double value(State s) {
        double sum = 0;
        for (int p = 0; p < parts.length; p++) {
            sum += weights[p] * parts[p].value(s);
        }
        return sum;
    }

    @Override
    public double evaluate(State s, double[] g, int at) {
        int n = 6 * count();
        for (int i = 0; i < n; i++) {
            g[at + i] = 0;
        }
        double sum = 0;
        for (int p = 0; p < parts.length; p++) {
            double f = weights[p];
            sum += f * parts[p].evaluate(s, scratch, 0);
            int[] place = places[p];
            for (int k = 0; k < place.length; k++) {
                int to = at + 6 * place[k];
                for (int c = 0; c < 6; c++) {
                    g[to + c] += f * scratch[6 * k + c];
                }
            }
        }
        return sum;
    }

    @Override
    public double convective(State s) {
        double sum = 0;
        for (int p = 0; p < parts.length; p++) {
            sum += weights[p] * parts[p].convective(s);
        }
        return sum;
    }

    @Override
    public void hessian(State s, double factor, Stiffness out) {
        for (int p = 0; p < parts.length; p++) {
            parts[p].hessian(s, factor * weights[p], out);
        }
    }

    @Override
    public void accept(State s) {
        for (Coordinate p : parts) {
            p.accept(s);
        }
    }
}
