// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.ForceCurve;
import foldwright.machine.Machine;
import foldwright.viewer.sheet.SheetModel;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.ToDoubleFunction;

/**
 * Computes on a thread of its own, always for the latest machine: a newer request replaces one that
 * waits. While numbers change only the quick results are made; after a rest the force curve with
 * what it tells, the whole assessment, then the hills.
 */
public final class Calculator implements AutoCloseable {
    /** What a finished computation belongs to. */
    public record Done(long request, Results results, List<SheetModel.Hill> hills) {}

    /** What to compute. */
    private record Request(long number, Machine machine, List<Dial> dials, Depth depth) {}

    /** How much. */
    public enum Depth {
        QUICK,
        WHOLE
    }

    private final Engine engine;
    private final Runnable wake;
    private final Latest<Request> next = new Latest<>();
    private final AtomicReference<Done> done = new AtomicReference<>();
    private final Thread thread;
    private volatile CountDownLatch shown = new CountDownLatch(0);
    private long count;

    /**
     * Starts the thread.
     *
     * @param wake called, on that thread, when something is finished
     */
    public Calculator(Engine engine, Runnable wake) {
        this.engine = engine;
        this.wake = wake;
        thread = new Thread(this::run, "calculator");
        thread.setDaemon(true);
        thread.start();
    }

    /** Asks for results; returns the number by which they come back. */
    public long ask(Machine machine, List<Dial> dials, Depth depth) {
        long number = ++count;
        next.ask(new Request(number, machine, dials, depth));
        return number;
    }

    /**
     * From now until {@link #goOn} no more is computed than what the curve tells: the drawing needs
     * the processors.
     */
    public void hold() {
        shown = new CountDownLatch(1);
    }

    /** Everything is computed again. */
    public void goOn() {
        shown.countDown();
    }

    /** The newest finished results, once. */
    public Done take() {
        return done.getAndSet(null);
    }

    private void run() {
        for (Request request = next.await(); request != null; request = next.await()) {
            try {
                work(request);
            } catch (RuntimeException e) {
                // The sheet says so where the answer would stand; the window lives on.
                give(
                        request,
                        new Results(
                                java.util.Optional.empty(),
                                java.util.Optional.empty(),
                                List.of(),
                                "could not be computed: " + e.getMessage()),
                        List.of());
            }
        }
    }

    private void work(Request request) {
        if (request.depth == Depth.QUICK) {
            give(request, engine.quick(request.machine), List.of());
            return;
        }
        ForceCurve curve = engine.curve(request.machine);
        give(request, engine.fold(request.machine, curve), List.of());
        awaitPicture();
        if (!next.overtaken()) {
            whole(request, curve);
        }
    }

    private void whole(Request request, ForceCurve curve) {
        Results whole = engine.whole(request.machine, curve, words -> {});
        give(request, whole, List.of());
        List<SheetModel.Hill> hills = new ArrayList<>();
        ToDoubleFunction<Machine> margins = engine.margins(request.machine, curve);
        for (Dial dial : request.dials) {
            if (next.overtaken()) {
                return;
            }
            hills.add(
                    RuleSet.hill(
                            margins,
                            request.machine,
                            dial,
                            request.machine.limits().motorMargin()));
            give(request, whole, List.copyOf(hills));
        }
    }

    private void awaitPicture() {
        try {
            shown.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void give(Request request, Results results, List<SheetModel.Hill> hills) {
        done.set(new Done(request.number, results, hills));
        wake.run();
    }

    @Override
    public void close() {
        next.close();
        goOn();
    }
}
