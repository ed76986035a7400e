// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.viewer.mesh.Mesh;

/**
 * All parts of one shape: its mesh and a record of floats for each, written anew for each picture.
 */
public final class Batch {
    /** Floats an instance: pose rows 12, own colour 4, load 4, extras 4. */
    public static final int FLOATS = 24;

    public static final int COLOUR = 12;
    public static final int LOAD = 16;
    public static final int EXTRA = 20;

    public final Mesh mesh;
    public final int count;
    public final float[] data;

    /** Whether it is drawn; a hidden one costs nothing. */
    public boolean shown = true;

    /** Least and greatest coordinates of the mesh, x, y, z, x, y, z [m]; of no use for coils. */
    public final float[] bounds;

    public Batch(Mesh mesh, int count) {
        this.mesh = mesh;
        this.count = count;
        data = new float[count * FLOATS];
        bounds = mesh.bounds();
    }

    /** Moves all records along x [m] and their ids up, for a machine beside another. */
    public void shift(float x, int ids) {
        for (int i = 0; i < count; i++) {
            data[i * FLOATS + 3] += x;
            data[i * FLOATS + EXTRA] += ids;
        }
    }
}
