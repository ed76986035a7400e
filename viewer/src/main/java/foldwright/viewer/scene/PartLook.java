// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

/** What a part shows besides its shape: load ink, a colour of its own, being pointed at. */
public interface PartLook {
    /**
     * Writes the load at the part's start, its peak, at its end (shares of the scale) and the way
     * of the peak; no load: peak -1.
     */
    void load(Part part, float[] out, int at);

    /** Writes an own colour (three shares) and 1, or four zeros for that of the material. */
    default void colour(Part part, float[] out, int at) {
        out[at] = 0;
        out[at + 1] = 0;
        out[at + 2] = 0;
        out[at + 3] = 0;
    }

    /** Id of the part pointed at, 0 for none. */
    default int pointed() {
        return 0;
    }

    /** By how much gantry belts are drawn thicker than they are, so that their ink can be seen. */
    default float beltSwell() {
        return 1;
    }

    /** Nothing shown but which part is pointed at. */
    record Pointed(@Override int pointed) implements PartLook {
        @Override
        public void load(Part part, float[] out, int at) {
            PLAIN.load(part, out, at);
        }
    }

    /** Nothing shown. */
    PartLook PLAIN =
            (part, out, at) -> {
                out[at] = 0;
                out[at + 1] = -1;
                out[at + 2] = 0;
                out[at + 3] = 0.5f;
            };
}
