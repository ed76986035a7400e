// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.bench;

import foldwright.viewer.gl.GlSurface;

/** Opens an OpenGL context without a display and closes it: what a picture cannot do without. */
public final class EmptyContext {
    private EmptyContext() {}

    public static void main(String[] args) {
        GlSurface.headless().close();
    }
}
