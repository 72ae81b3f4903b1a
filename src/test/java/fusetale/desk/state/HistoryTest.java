package fusetale.desk.state;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.desk.Answers;
import fusetale.sentence.SentenceException;
import fusetale.sentence.Sentences;
import org.junit.jupiter.api.Test;

/** Going back means taking an earlier state. */
class HistoryTest {
    private final BenchState first = BenchState.atFirst(null, Answers.circuit("first-light"));
    private final BenchState second = saying("r2 open");
    private final BenchState third = saying("f1 blown");

    private BenchState saying(String line) {
        try {
            return first.with(new Sentences(first.board()).apply(first.sentence(), line));
        } catch (SentenceException e) {
            throw new IllegalArgumentException(e);
        }
    }

    @Test
    void goesBackAndForward() {
        History history = History.of(first).plus(second).plus(third);

        assertThat(history.back().present()).isEqualTo(second);
        assertThat(history.back().back().present()).isEqualTo(first);
        assertThat(history.back().back().back().present()).isEqualTo(first);
        assertThat(history.back().forward().present()).isEqualTo(third);
        assertThat(history.forward().present()).isEqualTo(third);
    }

    @Test
    void whatWasUndoneIsForgottenByTheNextChange() {
        History history = History.of(first).plus(second).back().plus(third);

        assertThat(history.states()).containsExactly(first, third);
    }

    @Test
    void thePresentStateAgainIsNoChange() {
        History history = History.of(first).plus(saying("r2 open"));

        assertThat(history.plus(saying("r2 open"))).isSameAs(history);
    }
}
