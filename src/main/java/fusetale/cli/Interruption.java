package fusetale.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Ctrl-C during a long piece of work: the work is asked to stop, and the program waits, for a while, until what there is has
 * been printed. To be closed once that is done.
 */
final class Interruption implements AutoCloseable {
    /** Longer nobody wants to wait who pressed Ctrl-C. */
    private static final long PATIENCE_SECONDS = 10;

    private final CountDownLatch asked = new CountDownLatch(1);
    private final CountDownLatch printed = new CountDownLatch(1);
    private final Thread hook = new Thread(this::interrupt, "interruption");

    private Interruption() {}

    /** Listens from now on. */
    static Interruption listening() {
        Interruption interruption = new Interruption();
        Runtime.getRuntime().addShutdownHook(interruption.hook);
        return interruption;
    }

    /** What the system does when the program is to end: asks, and waits for the answer to be printed. */
    void interrupt() {
        asked.countDown();
        try {
            boolean inTime = printed.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
            if (!inTime) {
                // then without an answer
                return;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Whether the work is to stop. */
    boolean asked() {
        return asked.getCount() == 0;
    }

    @Override
    public void close() {
        printed.countDown();
        if (!asked()) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException endingAlready) {
                // asked between the two lines
            }
        }
    }
}
