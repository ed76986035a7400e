// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.lift.ForceCurve;
import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.run.BadRunFile;
import foldwright.run.Run;
import foldwright.run.RunFile;
import foldwright.viewer.beside.Second;
import foldwright.viewer.play.Reel;
import foldwright.viewer.play.RunMaker;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Dial;
import foldwright.viewer.session.Engine;
import foldwright.viewer.session.GantryDials;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.Studio;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What is looked at: a machine, and a run of it where one is shown.
 *
 * @param path toolpath of replays, where one was named
 * @param reel the run
 * @param second another machine, over it or beside it
 */
public record Subject(
        MachineFile machine, Optional<Path> path, Optional<Reel> reel, Optional<Second> second) {
    /** A machine alone. */
    static Subject of(MachineFile machine) {
        return new Subject(machine, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * Reads a machine file, or a run file with the machine inside.
     *
     * @throws BadRunFile where a run file cannot be used
     * @throws BadMachineFile where a machine file cannot be used
     */
    static Subject read(Path file, Optional<Path> toolpath) throws BadMachineFile, BadRunFile {
        if (RunFile.isRun(file)) {
            Run run = RunFile.read(file);
            return new Subject(
                    run.machine(), toolpath, Optional.of(new Reel(run)), Optional.empty());
        }
        return new Subject(MachineFile.read(file), toolpath, Optional.empty(), Optional.empty());
    }

    /** Whether a run along a toolpath is shown: then the gantry's numbers decide. */
    boolean alongPath() {
        return reel.filter(Reel::alongPath).isPresent();
    }

    /** The numbers that can be turned. */
    List<Dial> dials() {
        return alongPath() ? GantryDials.of(machine.machine()) : Dial.of(machine.machine());
    }

    /**
     * Margin of a variant [1] that the hills over these numbers show.
     *
     * @param curve of the machine
     */
    ToDoubleFunction<Machine> margins(Engine engine, ForceCurve curve) {
        return alongPath()
                ? m -> RunMaker.margin(machine.trying(m), path)
                : engine.margins(machine.machine(), curve);
    }

    /** Margin from which it holds [1]. */
    double holdsFrom() {
        return alongPath() ? 1 : machine.machine().limits().motorMargin();
    }

    Subject with(Reel run) {
        return new Subject(machine, path, Optional.of(run), second);
    }

    Subject with(Second other) {
        return new Subject(machine, path, reel, Optional.of(other));
    }

    /** Makes sheets of a scene, on scales that also hold the loads of the second machine. */
    SheetBuilder builder(MachineScene scene) {
        SheetBuilder builder = new SheetBuilder(scene);
        second.ifPresent(b -> builder.shareScales(b.loads()));
        return builder;
    }

    /** The sheet with the second machine on it, where there is one. */
    SheetBuilder.Page over(SheetBuilder.Page page, MachineScene scene) {
        double larger = reel.map(Reel::fitting).orElse(1.0);
        return second.map(b -> b.over(page, scene, reel, larger)).orElse(page);
    }

    /** Puts the machines on the table. */
    void stand(Studio studio, MachineScene scene) {
        Second.stand(second, studio, scene);
    }
}
