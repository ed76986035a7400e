// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.machine.file.MachineText;
import foldwright.viewer.session.Dial;
import foldwright.viewer.session.GantryDials;
import foldwright.viewer.session.RuleSet;
import foldwright.viewer.sheet.SheetModel;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The numbers of a machine file that can be tried, and the machine with those that are. */
final class Numbers {
    private final MachineFile file;
    private final Trials trials;
    private final List<Dial> lift;
    private final List<Dial> gantry;
    private final RuleSet rules = new RuleSet();
    private MachineFile tried;

    /** Those of a file, nothing tried yet. */
    Numbers(MachineFile file) {
        this(file, new Trials());
    }

    private Numbers(MachineFile file, Trials trials) {
        this.file = file;
        this.trials = trials;
        lift = Dial.of(file.machine());
        gantry = GantryDials.of(file.machine());
        tried = file;
    }

    /** The same trials on the file as it is now. */
    Numbers on(MachineFile now) {
        return new Numbers(now, trials);
    }

    /** Those that decide how the machine unfolds. */
    List<Dial> ofLift() {
        return lift;
    }

    /** Those that decide how square it moves. */
    List<Dial> ofGantry() {
        return gantry;
    }

    /** The machine with what is tried, as last {@link #put}. */
    MachineFile tried() {
        return tried;
    }

    /**
     * Puts what is tried into the machine.
     *
     * @return why that cannot be; the machine is then that of the file
     */
    Optional<String> put() {
        try {
            tried = changed() ? text().read() : file;
            return Optional.empty();
        } catch (BadMachineFile | RuntimeException e) {
            tried = file;
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    /** The text of the file with what is tried in it, comments and order kept. */
    MachineText text() {
        MachineText text = MachineText.of(file);
        for (Map.Entry<String, Double> e : trials.values().entrySet()) {
            for (Dial dial : Stream.concat(lift.stream(), gantry.stream()).toList()) {
                if (dial.path().equals(e.getKey())) {
                    text = dial.write(text, e.getValue(), file.machine());
                }
            }
        }
        return text;
    }

    /** Whether any differs from the file. */
    boolean changed() {
        return !trials.isEmpty();
    }

    /** The value of one now [SI]. */
    double value(Dial dial) {
        return trials.values().getOrDefault(dial.path(), own(dial));
    }

    private double own(Dial dial) {
        return dial.value().applyAsDouble(file.machine());
    }

    /** Tries a value [SI]; the file's own is not a trial. */
    void set(Dial dial, double si) {
        trials.set(dial.path(), own(dial), si);
    }

    /** Begins a change that one undo takes back. */
    void mark() {
        trials.mark();
    }

    /** Takes the last change back; whether there was one. */
    boolean undo() {
        return trials.undo();
    }

    /** Makes the change again that was taken back; whether there was one. */
    boolean redo() {
        return trials.redo();
    }

    /** Rules for some of them, with the hills over them; made anew only when something differs. */
    List<SheetModel.Rule> rules(List<Dial> dials, List<SheetModel.Hill> hills) {
        return rules.now(file.machine(), dials, trials.values(), hills);
    }
}
