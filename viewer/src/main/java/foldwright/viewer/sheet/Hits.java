// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What can be taken hold of on the sheet, as boxes: filled while it is drawn, read by the hand. */
public final class Hits {
    /** Kinds of things to take hold of. */
    public enum Kind {
        CARD,
        TAB,
        SCALE,
        RULE,
        PLOT,
        /** The scale along a toolpath. */
        WAY,
        /** A moment of a run. */
        MARK,
        /** Runs or stands. */
        PLAY,
        /** One row back (0) or on (1). */
        STEP,
        /** Once or again and again. */
        LOOP,
        /** The rule of the speed. */
        SPEED,
        /** The rule of the factor by which errors are drawn. */
        LARGER
    }

    /** One box; the index tells which card or rule. */
    public record Hit(Kind kind, int index, double x, double y, double width, double height) {
        /** Whether a point lies inside. */
        public boolean holds(double px, double py) {
            return px >= x && px <= x + width && py >= y && py <= y + height;
        }
    }

    private List<Hit> all = new ArrayList<>();

    /** Those of the sheet before, to be used again where they are the same. */
    private List<Hit> before = new ArrayList<>();

    void add(Kind kind, int index, double x, double y, double width, double height) {
        int next = all.size();
        Hit old = next < before.size() ? before.get(next) : null;
        boolean same =
                old != null
                        && old.kind == kind
                        && old.index == index
                        && old.x == x
                        && old.y == y
                        && old.width == width
                        && old.height == height;
        all.add(same ? old : new Hit(kind, index, x, y, width, height));
    }

    void addAll(List<Hit> hits) {
        for (int i = 0; i < hits.size(); i++) {
            all.add(hits.get(i));
        }
    }

    int count() {
        return all.size();
    }

    /** What was added since there were so many. */
    List<Hit> since(int count) {
        return List.copyOf(all.subList(count, all.size()));
    }

    void clear() {
        List<Hit> empty = before;
        empty.clear();
        before = all;
        all = empty;
    }

    /** The last drawn thing at a point. */
    public Optional<Hit> at(double x, double y) {
        for (int i = all.size() - 1; i >= 0; i--) {
            if (all.get(i).holds(x, y)) {
                return Optional.of(all.get(i));
            }
        }
        return Optional.empty();
    }

    /** The box of a thing. */
    public Optional<Hit> of(Kind kind, int index) {
        return all.stream().filter(h -> h.kind() == kind && h.index() == index).findFirst();
    }
}
