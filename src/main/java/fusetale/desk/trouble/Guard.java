package fusetale.desk.trouble;

import fusetale.store.Saved;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Catches what nobody foresaw: keeps the repair first, then tells, and the window goes on. While one is being told, further ones
 * only keep the repair.
 */
public final class Guard implements Thread.UncaughtExceptionHandler {
    private final Supplier<Optional<Saved>> keep;
    private final Supplier<String> sentence;
    private final Clock clock;
    private final Executor onTheWindow;
    private final Consumer<Trouble> tell;
    private final AtomicBoolean telling = new AtomicBoolean();

    /**
     * A guard.
     *
     * @param keep keeps the repair at once and tells what became of it; nothing where nothing had changed
     * @param sentence the question as one line
     * @param clock tells when
     * @param onTheWindow runs on the window's own thread
     * @param tell shows it; {@link #told} when it has been read
     */
    public Guard(
            Supplier<Optional<Saved>> keep,
            Supplier<String> sentence,
            Clock clock,
            Executor onTheWindow,
            Consumer<Trouble> tell) {
        this.keep = keep;
        this.sentence = sentence;
        this.clock = clock;
        this.onTheWindow = onTheWindow;
        this.tell = tell;
    }

    @Override
    public void uncaughtException(Thread thread, Throwable mistake) {
        Optional<Saved> kept = keep.get();
        if (telling.compareAndSet(false, true)) {
            Trouble trouble = Trouble.of(mistake, kept, sentence.get(), clock.instant(), Trouble.system());
            onTheWindow.execute(() -> tell.accept(trouble));
        }
    }

    /** Tells that the last one has been read, so that the next one is told. */
    public void told() {
        telling.set(false);
    }
}
