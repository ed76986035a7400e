// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.sparse;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Places fronts in one array, first fit; a front holds its place until its parent has taken it. */
final class FrontArena {
    private final int[] starts;
    private final TreeMap<Integer, Integer> holes = new TreeMap<>();
    private int size;

    FrontArena(FrontPlan plan, List<Fronts.Front> fronts) {
        starts = new int[fronts.size()];
        for (int f = 0; f < starts.length; f++) {
            starts[f] = take(FrontPlan.frontSize(plan.strips[f]));
            for (int c : fronts.get(f).children) {
                give(starts[c], FrontPlan.frontSize(plan.strips[c]));
            }
            if (plan.borderRows[f] == 0) {
                give(starts[f], FrontPlan.frontSize(plan.strips[f]));
            }
        }
    }

    /** Start of each front in the arena. */
    int[] starts() {
        return starts;
    }

    /** Doubles needed in all. */
    int size() {
        return size;
    }

    private int take(int length) {
        for (Map.Entry<Integer, Integer> hole : holes.entrySet()) {
            int at = hole.getKey();
            int room = hole.getValue();
            if (room >= length) {
                holes.remove(at);
                if (room > length) {
                    holes.put(at + length, room - length);
                }
                return at;
            }
        }
        int at = size;
        Map.Entry<Integer, Integer> last = holes.lastEntry();
        if (last != null && last.getKey() + last.getValue() == size) {
            at = last.getKey();
            holes.remove(at);
        }
        size = at + length;
        return at;
    }

    private void give(int at, int length) {
        int start = at;
        int room = length;
        Map.Entry<Integer, Integer> before = holes.floorEntry(at);
        if (before != null && before.getKey() + before.getValue() == at) {
            start = before.getKey();
            room += before.getValue();
            holes.remove(start);
        }
        Integer after = holes.remove(at + length);
        holes.put(start, room + (after == null ? 0 : after));
    }
}
