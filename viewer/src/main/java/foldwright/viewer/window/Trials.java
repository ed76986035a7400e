// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;

/** Numbers tried instead of the file's, by key path, with what was tried before and after. */
final class Trials {
    private final Deque<Map<String, Double>> undo = new ArrayDeque<>();
    private final Deque<Map<String, Double>> redo = new ArrayDeque<>();
    private Map<String, Double> tried = new LinkedHashMap<>();

    boolean isEmpty() {
        return tried.isEmpty();
    }

    /** All that is tried now [SI]. */
    Map<String, Double> values() {
        return Collections.unmodifiableMap(tried);
    }

    /** Begins a change that one undo takes back. */
    void mark() {
        undo.push(new LinkedHashMap<>(tried));
        redo.clear();
    }

    /** Tries a value [SI]; the file's own is not a trial. */
    void set(String path, double own, double si) {
        if (Math.abs(si - own) < 1e-9 * Math.max(1, Math.abs(own))) {
            tried.remove(path);
        } else {
            tried.put(path, si);
        }
    }

    /** Takes the last change back; whether there was one. */
    boolean undo() {
        return step(undo, redo);
    }

    /** Makes the change again that was taken back; whether there was one. */
    boolean redo() {
        return step(redo, undo);
    }

    private boolean step(Deque<Map<String, Double>> from, Deque<Map<String, Double>> to) {
        if (from.isEmpty()) {
            return false;
        }
        to.push(tried);
        tried = from.pop();
        return true;
    }
}
