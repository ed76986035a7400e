// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.PartShares;
import foldwright.machine.Machine;
import java.util.Optional;

/**
 * Splits what pins and arms carry by cause, on a thread of its own and only when asked: a newer
 * request replaces one that waits. Asked on one thread.
 */
public final class Splitter implements AutoCloseable {
    private record Request(Machine machine, double height) {
        boolean same(Machine other, double at) {
            return machine == other && height == at;
        }
    }

    private record Done(Request request, Optional<PartShares> shares) {}

    private final Engine engine;
    private final Runnable wake;
    private final Latest<Request> next = new Latest<>();
    private volatile Done done;
    private Done taken;
    private Request asked;

    /**
     * Starts the thread.
     *
     * @param wake called, on that thread, when something is finished
     */
    public Splitter(Engine engine, Runnable wake) {
        this.engine = engine;
        this.wake = wake;
        Thread thread = new Thread(this::run, "splitter");
        thread.setDaemon(true);
        thread.start();
    }

    /** Whether something came that was not told before. */
    public boolean take() {
        boolean fresh = done != taken;
        taken = done;
        return fresh;
    }

    /** The shares of a machine; asks for them where they are not there. */
    public PartSplits of(Machine machine) {
        return height -> answer(machine, height);
    }

    private PartSplits.Answer answer(Machine machine, double height) {
        Done now = done;
        if (now != null && now.request.same(machine, height)) {
            return PartSplits.Answer.computed(now.shares);
        }
        if (asked == null || !asked.same(machine, height)) {
            asked = new Request(machine, height);
            next.ask(asked);
        }
        Optional<PartShares> others =
                now != null && now.request.machine == machine ? now.shares : Optional.empty();
        return new PartSplits.Answer(PartSplits.State.COMING, others);
    }

    private void run() {
        for (Request r = next.await(); r != null; r = next.await()) {
            Optional<PartShares> shares;
            try {
                shares = engine.shares(r.machine, r.height);
            } catch (RuntimeException e) {
                // A machine that cannot be solved has no shares; the force curve says why.
                shares = Optional.empty();
            }
            done = new Done(r, shares);
            wake.run();
        }
    }

    @Override
    public void close() {
        next.close();
    }
}
