// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.study.Shown;
import foldwright.viewer.scene.PartKind;

/** Loads that can be shown as ink, in the order in which the key walks through them. */
public enum Overlay {
    ARM_BENDING("arm bending", Shown.NEWTON_METRE, PartKind.ARM),
    PIN_FORCE("pin force", Shown.NEWTON, PartKind.PIN),
    SCREW_FORCE("screw force", Shown.NEWTON, PartKind.SCREW),
    SPRING_FORCE("spring force", Shown.NEWTON, PartKind.SPRING),
    ARM_AXIAL("force along the arms", Shown.NEWTON, PartKind.ARM),
    ARM_STRESS("arm stress", Shown.MEGAPASCAL, PartKind.ARM),
    PIN_PRESSURE("pin pressure", Shown.MEGAPASCAL, PartKind.PIN),
    NONE("nothing", Shown.NUMBER, null);

    private final String words;
    private final Shown unit;
    private final PartKind kind;

    Overlay(String words, Shown unit, PartKind kind) {
        this.words = words;
        this.unit = unit;
        this.kind = kind;
    }

    public String words() {
        return words;
    }

    /** Unit in which it is read. */
    public Shown unit() {
        return unit;
    }

    /** Which parts carry it. */
    PartKind kind() {
        return kind;
    }

    /** The next one. */
    public Overlay next() {
        return values()[(ordinal() + 1) % values().length];
    }
}
