// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.sparse;

import foldwright.mechanics.sparse.QuasiDefinite.Builder;
import java.util.Random;

/** Block graphs of the kinds that mechanisms have. */
final class Topologies {
    private Topologies() {}

    /** Pendulum chain: body after body, each hung on the one before, the first on the ground. */
    static Builder chain(int bodies) {
        Builder b = new Builder();
        int last = -1;
        for (int i = 0; i < bodies; i++) {
            int body = b.body(6);
            if (last < 0) {
                b.joint(5, body);
            } else {
                b.joint(5, body, last);
            }
            last = body;
        }
        return b;
    }

    /** Row of four-bar loops: N + 1 rods on the ground, N couplers between their ends. */
    static Builder fourBars(int loops) {
        Builder b = new Builder();
        int rod = b.body(6);
        b.joint(5, rod);
        for (int i = 0; i < loops; i++) {
            int coupler = b.body(6);
            int next = b.body(6);
            b.joint(5, coupler, rod);
            b.joint(5, next);
            b.joint(5, coupler, next);
            rod = next;
        }
        return b;
    }

    /**
     * Two-sided scissor with cross bars, a screw with rotor and gear, and friction rows at pins.
     */
    static Builder scissor(int stages) {
        Builder b = new Builder();
        int base = b.body(6);
        b.joint(6, base);
        int deck = b.body(6);
        for (int side = 0; side < 2; side++) {
            int lowA = base;
            int lowB = base;
            for (int s = 0; s < stages; s++) {
                int a = b.body(6);
                int c = b.body(6);
                pin(b, a, c);
                pin(b, a, lowA);
                pin(b, c, lowB);
                lowA = c;
                lowB = a;
            }
            pin(b, deck, lowA);
            b.joint(4, deck, lowB);
            int rotor = b.body(1);
            b.joint(1, rotor, base, lowB);
            b.joint(1, rotor);
        }
        return b;
    }

    private static void pin(Builder b, int x, int y) {
        int j = b.joint(5, x, y);
        b.joint(1, x, y, j);
    }

    /** Bodies and joints thrown together; joints may have no body, one, or several. */
    static Builder random(Random random, int blocks) {
        Builder b = new Builder();
        for (int i = 0; i < blocks; i++) {
            if (b.count() == 0 || random.nextInt(5) < 3) {
                b.body(1 + random.nextInt(6));
            } else {
                int j = b.joint(1 + random.nextInt(6));
                for (int k = random.nextInt(4); k > 0; k--) {
                    int other = random.nextInt(j);
                    if (!b.isJoint(other) || random.nextInt(3) == 0) {
                        b.couple(j, other);
                    }
                }
            }
        }
        for (int k = random.nextInt(4); k > 0; k--) {
            int x = random.nextInt(b.count());
            int y = random.nextInt(b.count());
            if (x != y && b.isJoint(x) == b.isJoint(y)) {
                b.couple(x, y);
            }
        }
        return b;
    }
}
