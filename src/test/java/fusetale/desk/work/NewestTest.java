package fusetale.desk.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The newest question wins. */
class NewestTest {
    private final ExecutorService workers = Executors.newCachedThreadPool();
    private final Queue<Runnable> window = new ConcurrentLinkedQueue<>();
    private final List<Throwable> trouble = new ArrayList<>();
    private final Newest newest = new Newest(workers, window::add, trouble::add);

    @AfterEach
    void end() {
        workers.shutdownNow();
    }

    private void paint() {
        Runnable next = window.poll();
        while (next != null) {
            next.run();
            next = window.poll();
        }
    }

    private void ended() throws InterruptedException {
        workers.shutdown();
        assertThat(workers.awaitTermination(10, TimeUnit.SECONDS)).isTrue();
    }

    @Test
    void ofTenQuestionsOnlyTheLastIsShown() throws InterruptedException {
        List<Integer> shown = new ArrayList<>();
        CountDownLatch all = new CountDownLatch(1);
        for (int k = 0; k < 10; k++) {
            int question = k;
            newest.start(turn -> {
                await(all);
                turn.show(() -> shown.add(question));
            });
        }
        all.countDown();
        ended();
        paint();

        assertThat(shown).containsExactly(9);
    }

    @Test
    void whatWasStartedBeforeIsAskedToStop() throws InterruptedException {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch stopped = new CountDownLatch(1);
        newest.start(turn -> {
            begun.countDown();
            while (!turn.stopped()) {
                Thread.onSpinWait();
            }
            stopped.countDown();
        });
        assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
        newest.start(turn -> {});

        assertThat(stopped.await(10, TimeUnit.SECONDS)).isTrue();
    }

    @Test
    void aResultThatWaitsToBePaintedIsDroppedWhenSomethingNewerBegins() throws InterruptedException {
        List<String> shown = new ArrayList<>();
        CountDownLatch there = new CountDownLatch(1);
        newest.start(turn -> {
            turn.show(() -> shown.add("old"));
            there.countDown();
        });
        assertThat(there.await(10, TimeUnit.SECONDS)).isTrue();
        newest.stop();
        paint();

        assertThat(shown).isEmpty();
    }

    @Test
    void aMistakeIsToldAndDoesNotEndTheLine() throws InterruptedException {
        List<String> shown = new ArrayList<>();
        newest.start(turn -> {
            throw new IllegalStateException("nobody foresaw this");
        });
        Thread.sleep(50);
        newest.start(turn -> turn.show(() -> shown.add("next")));
        ended();
        paint();

        assertThat(trouble).singleElement().extracting(Throwable::getMessage).isEqualTo("nobody foresaw this");
        assertThat(shown).containsExactly("next");
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
