// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.lift.ForceCurve;
import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.run.BadRunFile;
import foldwright.viewer.play.RunMaker;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Dial;
import foldwright.viewer.session.Engine;
import foldwright.viewer.session.PartSplits;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.RuleSet;
import foldwright.viewer.sheet.SheetModel;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.function.ToDoubleFunction;

/**
 * A file that is read and computed on other threads while the drawing thread gets its driver and
 * shaders ready: the curve first and the parts to draw, then all other results, then the hills,
 * point by point on all processors.
 */
final class Ahead implements AutoCloseable {
    private final Engine engine;
    private final ExecutorService pool =
            Executors.newFixedThreadPool(
                    Math.max(2, Runtime.getRuntime().availableProcessors()),
                    work -> {
                        Thread thread = new Thread(work, "ahead");
                        thread.setDaemon(true);
                        return thread;
                    });
    private final Future<Subject> read;
    private final Future<Subject> subject;
    private final Future<ForceCurve> curve;
    private final Future<MachineScene> scene;
    private final Future<Results> results;
    private final List<List<Future<Double>>> hills = new ArrayList<>();

    /** Reads what is looked at. */
    interface Reading {
        Subject read() throws BadMachineFile, BadRunFile;
    }

    /** Adds what has to be computed before anything can be shown. */
    interface Preparing {
        Subject prepare(Subject read) throws RunMaker.NoRunException, BadMachineFile, BadRunFile;
    }

    /** Begins to read and compute. */
    Ahead(Engine engine, Reading reading, Preparing preparing) {
        this.engine = engine;
        read = pool.submit(reading::read);
        subject = pool.submit(() -> preparing.prepare(wait(read)));
        curve = pool.submit(() -> engine.curve(wait(read).machine().machine()));
        scene = pool.submit(() -> new MachineScene(wait(read).machine().machine()));
        results =
                pool.submit(
                        () ->
                                engine.whole(
                                        wait(read).machine().machine(), wait(curve), words -> {}));
    }

    /** What is looked at, once it is there. */
    Subject subject() throws BadMachineFile, BadRunFile, RunMaker.NoRunException {
        try {
            return subject.get();
        } catch (InterruptedException e) {
            throw interrupted(e);
        } catch (ExecutionException e) {
            Throwable cause = e.getCause() instanceof Failed f ? f.getCause() : e.getCause();
            if (cause instanceof BadMachineFile bad) {
                throw bad;
            } else if (cause instanceof BadRunFile bad) {
                throw bad;
            } else if (cause instanceof RunMaker.NoRunException none) {
                throw none;
            }
            throw failed(e);
        }
    }

    /** The parts of the machine, once they are made. */
    MachineScene scene() {
        return wait(scene);
    }

    /** Everything computed, once it is. */
    Results results() {
        return wait(results);
    }

    /** What pins and arms carry by cause; computed when asked. */
    PartSplits splits(Machine machine) {
        return height -> PartSplits.Answer.computed(engine.shares(machine, height));
    }

    /** Begins to compute the hills over the first rules, once the curve is there. */
    void hills(int count) throws BadMachineFile, BadRunFile, RunMaker.NoRunException {
        Subject shown = subject();
        List<Dial> dials = shown.dials();
        Future<ToDoubleFunction<Machine>> margins =
                pool.submit(() -> shown.margins(engine, wait(curve)));
        for (Dial dial : dials.subList(0, Math.min(count, dials.size()))) {
            List<Future<Double>> points = new ArrayList<>();
            for (int i = 0; i < RuleSet.HILL_POINTS; i++) {
                int point = i;
                Callable<Double> work =
                        () -> RuleSet.margin(wait(margins), shown.machine().machine(), dial, point);
                points.add(pool.submit(work));
            }
            hills.add(points);
        }
    }

    /** The hills asked for, once they are computed; the calling thread helps. */
    List<SheetModel.Hill> hills() throws BadMachineFile, BadRunFile, RunMaker.NoRunException {
        double holdsFrom = subject().holdsFrom();
        List<SheetModel.Hill> out = new ArrayList<>();
        for (List<Future<Double>> points : hills) {
            for (int i = points.size() - 1; i >= 0; i--) {
                if (points.get(i) instanceof FutureTask<Double> task) {
                    task.run();
                }
            }
            out.add(new SheetModel.Hill(points.stream().map(Ahead::wait).toList(), holdsFrom));
        }
        return out;
    }

    private static <T> T wait(Future<T> work) {
        try {
            return work.get();
        } catch (InterruptedException e) {
            throw interrupted(e);
        } catch (ExecutionException e) {
            throw failed(e);
        }
    }

    private static IllegalStateException interrupted(InterruptedException e) {
        Thread.currentThread().interrupt();
        return new IllegalStateException("stopped while computing", e);
    }

    private static RuntimeException failed(ExecutionException e) {
        return e.getCause() instanceof RuntimeException own ? own : new Failed(e.getCause());
    }

    /** A checked exception on its way through a thread. */
    private static final class Failed extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Failed(Throwable cause) {
            super(cause);
        }
    }

    @Override
    public void close() {
        pool.shutdownNow();
    }
}
