// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import foldwright.viewer.session.PartReading;
import foldwright.viewer.sheet.Studio;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3f;

/** Which part is read: the one under the pointer, or one held by a click or the keyboard. */
final class Pointer {
    /** Between two looks below a moving pointer [ns]: a look draws all parts into five pixels. */
    private static final long PAUSE = 60_000_000L;

    private int under;
    private long lastLook;
    private boolean changed;
    private double heldX = Double.NaN;
    private double heldY = Double.NaN;

    /** The pointer stands over this place. */
    void hover(Studio studio, double x, double y) {
        long now = System.nanoTime();
        if (studio.view() == null || now - lastLook < PAUSE) {
            return;
        }
        lastLook = now;
        boolean table = x < studio.layout().scaleX() && y < studio.layout().rulesTop();
        int next = table ? studio.pick(x, y) : 0;
        changed |= next != under;
        under = next;
    }

    /** Whether another part came under the pointer, once. */
    boolean takeChange() {
        boolean was = changed;
        changed = false;
        return was;
    }

    /** Holds the part at this place, or lets go where there is none. */
    void click(Desk desk, Studio studio, double x, double y) {
        desk.point(studio.pick(x, y));
        heldX = x;
        heldY = y;
    }

    /** Holds the next part by its load. */
    void next(Desk desk, int step) {
        List<Integer> ids = desk.order();
        if (!ids.isEmpty()) {
            int at = ids.indexOf(desk.pointed());
            desk.point(
                    ids.get(
                            at < 0
                                    ? (step > 0 ? 0 : ids.size() - 1)
                                    : Math.floorMod(at + step, ids.size())));
            heldX = Double.NaN;
        }
    }

    /** The reading of the held part, else of the one under the pointer. */
    Studio.Overlay overlay(Desk desk, Studio studio, double x, double y) {
        boolean held = desk.pointed() != 0;
        int id = held ? desk.pointed() : under;
        Optional<PartReading> reading = desk.reading(id);
        if (reading.isEmpty() || studio.view() == null) {
            return Studio.Overlay.NONE;
        }
        double px = held ? heldX : x;
        double py = held ? heldY : y;
        if (held && Double.isNaN(heldX)) {
            Vector3f at = desk.middle(id).orElseThrow();
            px = studio.view().x(at.x, at.y, at.z);
            py = studio.view().y(at.x, at.y, at.z);
        }
        return PartSheet.of(reading.get(), px, py);
    }
}
