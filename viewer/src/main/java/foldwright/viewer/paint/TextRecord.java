// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.paint;

import foldwright.viewer.text.TextBox;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Every text drawn on a sheet, in plain arrays: a frame records dozens and mostly none is read. */
final class TextRecord {
    private static final int FIELDS = 4;

    private String[] texts = new String[256];
    private int[] layers = new int[256];
    private float[] boxes = new float[256 * FIELDS];
    private int count;

    void clear() {
        count = 0;
    }

    int count() {
        return count;
    }

    void add(String text, int layer, float x, float y, float width, float height) {
        if (count == texts.length) {
            texts = Arrays.copyOf(texts, 2 * count);
            layers = Arrays.copyOf(layers, 2 * count);
            boxes = Arrays.copyOf(boxes, 2 * count * FIELDS);
        }
        texts[count] = text;
        layers[count] = layer;
        boxes[count * FIELDS] = x;
        boxes[count * FIELDS + 1] = y;
        boxes[count * FIELDS + 2] = width;
        boxes[count * FIELDS + 3] = height;
        count++;
    }

    void add(TextBox box) {
        add(box.text(), box.layer(), box.x(), box.y(), box.width(), box.height());
    }

    /** Whether a box lies on no text of a layer, as {@link TextBox#overlaps} has it. */
    boolean free(int layer, float x, float y, float width, float height) {
        for (int i = 0; i < count; i++) {
            int b = i * FIELDS;
            if (layers[i] == layer
                    && TextBox.meet(x, width, boxes[b], boxes[b + 2])
                    && TextBox.meet(y, height, boxes[b + 1], boxes[b + 3])) {
                return false;
            }
        }
        return true;
    }

    /** The texts since there were so many. */
    List<TextBox> since(int first) {
        List<TextBox> out = new ArrayList<>(count - first);
        for (int i = first; i < count; i++) {
            out.add(at(i));
        }
        return List.copyOf(out);
    }

    private TextBox at(int i) {
        int b = i * FIELDS;
        return new TextBox(texts[i], layers[i], boxes[b], boxes[b + 1], boxes[b + 2], boxes[b + 3]);
    }
}
