package fusetale.desk.work;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;

/**
 * Runs one kind of work away from the window's thread. Whatever is started last is the only work whose results are let through;
 * what was started before is asked to stop. May be used from any thread; results arrive through the window's executor.
 */
public final class Newest {
    private final ExecutorService workers;
    private final Executor window;
    private final Consumer<Throwable> trouble;
    private final AtomicLong newest = new AtomicLong();

    /**
     * A line of work.
     *
     * @param workers what works; must not be the window's thread
     * @param window runs what changes the window
     * @param trouble told, through {@code window}, of what nobody foresaw
     */
    public Newest(ExecutorService workers, Executor window, Consumer<Throwable> trouble) {
        this.workers = workers;
        this.window = window;
        this.trouble = trouble;
    }

    /** One piece of work's view of itself. */
    public final class Turn {
        private final long number;

        private Turn(long number) {
            this.number = number;
        }

        /** Whether something newer was started, or somebody asked to stop. */
        public boolean stopped() {
            return newest.get() != number;
        }

        /** Shows a result, unless something newer was started meanwhile. */
        public void show(Runnable result) {
            window.execute(() -> {
                if (!stopped()) {
                    result.run();
                }
            });
        }
    }

    /** Starts work; what runs already is stopped. */
    public void start(Consumer<Turn> work) {
        Turn turn = new Turn(newest.incrementAndGet());
        workers.execute(new FutureTask<>(() -> answered(work, turn)) {
            @Override
            protected void setException(Throwable mistake) {
                super.setException(mistake);
                window.execute(() -> trouble.accept(mistake));
            }
        });
    }

    /** Does a piece of work, unless it is stopped before it begins; gives whether it was done. */
    private static boolean answered(Consumer<Turn> work, Turn turn) {
        if (turn.stopped()) {
            return false;
        }
        work.accept(turn);
        return true;
    }

    /** Stops what runs; nothing of it is shown any more. */
    public void stop() {
        newest.incrementAndGet();
    }
}
