// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.report.draw.Theme;
import foldwright.study.Question;
import foldwright.viewer.Headless;
import foldwright.viewer.Sample;
import foldwright.viewer.StudioTest;
import foldwright.viewer.Texts;
import foldwright.viewer.picture.Pixels;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.Ground;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.Part;
import foldwright.viewer.session.Engine;
import foldwright.viewer.session.LiftEngine;
import foldwright.viewer.session.LoadField;
import foldwright.viewer.session.Overlay;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.theme.Palette;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3f;
import org.junit.jupiter.api.Test;

/** Every load overlay: ink on the most loaded part, no text over another, computed loads. */
class LoadInkTest extends StudioTest {
    private static final Engine ENGINE = new LiftEngine();

    private static void draw(
            Results results, Question q, Overlay o, double height, Studio.Look look) {
        SheetBuilder.Choice usual = SheetBuilder.Choice.of(q, height);
        SheetBuilder.Choice choice =
                new SheetBuilder.Choice(q, o, height, 0, usual.forces(), usual.larger());
        SheetBuilder.Page page =
                new SheetBuilder(studio.scene())
                        .page(
                                results,
                                choice,
                                Sample.rules(),
                                new SheetBuilder.Words(
                                        "as in the file",
                                        Optional.empty(),
                                        "lying flat",
                                        Optional.empty()));
        Headless.draw(studio, page, look);
    }

    private static Studio.Look look(View.Stance stance) {
        return new Studio.Look(Theme.LIGHT, stance, 1, 0, 0, MachineRenderer.Quality.REST);
    }

    /** Pixels of a part that carry a colour, within one level. */
    private static int inked(Part part, int colour) {
        Vector3f at = studio.scene().middle(part, new Vector3f());
        int cx = (int) Math.round(studio.view().x(at.x, at.y, at.z));
        int cy = (int) Math.round(studio.view().y(at.x, at.y, at.z));
        int seen = 0;
        try (Pixels pixels = studio.pixels()) {
            for (int dy = -90; dy <= 90; dy++) {
                for (int dx = -70; dx <= 70 && seen < 8; dx++) {
                    int x = cx + dx;
                    int y = cy + dy;
                    if (SheetTest.distance(pixels.rgb(x, y), colour) <= 1
                            && studio.pick(x, y) == part.id()) {
                        seen++;
                    }
                }
            }
        }
        return seen;
    }

    private static void assertInk(
            String name, Question q, Overlay o, double share, View.Stance st) {
        studio.machine(new MachineScene(Headless.machine(name)));
        studio.size(3840, 2160, 1);
        Results results = ENGINE.quick(studio.scene().machine());
        var shape = studio.scene().shape();
        double height = shape.flat() + share * (shape.top() - shape.flat());
        draw(results, q, o, height, look(st));
        LoadField field = new SheetBuilder(studio.scene()).field(results, o).orElseThrow();
        double load = field.at(field.darkest(height).orElseThrow(), height);
        Palette p = Palette.of(Theme.LIGHT);
        int most = 0;
        for (Part part : studio.scene().parts()) {
            // Of parts that carry as much one or the other is in sight.
            double own = field.at(part.name(), height);
            if (Math.abs(own - load) <= 0.05 * Math.abs(load)) {
                double at = field.share(own);
                int colour = field.signed() ? p.signed(2 * at - 1) : p.load(at);
                most = Math.max(most, inked(part, colour));
            }
        }
        assertThat(most).as(o + " on " + name).isGreaterThan(4);
    }

    @Test
    void theMostLoadedPartCarriesTheLegendsColour() {
        View.Stance home = View.Stance.home();
        assertInk("van-bench", Question.FOLD, Overlay.SPRING_FORCE, 0.2, home);
        assertInk("van-bench", Question.FOLD, Overlay.DRIVE_BELT, 0.3, home.turned(-0.9, 0.3));
        assertInk("van-bench", Question.FOLD, Overlay.PIN_FORCE, 0.5, home);
        assertInk("van-bench", Question.ORDER, Overlay.USED, 0.3, home);
        View.Stance above = View.Stance.above();
        assertInk("class-plotter-skews", Question.SKEW, Overlay.BELT_TENSION, 1, above);
        assertInk("class-plotter", Question.FOLD, Overlay.RAIL_MOMENT, 1, home);
    }

