package fusetale.studies;

import fusetale.mna.Trial;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;

/** Work in a thread of its own, so that neither what hangs nor what is thrown stops the rest of a study. */
final class Alone {
    /** After which work counts as hanging [s]. */
    private static final long HANGING_SECONDS = 90;

    private Alone() {}

    /** What the work gives, or what {@code otherwise} makes of the finding that it hangs or throws. */
    static <T> T done(Callable<T> work, Function<List<Trial.Finding>, T> otherwise) {
        ExecutorService alone = Executors.newSingleThreadExecutor(runs -> {
            Thread thread = new Thread(runs);
            thread.setDaemon(true);
            return thread;
        });
        Future<T> result = alone.submit(work);
        try {
            return result.get(HANGING_SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException hanging) {
            return otherwise.apply(List.of(new Trial.Finding("hangs", HANGING_SECONDS + " s")));
        } catch (ExecutionException thrown) {
            Throwable cause = thrown.getCause() == null ? thrown : thrown.getCause();
            StackTraceElement[] trace = cause.getStackTrace();
            String where = trace.length == 0 ? "" : " at " + trace[0];
            String what = "throws " + cause.getClass().getSimpleName();
            return otherwise.apply(List.of(new Trial.Finding(what, cause.getMessage() + where)));
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return otherwise.apply(List.of());
        } finally {
            alone.shutdownNow();
        }
    }
}
