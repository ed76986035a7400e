// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer;

import foldwright.viewer.sheet.Studio;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/** Tests that draw: one studio for all of a class; skipped where there is no OpenGL. */
public abstract class StudioTest {
    private static Headless.Room room;

    /** What is drawn with. */
    protected static Studio studio;

    @BeforeAll
    static void open() {
        room = Headless.studio();
        studio = room.studio();
    }

    @AfterAll
    static void close() {
        if (room != null) {
            room.close();
            room = null;
        }
    }
}