    @Test
    void noTextCoversAnotherWithAnyLoadShown() {
        List<String> covered = new ArrayList<>();
        int[][] sizes = {{1280, 720}, {1920, 1080}, {3840, 2160}};
        for (String name : List.of("van-bench", "class-plotter-skews")) {
            studio.machine(new MachineScene(Headless.machine(name)));
            Results results = ENGINE.quick(studio.scene().machine());
            var shape = studio.scene().shape();
            for (int[] size : sizes) {
                studio.size(size[0], size[1], 1);
                for (Overlay o : Overlay.values()) {
                    Question q = Question.values()[o.ordinal() % Question.values().length];
                    double h = o.ordinal() % 3 / 2.0;
                    studio.scene().on(o.ordinal() % 2 == 0 ? Ground.GRID : Ground.PLAIN);
                    Studio.Look look =
                            look(q == Question.SKEW ? View.Stance.above() : View.Stance.home())
                                    .at(MachineRenderer.Quality.MOVING);
                    draw(results, q, o, shape.flat() + h * (shape.top() - shape.flat()), look);
                    Texts.overlaps(studio, name + " " + o + " " + size[0], covered);
                }
            }
        }
        assertThat(covered).isEmpty();
    }

    /** Loads of the lift are those at the height drawn, of the gantry those of one instant. */
    @Test
    void loadsOfAGantrySayOfWhichInstantTheyAre() {
        studio.machine(new MachineScene(Headless.machine("van-bench")));
        Results results = ENGINE.quick(studio.scene().machine());
        Studio.Look look = look(View.Stance.home()).at(MachineRenderer.Quality.MOVING);
        for (int wide : new int[] {1280, 1920}) {
            studio.size(wide, wide * 9 / 16, 1);
            draw(results, Question.FOLD, Overlay.RAIL_MOMENT, 0.109, look);
            assertThat(studio.boxes().stream().map(b -> b.text()).toList())
                    .anyMatch(t -> t.startsWith("as ") && t.contains(" at 3.00"))
                    .anyMatch(t -> t.startsWith("largest: "));
            draw(results, Question.FOLD, Overlay.ARM_BENDING, 0.109, look);
            assertThat(studio.boxes().stream().map(b -> b.text()).toList())
                    .noneMatch(t -> t.startsWith("as ") && t.contains(" at 3.00"))
                    .anyMatch(t -> t.startsWith("largest now "));
        }
    }

    /** Where springs let go there is no force to be told, whatever is left of it by rounding. */
    @Test
    void whatIsLeftOfALoadByRoundingIsNotTold() {
        var machine = Headless.machine("van-bench");
        Results results = ENGINE.quick(machine);
        LoadField field =
                new SheetBuilder(new MachineScene(machine))
                        .field(results, Overlay.SPRING_FORCE)
                        .orElseThrow();
        // Free length 115 mm: they let go at 109 mm.
        assertThat(field.darkest(0.1095)).isEmpty();
        assertThat(field.darkest(0.105)).isPresent();
    }

    /** Words about the machine do not lie on it, and neither does the key of the arrows. */
    @Test
    void wordsBesideTheRaisedMachineLieClearOfIt() {
        studio.machine(new MachineScene(Headless.machine("van-bench")));
        LiftEngine engine = new LiftEngine();
        var machine = studio.scene().machine();
        Results results = engine.whole(machine, engine.curve(machine), words -> {});
        double top = studio.scene().shape().top();
        Studio.Look look = look(View.Stance.home()).at(MachineRenderer.Quality.MOVING);
        List<String> wanted = List.of("feet ", "tool reaches", "arrows", "leans", "bending of");
        List<String> on = new ArrayList<>();
        for (int[] size : new int[][] {{1280, 720}, {1920, 1080}, {2560, 1440}}) {
            studio.size(size[0], size[1], 1);
            for (Question q : List.of(Question.FIT, Question.LEAN)) {
                draw(results, q, Overlay.NONE, top, look);
                for (var box : List.copyOf(studio.boxes())) {
                    if (wanted.stream().anyMatch(box.text()::startsWith)) {
                        for (int i = 0; i <= 40; i++) {
                            double x = box.x() + box.width() * i / 40.0;
                            double y = box.y() + box.height() / 2;
                            if (studio.pick(x, y) != 0) {
                                on.add(size[0] + " " + box.text());
                                break;
                            }
                        }
                    }
                }
            }
        }
        assertThat(on).isEmpty();
    }

    /**
     * Belt tension over a wheel that turns freely is the same on both sides; the largest and the
     * least strand of a loop differ from rest by what a carriage of mass m on acceleration a asks
     * of one strand each, m a/2, when inertia of motors and wheels is left out: more with them.
     */
    @Test
    void beltTensionsAreThoseOfTheGantrysStatics() {
        var machine = Headless.machine("class-plotter-skews");
        Results results = ENGINE.quick(machine);
        LoadField field =
                new SheetBuilder(new MachineScene(machine))
                        .field(results, Overlay.BELT_TENSION)
                        .orElseThrow();
        double most = Math.abs(field.at(field.darkest(0).orElseThrow(), 0));
        double pull = machine.gantry().orElseThrow().carriage().mass() * 4.0 / 2;
        assertThat(field.signed()).isTrue();
        assertThat(most).isBetween(0.99 * pull, 1.6 * pull);
    }
}
