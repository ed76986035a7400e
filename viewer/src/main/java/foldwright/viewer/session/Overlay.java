// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.study.Shown;
import foldwright.viewer.scene.PartKind;
import foldwright.viewer.sheet.SheetModel;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** Loads that can be shown as ink, in the order in which the key walks through them. */
public enum Overlay {
    ARM_BENDING("arm bending", Shown.NEWTON_METRE, PartKind.ARM),
    PIN_FORCE("pin force", Shown.NEWTON, PartKind.PIN),
    SCREW_FORCE("screw force", Shown.NEWTON, PartKind.SCREW),
    SPRING_FORCE("spring force", Shown.NEWTON, PartKind.SPRING),
    SPRING_MOMENT("spring moment", Shown.NEWTON_METRE, PartKind.SPRING),
    DRIVE_BELT("pull in the drive belt", Shown.NEWTON, PartKind.BELT),
    BELT_TENSION("belt tension, off that at rest", Shown.NEWTON, PartKind.BELT),
    RAIL_MOMENT("yaw moment on rail blocks", Shown.NEWTON_METRE, PartKind.BLOCK),
    RAIL_FORCE("side force on rail blocks", Shown.NEWTON, PartKind.BLOCK),
    USED(
            "share of the limit used",
            Shown.PERCENT,
            PartKind.ARM,
            PartKind.PIN,
            PartKind.SCREW,
            PartKind.SPRING,
            PartKind.MOTOR,
            PartKind.BLOCK),
    ARM_AXIAL("force along the arms", Shown.NEWTON, PartKind.ARM),
    ARM_STRESS("arm stress", Shown.MEGAPASCAL, PartKind.ARM),
    PIN_PRESSURE("pin pressure", Shown.MEGAPASCAL, PartKind.PIN),
    NONE("nothing", Shown.NUMBER);

    private final String words;
    private final Shown unit;
    private final Set<PartKind> kinds;

    Overlay(String words, Shown unit, PartKind... kinds) {
        this.words = words;
        this.unit = unit;
        this.kinds = EnumSet.noneOf(PartKind.class);
        this.kinds.addAll(Arrays.asList(kinds));
    }

    public String words() {
        return words;
    }

    /** Unit in which it is read. */
    public Shown unit() {
        return unit;
    }

    /** Whether parts of a kind carry it. */
    boolean on(PartKind kind) {
        return kinds.contains(kind);
    }

    /** Whether it comes from the gantry's statics rather than from the lift's force curve. */
    boolean ofGantry() {
        return this == BELT_TENSION || this == RAIL_MOMENT || this == RAIL_FORCE;
    }

    /** What minus and plus mean, where a load has a sign. */
    Optional<SheetModel.Ends> ends() {
        return switch (this) {
            case SCREW_FORCE -> Optional.of(new SheetModel.Ends("down", "up"));
            case SPRING_FORCE, SPRING_MOMENT -> Optional.of(new SheetModel.Ends("pulls", "pushes"));
            case BELT_TENSION -> Optional.of(new SheetModel.Ends("slacker", "tighter"));
            case RAIL_MOMENT -> Optional.of(new SheetModel.Ends("right", "left"));
            case RAIL_FORCE -> Optional.of(new SheetModel.Ends("left", "right"));
            case ARM_AXIAL -> Optional.of(new SheetModel.Ends("pulled", "pressed"));
            default -> Optional.empty();
        };
    }

    /** The next one. */
    public Overlay next() {
        return values()[(ordinal() + 1) % values().length];
    }
}
