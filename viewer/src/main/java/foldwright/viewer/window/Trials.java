// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import foldwright.machine.file.MachineFile;
import foldwright.machine.file.MachineText;
import foldwright.viewer.session.Dial;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Numbers tried instead of the file's, by key path, with what was tried before and after. */
final class Trials {
    private final Deque<Map<String, Double>> undo = new ArrayDeque<>();
    private final Deque<Map<String, Double>> redo = new ArrayDeque<>();
    private Map<String, Double> tried = new LinkedHashMap<>();

    void clear() {
        tried.clear();
        undo.clear();
        redo.clear();
    }

    boolean isEmpty() {
        return tried.isEmpty();
    }

    /** All that is tried now [SI]. */
    Map<String, Double> values() {
        return Collections.unmodifiableMap(tried);
    }

    /** The value of a dial now [SI]. */
    double value(Dial dial, MachineFile file) {
        return tried.getOrDefault(dial.path(), own(dial, file));
    }

    private static double own(Dial dial, MachineFile file) {
        return dial.value().applyAsDouble(file.machine());
    }

    /** Begins a change that one undo takes back. */
    void mark() {
        undo.push(new LinkedHashMap<>(tried));
        redo.clear();
    }

    /** Tries a value; the file's own is not a trial. */
    void set(Dial dial, MachineFile file, double si) {
        double own = own(dial, file);
        if (Math.abs(si - own) < 1e-9 * Math.max(1, Math.abs(own))) {
            tried.remove(dial.path());
        } else {
            tried.put(dial.path(), si);
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

    /** The text of the file with all that is tried in it. */
    MachineText text(MachineFile file, List<Dial> dials) {
        MachineText text = MachineText.of(file);
        for (Map.Entry<String, Double> e : tried.entrySet()) {
            for (Dial dial : dials) {
                if (dial.path().equals(e.getKey())) {
                    text = dial.write(text, e.getValue(), file.machine());
                }
            }
        }
        return text;
    }
}
