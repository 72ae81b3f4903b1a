package fusetale.desk.state;

import fusetale.desk.work.Newest;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;

/** Threads that work for a window. They end with the program. */
public final class Workers {
    private final ExecutorService pool = Executors.newCachedThreadPool(Workers::daemon);
    private final ExecutorService single = Executors.newSingleThreadExecutor(Workers::daemon);
    private final Executor window;
    private final Consumer<Throwable> trouble;

    /**
     * Workers of one window.
     *
     * @param window runs what changes the window, on its thread
     * @param trouble told there of what nobody foresaw
     */
    public Workers(Executor window, Consumer<Throwable> trouble) {
        this.window = window;
        this.trouble = trouble;
    }

    /** A line of work that begins at once, while what was stopped may still be winding up. */
    public Newest line() {
        return new Newest(pool, window, trouble);
    }

    /** A line of work whose pieces never run side by side. */
    Newest oneByOne() {
        return new Newest(single, window, trouble);
    }

    /** A line of work whose pieces never run side by side, and that holds up no other. */
    public Newest ownLine() {
        return new Newest(Executors.newSingleThreadExecutor(Workers::daemon), window, trouble);
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "fusetale worker");
        thread.setDaemon(true);
        return thread;
    }
}
