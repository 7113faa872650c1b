package org.ohmstead.assessment;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Does one piece of work in a thread of its own while its owner prepares the next; never more than one, and in order. What
 * goes wrong comes out at the next call.
 */
final class OneAhead implements AutoCloseable {

    private final ExecutorService thread = Executors.newSingleThreadExecutor();
    private Future<?> underWay = CompletableFuture.completedFuture(true);

    void submit(Runnable work) {
        await();
        underWay = thread.submit(work);
    }

    /** Until all that was submitted is done. */
    void await() {
        try {
            underWay.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Interrupted while work was under way", e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException cause
                    ? cause
                    : new IllegalStateException("The work failed", e.getCause());
        }
    }

    /** Lets what is under way come to its end. */
    @Override
    public void close() {
        thread.shutdown();
    }
}
