// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.play;

import foldwright.run.RunColumn;
import foldwright.study.HeightPlot;
import foldwright.study.Numerals;
import foldwright.study.Series;
import foldwright.study.Shown;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.scene.GantryMotion;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.PartKind;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.Ghost;
import foldwright.viewer.sheet.Playing;
import foldwright.viewer.sheet.SheetModel;
import foldwright.viewer.sheet.SheetPainter;
import foldwright.viewer.sheet.Studio;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Puts a run over a sheet: its time, its marks, what it needed, where the tool was. */
public final class PlayPage {
    private static final Set<PartKind> IDEAL = Set.of(PartKind.BRIDGE, PartKind.CARRIAGE);

    private final Reel reel;
    private final Playing.Controls controls;
    private final double larger;
    private final String speed;

    /**
     * A sheet maker.
     *
     * @param larger factor by which errors of a replay are drawn
     * @param speed said beside the time; empty in a still
     */
    private PlayPage(Reel reel, Playing.Controls controls, double larger, String speed) {
        this.reel = reel;
        this.controls = controls;
        this.larger = larger;
        this.speed = speed;
    }

    /** For a window: with controls and the speed of the clock. */
    public static PlayPage live(Reel reel, Playing.Controls controls, double larger) {
        return new PlayPage(reel, controls, larger, Player.words(reel.player().speed()));
    }

    /** For a still. */
    public static PlayPage still(Reel reel) {
        return new PlayPage(reel, Playing.Controls.NONE, reel.fitting(), "");
    }

    /** For a film that shows the run at a speed [1]. */
    public static PlayPage film(Reel reel, double speed) {
        return new PlayPage(reel, Playing.Controls.NONE, reel.fitting(), Player.words(speed));
    }

    /**
     * The page of a replay with the belts of both machines in ink, on the scale of the larger.
     *
     * @param b replay of the machine beside
     */
    public static SheetBuilder.Page beside(SheetBuilder.Page page, Reel a, Reel b) {
        double end = Math.max(a.tensionEnd(), b.tensionEnd());
        Studio.Moment m = page.moment();
        Studio.Moment both =
                new Studio.Moment(m.height(), m.gantry(), a.tension(end), m.ink(), m.lean());
        SheetModel model =
                page.model()
                        .playing()
                        .map(p -> page.model().playing(p.noted(TensionLook.words(end))))
                        .orElse(page.model());
        return new SheetBuilder.Page(model, both.with(b.tension(end)), page.marks());
    }

    /** The sheet with the run on it; the page is that of the height the run is at. */
    public SheetBuilder.Page over(SheetBuilder.Page page, Results results, MachineScene scene) {
        return reel.alongPath() ? replay(page, scene) : fold(page, results);
    }

    private Playing.Clock clock() {
        Player p = reel.player();
        double end = reel.run().table().end();
        int decimals = end < 20 ? 3 : 2;
        return new Playing.Clock(
                reel.words(),
                Numerals.fixed(p.time(), decimals)
                        + "\u00a0s of "
                        + Numerals.number(end)
                        + "\u00a0s",
                speed,
                p.speedShare(),
                controls,
                p.again() == Player.Again.LOOP ? Playing.Again.LOOP : Playing.Again.ONCE);
    }

    // ---- along the height

    private SheetBuilder.Page fold(SheetBuilder.Page page, Results results) {
        SheetModel m = page.model();
        SheetModel.Travel travel =
                new SheetModel.Travel(
                        m.travel().flat(),
                        m.travel().top(),
                        m.travel().height(),
                        Numerals.fixed(reel.player().time(), 1) + "\u00a0s",
                        m.travel().noGo());
        boolean torque = m.plot().isPresent() && m.plot().equals(results.plot());
        Optional<HeightPlot> plot = torque ? m.plot().map(this::withRun) : m.plot();
        SheetModel.Head head =
                new SheetModel.Head(
                        m.head().title(), motor(), m.head().dashed(), m.head().larger());
        SheetModel model =
                m.with(head, travel, plot)
                        .playing(new Playing(clock(), reel.marks(), Optional.empty()));
        return new SheetBuilder.Page(model, page.moment(), page.marks());
    }

