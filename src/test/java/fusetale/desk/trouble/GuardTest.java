package fusetale.desk.trouble;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.store.Autosave;
import fusetale.store.Repair;
import fusetale.store.Saved;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GuardTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T07:31:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private final List<Trouble> told = new ArrayList<>();

    private Guard guard(Autosave autosave) {
        return new Guard(autosave::now, () -> "Suppose D1 is shorted.", CLOCK, Runnable::run, told::add);
    }

    private Autosave autosave() {
        return new Autosave.Keeping(folder.resolve("versions"), Duration.ofHours(1), CLOCK, saved -> {})
                .fresh(folder.resolve("a.repair.yaml"));
    }

    @Test
    void theRepairIsKeptBeforeAnythingIsTold() throws InterruptedException {
        try (Autosave autosave = autosave()) {
            autosave.changed(Repair.begun("a", "", Instant.EPOCH));
            Thread thread = new Thread(() -> {
                throw new IllegalStateException("a fuse without clips");
            });
            thread.setUncaughtExceptionHandler(guard(autosave));
            thread.start();
            thread.join();
        }

        assertThat(told).singleElement().satisfies(t -> {
            assertThat(t.where()).contains("a.repair.yaml");
            assertThat(t.text())
                    .contains("Suppose D1 is shorted.", "a fuse without clips", "GuardTest", "2026-11-25", "Java");
        });
        assertThat(Repair.read(folder.resolve("a.repair.yaml"))).isPresent();
    }

    @Test
    void whileOneIsReadNoSecondIsTold() {
        try (Autosave autosave = autosave()) {
            Guard guard = guard(autosave);
            guard.uncaughtException(Thread.currentThread(), new IllegalStateException("one"));
            guard.uncaughtException(Thread.currentThread(), new IllegalStateException("two"));
            assertThat(told).hasSize(1);

            guard.told();
            guard.uncaughtException(Thread.currentThread(), new IllegalStateException("three"));
            assertThat(told).hasSize(2);
        }
    }

    @Test
    void thatItCouldNotBeKeptIsSaid() {
        Trouble trouble = Trouble.of(
                new IllegalStateException("one"),
                Optional.of(new Saved.Failed("the disk is full")),
                "",
                CLOCK.instant(),
                "");

        assertThat(trouble.where()).contains("NOT", "the disk is full");
    }
}
