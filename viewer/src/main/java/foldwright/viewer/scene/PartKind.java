// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

/** Kinds of parts, for what a load can be shown on and for reading a part under the pointer. */
public enum PartKind {
    BASE("base"),
    DECK("deck"),
    ARM("arm"),
    PIN("pin"),
    SLIDER("slider"),
    SCREW("screw"),
    NUT("nut"),
    MOTOR("motor"),
    PULLEY("pulley"),
    BELT("belt"),
    SPRING("helper spring"),
    RAIL("rail"),
    BLOCK("rail block"),
    BRIDGE("bridge"),
    CARRIAGE("carriage"),
    TOOL("tool"),
    CROSS_BAR("cross bar"),
    BED("bed"),
    OUTLINE("outline"),
    GRID("grid");

    private final String word;

    PartKind(String word) {
        this.word = word;
    }

    /** What it is called in a sentence. */
    public String word() {
        return word;
    }
}
