// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;

/** Numbers the bodies of a machine by name. */
public final class Bodies {
    public static final String BASE = "base";
    public static final String DECK = "deck";
    public static final String FOOT = "foot sliders";
    public static final String DECK_SLIDER = "deck sliders";
    public static final String GANTRY = "gantry frame";
    public static final String BRIDGE = "bridge";
    public static final String CARRIAGE = "carriage";

    private final List<String> names = new ArrayList<>();

    /** The number of a body, new if it was not known. */
    public int of(String name) {
        int at = names.indexOf(name);
        if (at < 0) {
            names.add(name);
            at = names.size() - 1;
        }
        return at;
    }

    /** The arm whose lower pin is at the fixed end. */
    public int rising(int stage) {
        return of("rising arms " + stage);
    }

    /** The arm whose lower pin is at the slider end. */
    public int falling(int stage) {
        return of("falling arms " + stage);
    }

    public int count() {
        return names.size();
    }

    public String name(int body) {
        return names.get(body);
    }
}
