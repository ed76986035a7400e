// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.viewer.gl.Target;
import foldwright.viewer.paint.Canvas;
import foldwright.viewer.text.TextBox;
import foldwright.viewer.theme.Palette;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;

/**
 * Areas of the sheet that stay as they are while the deck moves: painted once, then copied. An area
 * is painted anew when what it shows changes, and it is not kept while the machine reaches into it.
 */
final class Kept implements AutoCloseable {
    /** Areas. */
    enum Area {
        CARDS,
        RULES,
        PLOT,
        RIBBON,
        LEGEND
    }

    /** A box of whole pixels, y from above. */
    record Box(int x, int y, int width, int height) {
        static Box between(double left, double top, double right, double bottom) {
            int x = (int) Math.floor(left);
            int y = (int) Math.floor(top);
            return new Box(x, y, (int) Math.ceil(right) - x, (int) Math.ceil(bottom) - y);
        }
    }

    private static final class Picture {
        private Object shown;
        private Layout layout;
        private Palette palette;
        private List<TextBox> boxes = List.of();
        private List<Hits.Hit> hits = List.of();
    }

    private final Map<Area, Picture> pictures = new EnumMap<>(Area.class);
    private Target fixed;
    private Target sheet;
    private Canvas canvas;
    private Hits hits;
    private Layout layout;
    private Palette palette;
    private Clear clear;

    /** Tells whether the machine leaves a box free. */
    interface Clear {
        boolean of(Box box);
    }

    /** Begins a sheet: areas are kept only where {@code where} says that nothing else lies. */
    void begin(Target onto, Canvas with, Pen pen, Hits taken, Clear where) {
        if (fixed == null || fixed.width != onto.width || fixed.height != onto.height) {
            close();
            fixed = new Target(Target.Form.COLOUR, onto.width, onto.height);
            pictures.clear();
        }
        sheet = onto;
        canvas = with;
        hits = taken;
        layout = pen.at;
        palette = pen.palette;
        clear = where;
    }

    /** Paints an area, or copies what was painted when the same was shown. */
    <T> void draw(Area area, Box box, T shown, BiPredicate<T, T> same, Runnable painter) {
        if (!clear.of(box)) {
            pictures.remove(area);
            painter.run();
            return;
        }
        Picture before = pictures.get(area);
        if (before != null && fits(before, shown, same)) {
            fixed.copyTo(sheet, box.x, sheet.height - box.y - box.height, box.width, box.height);
            canvas.again(before.boxes);
            hits.addAll(before.hits);
            return;
        }
        paint(area, box, shown, painter);
    }

    @SuppressWarnings("unchecked")
    private <T> boolean fits(Picture before, T shown, BiPredicate<T, T> same) {
        return before.layout == layout
                && before.palette == palette
                && same.test((T) before.shown, shown);
    }

    private void paint(Area area, Box box, Object shown, Runnable painter) {
        canvas.flush();
        int texts = canvas.texts();
        int held = hits.count();
        painter.run();
        canvas.flush();
        sheet.copyTo(fixed, box.x, sheet.height - box.y - box.height, box.width, box.height);
        Picture next = new Picture();
        next.shown = shown;
        next.layout = layout;
        next.palette = palette;
        next.boxes = canvas.boxesSince(texts);
        next.hits = hits.since(held);
        pictures.put(area, next);
        canvas.resume();
    }

    @Override
    public void close() {
        if (fixed != null) {
            fixed.close();
            fixed = null;
        }
    }
}
