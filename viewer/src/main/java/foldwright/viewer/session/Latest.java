// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import java.util.concurrent.atomic.AtomicReference;

/**
 * What one thread asks of another, always the latest: a newer request replaces one that waits.
 *
 * @param <R> request
 */
public final class Latest<R> implements AutoCloseable {
    /** Longest wait before looking again [ms]. */
    private static final long LOOK = 1000;

    private final AtomicReference<R> next = new AtomicReference<>();
    private final Object bell = new Object();
    private volatile boolean open = true;

    /** Asks; a request that waits is forgotten. */
    public void ask(R request) {
        next.set(request);
        ring();
    }

    /**
     * Whether work on an earlier request is of no use any more: a newer one waits, or none will.
     */
    public boolean overtaken() {
        return !open || newer();
    }

    /** Whether a newer request waits. */
    public boolean newer() {
        return next.get() != null;
    }

    /** Waits for the next request; null when closed. */
    public R await() {
        while (open) {
            R request = next.getAndSet(null);
            if (request != null) {
                return request;
            }
            rest();
        }
        return null;
    }

    private void rest() {
        synchronized (bell) {
            try {
                if (open && !newer()) {
                    bell.wait(LOOK);
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private void ring() {
        synchronized (bell) {
            bell.notifyAll();
        }
    }

    /** Lets the waiting thread go. */
    @Override
    public void close() {
        open = false;
        ring();
    }
}
