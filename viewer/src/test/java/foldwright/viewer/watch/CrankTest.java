// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import foldwright.report.draw.Theme;
import foldwright.study.Question;
import foldwright.viewer.Sample;
import foldwright.viewer.glb.Glb;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.Ground;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.Part;
import foldwright.viewer.sheet.Layout;
import foldwright.viewer.sheet.TableView;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.joml.Matrix4x3f;
import org.joml.Vector3f;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A crank turns as the screw it drives: by the lead of its thread (closed form), through a belt by
 * the teeth of its pulleys. Sense: a right-hand thread turned anticlockwise, as the hand sees it,
 * pushes its nut away.
 */
class CrankTest {
    private static final double LEAD = 0.002;
    private static final double ARM = 0.200;

    @TempDir Path folder;

    private static Path seed() {
        Path here = Path.of("seeds", "hand-crank.json");
        return Files.exists(here) ? here : Path.of("..").resolve(here);
    }

    /** The seed with 20 teeth on the crank and 40 on the screw. */
    private Machine behindABelt() throws Exception {
        String belt = "{ \"kind\": \"belt\", \"teeth\": \"20:40\" }";
        String text = Files.readString(seed()).replace("{ \"kind\": \"direct\" }", belt);
        return MachineFile.read(Files.writeString(folder.resolve("belt.json"), text)).machine();
    }

    private static double travel(double openingInDegrees) {
        return ARM * (Math.cos(Math.toRadians(8)) - Math.cos(Math.toRadians(openingInDegrees)));
    }

    /** The end of the handle in the world [m], the crank's arm being its local z. */
    private static Vector3f handle(MachineScene scene, double openingInDegrees) {
        scene.place(ARM * Math.sin(Math.toRadians(openingInDegrees)));
        Part crank = scene.part("hand crank").orElseThrow();
        Matrix4x3f place = new Matrix4x3f();
        scene.pose().body[crank.body()].mul(crank.local(), place);
        return place.transformPosition(new Vector3f(0, 0, 0.040f));
    }

    private static void assertHandle(MachineScene scene, double opening, double perTravel) {
        Vector3f shaft = handle(scene, 8).sub(0, 0, 0.040f);
        double angle = perTravel * travel(opening);
        Vector3f at = handle(scene, opening).sub(shaft);
        assertThat(at.x).isCloseTo(0, within(1e-6f));
        assertThat(at.y).isCloseTo((float) (-0.040 * Math.sin(angle)), within(2e-5f));
        assertThat(at.z).isCloseTo((float) (0.040 * Math.cos(angle)), within(2e-5f));
    }

    @Test
    void turnsWithItsScrew() throws Exception {
        MachineScene scene = new MachineScene(MachineFile.read(seed()).machine());
        for (double opening : new double[] {8.5, 10, 23, 45}) {
            assertHandle(scene, opening, 2 * Math.PI / LEAD);
        }
    }

    @Test
    void turnsByTheTeethOfItsBelt() throws Exception {
        MachineScene scene = new MachineScene(behindABelt());
        for (double opening : new double[] {8.5, 10, 23, 45}) {
            assertHandle(scene, opening, 2 * Math.PI / LEAD * 40 / 20);
        }
    }

    /** At one turn a second all the way but for the start and the stop, as the file asks for. */
    @Test
    void turnsEvenlyInAModelFile() throws Exception {
        Machine machine = behindABelt();
        Path file = folder.resolve("crank.glb");
        Stills.Wish wish =
                new Stills.Wish(
                        new PictureSize(640, 360),
                        HeightWish.WORST,
                        Question.FOLD,
                        Theme.LIGHT,
                        Ground.PLAIN,
                        Optional.empty());
        Models.write(machine, Sample.results(machine), wish, file);
        Glb glb = new Glb(file);
        double[] crank = glb.turnedAboutX(glb.node("hand crank"));
        double[] screw = glb.turnedAboutX(glb.node("screw 1"));
        int last = crank.length - 1;
        double all = 2 * Math.PI / LEAD * travel(45);
        assertThat(screw[last]).isCloseTo(all, within(1e-2));
        assertThat(crank[last]).isCloseTo(2 * all, within(1e-2));
        int fifth = last / 5;
        double second = crank[2 * fifth] - crank[fifth];
        double fourth = crank[4 * fifth] - crank[3 * fifth];
        assertThat(fourth).isCloseTo(second, within(1e-4 * second));
    }

    @Test
    void isReadByItsName() throws Exception {
        MachineScene scene = new MachineScene(MachineFile.read(seed()).machine());
        assertThat(scene.part("motor 1")).isEmpty();
        assertThat(scene.part("hand crank").map(Part::body))
                .isEqualTo(scene.part("screw 1").map(Part::body))
                .isNotEqualTo(Optional.empty());
    }

    /**
     * In the picture at home, all around its turn, it stays left of the tab on the height scale.
     */
    @Test
    void turnsBesideTheScaleAndNotAcrossIt() throws Exception {
        MachineScene scene = new MachineScene(MachineFile.read(seed()).machine());
        for (int[] size : new int[][] {{1280, 720}, {1920, 1080}, {900, 560}}) {
            Layout layout = new Layout(size[0], size[1], 1);
            View view = new TableView(layout, scene).view(View.Stance.home(), 1, 0, 0);
            double right = 0;
            for (double angle = 0; angle < 2 * Math.PI; angle += 0.01) {
                double lift = (travel(23) + LEAD * angle / (2 * Math.PI));
                double opening =
                        Math.toDegrees(Math.acos(Math.cos(Math.toRadians(8)) - lift / ARM));
                Vector3f shaft = handle(scene, opening);
                right = Math.max(right, view.x(shaft.x + 0.050, shaft.y, shaft.z));
            }
            assertThat(right).isBetween(0.5 * layout.scaleX(), layout.tableRight() - 10);
        }
    }
}
