// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.play;

import foldwright.run.Run;
import foldwright.run.RunColumn;
import foldwright.run.RunKind;
import foldwright.run.RunTable;
import foldwright.study.Question;
import foldwright.study.Verdict;
import foldwright.viewer.scene.GantryMotion;
import foldwright.viewer.scene.PartLook;
import foldwright.viewer.sheet.Playing;
import foldwright.viewer.sheet.SheetModel;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A run with its clock, ready to be looked at. */
public final class Reel {
    private final Run run;
    private final RunTable table;
    private final Player player;
    private final ToolTrack track;
    private final TensionLook belts;
    private final List<Playing.Mark> marks;
    private final double strongest;
    private SheetModel.Cards known;
    private SheetModel.Cards answered;

    public Reel(Run run) {
        this.run = run;
        table = run.table();
        strongest = table.largest(RunColumn.MOTOR_TORQUE);
        if (run.kind() == RunKind.REPLAY) {
            track = new ToolTrack(run);
            belts = new TensionLook(run);
            marks = RunMarks.of(run, track::wayAt, track.end());
        } else {
            track = null;
            belts = null;
            double length = table.largest(RunColumn.HEIGHT);
            marks = RunMarks.of(run, t -> table.at(RunColumn.HEIGHT, t), length);
        }
        player = new Player(table, marks.stream().map(Playing.Mark::time).toList());
    }

    public Run run() {
        return run;
    }

    public Player player() {
        return player;
    }

    public List<Playing.Mark> marks() {
        return marks;
    }

    /** Whether the run goes along a toolpath rather than along the height. */
    public boolean alongPath() {
        return track != null;
    }

    /** Largest way of any belt off its tension at rest [N]; 0 where none is known. */
    public double tensionEnd() {
        return belts == null ? 0 : belts.end();
    }

    /** The belts now, in the signed ink of a scale that goes so far both ways [N]. */
    public PartLook tension(double end) {
        return belts == null ? PartLook.PLAIN : belts.at(player.time(), end);
    }

    /** The answers with what this replay found, the same objects for the same answers. */
    SheetModel.Cards answers(SheetModel.Cards checks) {
        if (checks != known) {
            known = checks;
            answered = checks.with(new ReplayAnswer(this).with(checks.of(Question.SKEW)));
        }
        return answered;
    }

    Optional<ToolTrack> track() {
        return Optional.ofNullable(track);
    }

    /** A value of the run now [SI]. */
    public double now(RunColumn column) {
        return table.at(column, player.time());
    }

    /** Pivot height now; the given one for a replay [m]. */
    public double height(double otherwise) {
        return alongPath() ? otherwise : now(RunColumn.HEIGHT);
    }

    /** Length of the axis: the toolpath's, or the highest pivot height [m]. */
    public double axisEnd() {
        return alongPath() ? track.end() : table.largest(RunColumn.HEIGHT);
    }

    /** Place on the axis now [m]. */
    public double place() {
        return alongPath() ? track.wayAt(player.time()) : now(RunColumn.HEIGHT);
    }

    /** When the run passes a place on its axis; empty where it never comes [s]. */
    public OptionalDouble timeAt(double place) {
        if (alongPath()) {
            return OptionalDouble.of(track.timeAt(Math.max(0, Math.min(track.end(), place))));
        }
        for (int r = 1; r < table.rows(); r++) {
            double a = table.at(RunColumn.HEIGHT, r - 1);
            double b = table.at(RunColumn.HEIGHT, r);
            if (a != b && (place - a) * (place - b) <= 0) {
                double share = (place - a) / (b - a);
                return OptionalDouble.of(
                        table.time(r - 1) + share * (table.time(r) - table.time(r - 1)));
            }
        }
        return OptionalDouble.empty();
    }

    /** Where the gantry is now, errors drawn larger by a factor; its commanded place by 0. */
    public GantryMotion.Place place(double larger) {
        double x = now(RunColumn.COMMANDED_X);
        double y = now(RunColumn.COMMANDED_Y);
        return new GantryMotion.Place(
                x + larger * (now(RunColumn.CARRIAGE) - x),
                y + larger * (now(RunColumn.BRIDGE) - y),
                larger * now(RunColumn.SKEW));
    }

    /** The factor by which errors are drawn when the user has chosen none. */
    public double fitting() {
        return alongPath() ? track.fitting() : 1;
    }

    /**
     * The moment the sheet opens with: a motor that gives up, else what fails its limit, else the
     * worst, else the start [s].
     */
    public double worst() {
        return marked(Set.of("stalls", "steps lost", "not solved"))
                .or(() -> failing(Set.of("largest error")))
                .or(() -> failing(Set.of("largest skew")))
                .or(() -> marked(Set.of("largest error", "lowest margin")))
                .map(Playing.Mark::time)
                .orElse(table.start());
    }

    private Optional<Playing.Mark> failing(Set<String> words) {
        return marked(words).filter(m -> m.verdict().equals(Optional.of(Verdict.FAILS)));
    }

    private Optional<Playing.Mark> marked(Set<String> words) {
        return marks.stream().filter(m -> words.contains(m.words())).findFirst();
    }

    /** The largest torque of the run [N·m]. */
    double strongest() {
        return strongest;
    }

    /** How a run is called on the sheet. */
    public String words() {
        return switch (run.kind()) {
            case UNFOLD -> "unfolding as computed" + end();
            case FOLD -> "folding as computed" + end();
            case REPLAY -> "replay of " + fileName(run.subject()) + end();
        };
    }

    /** How it ended, where that was not as it should. */
    private String end() {
        return run.outcome().equals("arrived") ? "" : ": " + run.outcome();
    }

    private static String fileName(String subject) {
        int slash = Math.max(subject.lastIndexOf('/'), subject.lastIndexOf('\\'));
        return subject.substring(slash + 1);
    }
}
