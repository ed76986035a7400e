// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.viewer.scene.Part;
import foldwright.viewer.scene.PartKind;
import foldwright.viewer.scene.PartLook;

/** Shows a load field on the parts at one height. */
final class InkLook implements PartLook {
    private final LoadField field;
    private final double height;
    private final double centrePin;
    private final int pointed;

    InkLook(LoadField field, double height, double centrePin, int pointed) {
        this.field = field;
        this.height = height;
        this.centrePin = centrePin;
        this.pointed = pointed;
    }

    /** What is shown; null for nothing. */
    LoadField field() {
        return field;
    }

    @Override
    public void load(Part part, float[] out, int at) {
        double load = Double.NaN;
        if (field != null && field.overlay().on(part.kind())) {
            load = field.at(part.name(), height);
        }
        if (Double.isNaN(load)) {
            PartLook.PLAIN.load(part, out, at);
            return;
        }
        double value = field.share(load);
        double none = field.share(0);
        // Bending is greatest at the centre pin and none at the ends; all else is even along the
        // part.
        boolean bending = part.kind() == PartKind.ARM && field.overlay() != Overlay.ARM_AXIAL;
        out[at] = (float) (bending ? none : value);
        out[at + 1] = (float) value;
        out[at + 2] = (float) (bending ? none : value);
        out[at + 3] = (float) centrePin;
    }

    @Override
    public float beltSwell() {
        return field != null && field.overlay() == Overlay.BELT_TENSION ? 2.5f : 1;
    }

    @Override
    public int pointed() {
        return pointed;
    }
}