    /** What the motor does now, or the hand at the crank. */
    private String motor() {
        boolean crank = reel.run().machine().machine().drive().byHand();
        double lost = reel.now(RunColumn.STEPS_LOST);
        String torque = (crank ? "crank now " : "motor now ") + torque();
        if (lost >= 1) {
            return torque + ", " + Math.round(lost) + " full steps lost";
        }
        double speed = Math.abs(reel.now(RunColumn.MOTOR_SPEED));
        return torque
                + " at "
                + Numerals.with(speed, Shown.REVOLUTION_PER_SECOND)
                + (crank ? "" : ", no step lost");
    }

    /** The torque now; what is left of none by rounding is none. */
    private String torque() {
        double size = Math.abs(reel.now(RunColumn.MOTOR_TORQUE));
        boolean seen = size > 1e-4 * reel.strongest();
        return Numerals.with(seen ? size : 0, Shown.NEWTON_METRE);
    }

    private HeightPlot withRun(HeightPlot plot) {
        int n = plot.height().size();
        double[] torque = new double[n];
        double[] margin = new double[n];
        for (int i = 0; i < n; i++) {
            var time = reel.timeAt(plot.height().at(i));
            boolean there = time.isPresent();
            torque[i] =
                    there
                            ? Math.abs(
                                    reel.run()
                                            .table()
                                            .at(RunColumn.MOTOR_TORQUE, time.getAsDouble()))
                            : Double.NaN;
            double pullOut =
                    there
                            ? reel.run().table().at(RunColumn.PULL_OUT, time.getAsDouble())
                            : Double.NaN;
            margin[i] = pullOut / torque[i];
        }
        return plot.with(new HeightPlot.Beside("this run", Series.of(torque), Series.of(margin)));
    }

    // ---- along the toolpath

    private SheetBuilder.Page replay(SheetBuilder.Page page, MachineScene scene) {
        ToolTrack track = reel.track().orElseThrow();
        double time = reel.player().time();
        SheetModel m = page.model();
        Shown unit = Shown.MILLIMETRE;
        double error = Math.hypot(reel.now(RunColumn.ERROR_X), reel.now(RunColumn.ERROR_Y));
        SheetModel.InkLegend ink =
                new SheetModel.InkLegend(
                        "error of the tool, mm",
                        unit.fromSi(track.inkEnd()),
                        unit.fromSi(error),
                        "now "
                                + Numerals.with(error, unit)
                                + ", largest "
                                + Numerals.with(track.largest(), unit)
                                + " at "
                                + Numerals.fixed(track.largestAt(), 3)
                                + "\u00a0m",
                        Optional.empty());
        SheetModel.Head head =
                new SheetModel.Head(
                        m.head().title(),
                        m.head().drawn(),
                        Optional.of("dashed: square, where it is sent"),
                        larger);
        SheetModel model =
                m.with(head, m.travel(), Optional.empty())
                        .ink(ink)
                        .cards(reel.answers(m.cards()))
                        .playing(
                                new Playing(
                                        clock(),
                                        reel.marks(),
                                        Optional.of(
                                                track.sheet(
                                                        time,
                                                        larger,
                                                        TensionLook.words(reel.tensionEnd())))));
        scene.place(page.moment().height(), reel.place(0));
        Ghost ghost = Ghost.of(scene, p -> IDEAL.contains(p.kind()));
        GantryMotion.Place place = reel.place(larger);
        Studio.Moment moment =
                new Studio.Moment(
                        page.moment().height(),
                        place,
                        reel.tension(reel.tensionEnd()),
                        MachineRenderer.Ink.SIGNED);
        return new SheetBuilder.Page(
                model, moment, new SheetPainter.Marks(List.of(), words()).with(ghost));
    }

    private SheetPainter.Stray words() {
        double span = reel.run().machine().machine().gantry().orElseThrow().legs().span();
        double skew = Math.abs(reel.now(RunColumn.SKEW));
        long line =
                Math.round(
                        reel.run()
                                .table()
                                .at(RunColumn.LINE, reel.run().table().row(reel.player().time())));
        double lost = reel.now(RunColumn.STEPS_LOST);
        String title = "skew now " + Numerals.with(skew * span, Shown.MILLIMETRE) + " end to end";
        String second =
                (line > 0 ? "line " + line + ", " : "")
                        + "belts "
                        + Numerals.fixed(reel.now(RunColumn.SLACKEST), 1)
                        + " to "
                        + Numerals.fixed(reel.now(RunColumn.TIGHTEST), 1)
                        + "\u00a0N, motor "
                        + torque()
                        + (lost >= 1 ? ", " + Math.round(lost) + " full steps lost" : "");
        return new SheetPainter.Stray(List.of(), title, second);
    }
}
