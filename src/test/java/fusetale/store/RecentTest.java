package fusetale.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecentTest {
    private static final Instant NOW = Instant.parse("2026-11-25T07:31:00Z");

    @TempDir
    Path folder;

    private Path file(int number) {
        return folder.resolve(number + ".repair.yaml");
    }

    private Recent opened(int count) {
        Recent recent = Recent.NONE;
        for (int i = 1; i <= count; i++) {
            recent = recent.opened(file(i), "repair " + i, NOW.plusSeconds(i));
        }
        return recent;
    }

    private static List<String> names(Recent recent) {
        return recent.entries().stream().map(Recent.Entry::name).toList();
    }

    @Test
    void theNewestComesFirstAndTwelveAreKept() {
        assertThat(names(opened(14)))
                .hasSize(12)
                .startsWith("repair 14", "repair 13")
                .endsWith("repair 3");
    }

    @Test
    void onePinnedStaysAtTheTop() {
        Recent recent = opened(3).pinned(file(1), true).opened(file(4), "repair 4", NOW.plusSeconds(9));

        assertThat(names(recent)).containsExactly("repair 1", "repair 4", "repair 3", "repair 2");
        assertThat(names(recent.pinned(file(1), false))).endsWith("repair 1");
    }

    @Test
    void whatIsOpenedHasAPlaceHoweverManyArePinned() {
        Recent recent = opened(12);
        for (int i = 1; i <= 12; i++) {
            recent = recent.pinned(file(i), true);
        }

        assertThat(names(recent.opened(file(13), "repair 13", NOW.plusSeconds(99))))
                .contains("repair 13");
    }

    @Test
    void oneOpenedAgainIsListedOnce() {
        assertThat(names(opened(3).opened(file(1), "repair 1", NOW.plusSeconds(50))))
                .containsExactly("repair 1", "repair 3", "repair 2");
    }

    @Test
    void aMissingFileStaysListedAndCanBeFoundElsewhere() throws IOException {
        Recent recent = opened(1).pinned(file(1), true);
        Path elsewhere = Files.createFile(folder.resolve("elsewhere.yaml"));

        assertThat(recent.entries()).allMatch(Recent.Entry::missing);
        Recent.Entry found = recent.moved(file(1), elsewhere).entries().get(0);
        assertThat(found.missing()).isFalse();
        assertThat(found.pinned()).isTrue();
    }

    @Test
    void theListIsReadAsItWasKept() throws UnwritableFile {
        Store store = new Store(folder, folder);
        Recent recent = opened(5).pinned(file(2), true);

        store.changeRecent(r -> recent);

        assertThat(store.recent().lost()).isEmpty();
        assertThat(store.recent().value()).isEqualTo(recent);
        assertThat(store.changeRecent(r -> Recent.NONE)).isEqualTo(Recent.NONE);
        assertThat(store.recent()).isEqualTo(new Kept<>(Recent.NONE, List.of()));
    }

    @Test
    void windowsThatChangeItAtOnceLoseNoEntry() throws InterruptedException, ExecutionException {
        List<Callable<Recent>> windows = new ArrayList<>();
        for (int i = 1; i <= 12; i++) {
            int number = i;
            windows.add(() -> new Store(folder, folder)
                    .changeRecent(r -> r.opened(file(number), "repair " + number, NOW.plusSeconds(number))));
        }
        ExecutorService pool = Executors.newFixedThreadPool(6);
        try {
            for (Future<Recent> future : pool.invokeAll(windows)) {
                future.get();
            }
        } finally {
            pool.shutdown();
        }

        assertThat(new Store(folder, folder).recent().value()).isEqualTo(opened(12));
    }
}
