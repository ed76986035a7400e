// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.play;

import foldwright.machine.file.MachineFile;
import foldwright.run.Run;
import foldwright.run.RunKind;
import foldwright.viewer.session.Dial;
import foldwright.viewer.session.Latest;
import foldwright.viewer.session.RuleSet;
import foldwright.viewer.sheet.SheetModel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Computes runs on a thread of its own, always the latest asked for. After a replay the hills over
 * the gantry's rules follow, each point a replay of its own, until something else is asked for.
 */
public final class RunThread implements AutoCloseable {
    /**
     * What is wanted.
     *
     * @param path toolpath of a replay, where one was named
     * @param dials over which hills are wanted
     */
    public record Request(
            MachineFile machine, RunKind kind, Optional<Path> path, List<Dial> dials) {}

    /**
     * What is finished.
     *
     * @param run absent when it was told before, or failed
     * @param trouble why there is no run, one sentence
     * @param hills as many as are known
     */
    public record Done(
            Request request,
            Optional<Run> run,
            Optional<String> trouble,
            List<SheetModel.Hill> hills) {}

    private final Runnable wake;
    private final Latest<Request> next = new Latest<>();
    private final List<Done> finished = new ArrayList<>();

    /**
     * Starts the thread.
     *
     * @param wake called, on that thread, when something is finished
     */
    public RunThread(Runnable wake) {
        this.wake = wake;
        Thread thread = new Thread(this::work, "runs");
        thread.setDaemon(true);
        thread.start();
    }

    /** Asks for a run; one that waits is forgotten. */
    public void ask(Request request) {
        next.ask(request);
    }

    /** All that was finished since the last call. */
    public List<Done> take() {
        synchronized (finished) {
            List<Done> out = List.copyOf(finished);
            finished.clear();
            return out;
        }
    }

    private void work() {
        for (Request r = next.await(); r != null; r = next.await()) {
            make(r);
        }
    }

    private void make(Request request) {
        try {
            Run run = RunMaker.run(request.machine, request.kind, request.path);
            give(new Done(request, Optional.of(run), Optional.empty(), List.of()));
            hills(request);
        } catch (RunMaker.NoRunException e) {
            give(new Done(request, Optional.empty(), Optional.of(e.getMessage()), List.of()));
        } catch (RuntimeException e) {
            String why = "The run could not be computed: " + e.getMessage();
            give(new Done(request, Optional.empty(), Optional.of(why), List.of()));
        }
    }

    private void hills(Request request) {
        List<SheetModel.Hill> hills = new ArrayList<>();
        MachineFile file = request.machine;
        for (Dial dial : request.dials) {
            if (next.overtaken()) {
                return;
            }
            hills.add(
                    RuleSet.hill(
                            m ->
                                    next.newer()
                                            ? Double.NaN
                                            : RunMaker.margin(file.trying(m), request.path),
                            file.machine(),
                            dial,
                            1));
            if (!next.newer()) {
                give(new Done(request, Optional.empty(), Optional.empty(), List.copyOf(hills)));
            }
        }
    }

    private void give(Done done) {
        synchronized (finished) {
            finished.add(done);
        }
        wake.run();
    }

    @Override
    public void close() {
        next.close();
    }
}
