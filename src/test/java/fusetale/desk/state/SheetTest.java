package fusetale.desk.state;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.circuit.Circuit;
import fusetale.desk.Answers;
import fusetale.report.drawing.Marks;
import fusetale.report.drawing.SymbolStyle;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

/** Drawing and marks away from the window, whose thread is the one of the test. */
class SheetTest {
    private static final Circuit FIRST_LIGHT = Answers.circuit("first-light");

    private final LinkedBlockingQueue<Runnable> window = new LinkedBlockingQueue<>();
    private final Sheet sheet = new Sheet(new Workers(window::add, mistake -> {
        throw new AssertionError(mistake);
    }));

    private void until(BooleanSupplier holds) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
        while (!holds.getAsBoolean()) {
            Runnable next = window.poll(20, TimeUnit.MILLISECONDS);
            if (next != null) {
                next.run();
            }
            assertThat(System.nanoTime()).as("waiting").isLessThan(end);
        }
    }

    private static Marks saying(String words) {
        return new Marks(List.of(), List.of(), List.of(), Map.of("R1", List.of(words)));
    }

    @Test
    void aBoardIsDrawnAndEveryPartSaysWhatItIs() throws InterruptedException {
        sheet.draw(FIRST_LIGHT, SymbolStyle.IEC_60617);
        assertThat(sheet.drawnProperty().get()).isEmpty();
        until(sheet::rests);

        assertThat(sheet.drawnProperty().get().orElseThrow().board()).isSameAs(FIRST_LIGHT);
        assertThat(sheet.markedProperty().get().words("R1")).startsWith("R1, ");
    }

    /** Marks that take long must not come after newer ones. */
    @Test
    void theNewestMarksStand() throws InterruptedException {
        sheet.draw(FIRST_LIGHT, SymbolStyle.IEC_60617);
        until(sheet::rests);
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch held = new CountDownLatch(1);
        CountDownLatch done = new CountDownLatch(1);
        sheet.mark(FIRST_LIGHT, plan -> {
            begun.countDown();
            await(held);
            done.countDown();
            return saying("old");
        });
        await(begun);
        sheet.mark(FIRST_LIGHT, plan -> saying("new"));
        assertThat(sheet.rests()).isFalse();
        until(sheet::rests);
        held.countDown();
        await(done);
        until(window::isEmpty);

        assertThat(sheet.markedProperty().get().marks()).isEqualTo(saying("new"));
        assertThat(sheet.markedProperty().get().words("R1")).endsWith(": new");
    }

    @Test
    void marksOfAnotherBoardAreNotShown() throws InterruptedException {
        sheet.draw(FIRST_LIGHT, SymbolStyle.IEC_60617);
        until(sheet::rests);
        sheet.mark(Answers.circuit("fog-bell"), plan -> saying("elsewhere"));
        until(window::isEmpty);

        assertThat(sheet.rests()).isTrue();
        assertThat(sheet.markedProperty().get().marks()).isEqualTo(Marks.NONE);
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(60, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }
}
