// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/** A gantry that cannot be computed as its file describes it; the message says where and why. */
public final class GantryTrouble extends IllegalStateException {
    private static final long serialVersionUID = 1;

    public GantryTrouble(String message) {
        super(message);
    }
}
