package fusetale.desk.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fusetale.circuit.Circuit;
import fusetale.desk.Answers;
import fusetale.desk.match.MadeUp.Mood;
import fusetale.desk.state.BenchState;
import fusetale.desk.state.DeskModel;
import fusetale.desk.state.Workers;
import fusetale.match.Advice;
import fusetale.match.Ask;
import fusetale.match.Findings;
import fusetale.match.Repair;
import fusetale.sentence.SentenceException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

/** The model of the place without a window: its thread is the one of the test. */
class MatchModelTest {
    private static final Circuit FIRST_LIGHT = Answers.circuit("first-light");

    private final LinkedBlockingQueue<Runnable> window = new LinkedBlockingQueue<>();
    private final List<Throwable> trouble = new ArrayList<>();
    private final Workers workers = new Workers(window::add, trouble::add);
    private final DeskModel desk = new DeskModel(workers, BenchState.atFirst(null, FIRST_LIGHT));

    private MatchModel model(Mood mood) {
        MatchModel model = new MatchModel(desk, workers, MadeUp.in(mood));
        model.show();
        return model;
    }

    private void until(BooleanSupplier holds) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
        while (!holds.getAsBoolean()) {
            Runnable next = window.poll(20, TimeUnit.MILLISECONDS);
            if (next != null) {
                next.run();
            }
            assertThat(trouble).isEmpty();
            assertThat(System.nanoTime()).as("waiting").isLessThan(end);
        }
    }

    private void worked(MatchModel model) throws InterruptedException {
        until(() -> model.fresh() && !model.workProperty().get().busy());
    }

    private static Ask advised(MatchModel model) {
        return model.adviceProperty().get().map(Advice::ask).orElseThrow();
    }

    @Test
    void withoutAnyReadingTheFirstOneIsAdvised() throws InterruptedException {
        MatchModel model = model(Mood.PLAIN);
        worked(model);

        assertThat(advised(model).words()).isEqualTo("TP1 to gnd, d.c. volts");
        assertThat(MatchLine.of(model).spoken()).contains("Start with d.c. volts at TP1");
    }

    @Test
    void aBareFigureIsTakenForWhatIsAdvisedAndTheAdviceWalksOn() throws Exception {
        MatchModel model = model(Mood.PLAIN);
        worked(model);
        model.take("18.2");
        assertThatThrownBy(() -> {
                    model.take("0.02");
                })
                .as("before the next advice is there")
                .isInstanceOf(SentenceException.class);
        worked(model);
        model.take("0,01");
        worked(model);

        assertThat(model.found())
                .extracting(f -> f.text())
                .containsExactly("TP1 18.2 V d.c. volts", "TP2 0.01 V d.c. volts");
        assertThat(advised(model).words()).isEqualTo("TP1 to gnd, a.c. volts");
    }

    @Test
    void undoTakesAReadingBackAndTheRankingWithIt() throws Exception {
        MatchModel model = model(Mood.PLAIN);
        worked(model);
        model.take("tp2 0.01 dc");
        worked(model);
        Standing with = model.standingProperty().get().orElseThrow();
        assertThat(with.ranking().candidates().get(0).repair().words()).isEqualTo("R2");
        desk.undo();
        worked(model);

        assertThat(model.found()).isEmpty();
        assertThat(model.standingProperty().get().orElseThrow().findings().size())
                .isZero();
    }

    @Test
    void whatCannotBeReachedIsNotAdvisedAgain() throws Exception {
        MatchModel model = model(Mood.PLAIN);
        worked(model);
        model.cannotReach();
        worked(model);
        until(() -> model.adviceProperty().get().isPresent());

        assertThat(desk.state().outOfReach()).containsExactly("TP1");
        assertThat(advised(model).words()).isEqualTo("TP2 to gnd, d.c. volts");
    }

    @Test
    void anotherOneComesRoundAgain() throws Exception {
        MatchModel model = model(Mood.PLAIN);
        worked(model);
        List<String> seen = new ArrayList<>();
        for (int k = 0; k < 7; k++) {
            seen.add(advised(model).words());
            model.another();
        }

        assertThat(seen.get(6)).isEqualTo(seen.get(0));
        assertThat(seen.subList(0, 6)).doesNotHaveDuplicates();
    }

    @Test
    void aFirstLookIsSaidToBeOneAndCanBeStopped() throws Exception {
        MatchModel model = model(Mood.FIRST_LOOK);
        until(() -> model.workProperty().get().of() > 0);

        assertThat(MatchLine.of(model).spoken()).contains("640 of 4,576");
        assertThat(model.status()).contains("640 of 4,576");
        model.stop();
        assertThat(model.workProperty().get().stopped()).isTrue();
        assertThat(MatchLine.of(model).spoken()).contains("stopped at 640 of 4,576");
    }

    @Test
    void aChangeOfOrderIsTold() throws Exception {
        MatchModel model = model(Mood.PLAIN);
        worked(model);
        model.take("tp1 0.0 dc");
        worked(model);
        assertThat(model.newsProperty().get()).startsWith("Now first: BR1 leg 1 is shorted.");
        model.take("F1 blown");
        worked(model);

        assertThat(model.newsProperty().get()).isEmpty();
    }

    @Test
    void whatIsLikelyNotInTheListIsToldBeforeWhoLeadsInIt() throws Exception {
        MatchModel model = model(Mood.UNLISTED);
        worked(model);
        model.take("tp1 0.0 dc");
        worked(model);

        assertThat(model.newsProperty().get()).isNotEmpty();
        assertThat(MatchLine.of(model).spoken())
                .startsWith("Likely something not in the list.")
                .doesNotContain("Perhaps");
    }

    @Test
    void aDangerStandsFirst() throws Exception {
        MatchModel model = model(Mood.DANGER);
        worked(model);

        assertThat(MatchLine.of(model).danger()).isTrue();
        assertThat(MatchLine.of(model).spoken()).startsWith("Do not power up.");
        assertThat(advised(model).arrangement().powerOn()).isFalse();
    }

    @Test
    void dontKnowTakesWhatWasSeenAway() throws Exception {
        MatchModel model = model(Mood.PLAIN);
        worked(model);
        Ask.Noticed fuse = model.sights().intake().get(0);
        model.see(
                fuse, java.util.Optional.of(model.sights().choices(fuse).get(1).shown()));
        worked(model);
        assertThat(model.found()).extracting(f -> f.text()).containsExactly("F1 wire gone");
        model.see(fuse, java.util.Optional.empty());
        worked(model);

        assertThat(model.found()).isEmpty();
    }

    @Test
    void aNewPartBeginsAnewAndUndoTakesItBack() throws Exception {
        MatchModel model = model(Mood.PLAIN);
        worked(model);
        model.take("tp2 0.01 dc");
        worked(model);
        model.take("replaced R2");
        worked(model);
        model.take("tp2 14.6 dc");
        worked(model);
        Findings findings = model.standingProperty().get().orElseThrow().findings();

        assertThat(findings.spells()).hasSize(2);
        assertThat(findings.now().replaced()).containsExactly("R2");
        assertThat(findings.now().evidence()).hasSize(1);
        Standing now = model.standingProperty().get().orElseThrow();
        Advice.Meaning meaning = new Advice.Meaning("OL", 1, new Repair(List.of("R2")), false, 1);
        assertThat(AdviceWords.then(meaning, now::done)).isEqualTo("it was R2, which is new");
        assertThat(AdviceWords.then(meaning, r -> false)).isEqualTo("change R2");
        assertThat(now.done(new Repair(List.of("R2", "F1")))).isFalse();
        assertThat(now.done(Repair.NOTHING)).isFalse();
        assertThat(model.status()).startsWith("2 readings");
        desk.undo();
        desk.undo();
        worked(model);
        assertThat(model.standingProperty().get().orElseThrow().findings().spells())
                .hasSize(1);
    }

    @Test
    void whatWasSeenBeforeAPartWasReplacedIsNotSaidOfTheNewOne() throws Exception {
        MatchModel model = model(Mood.PLAIN);
        worked(model);
        model.take("F1 blown");
        worked(model);
        Ask.Noticed fuse = model.sights().intake().get(0);
        assertThat(model.seen(fuse)).isPresent();
        model.take("replaced F1");
        worked(model);
        assertThat(model.seen(fuse)).isEmpty();
        model.see(fuse, model.sights().sound(fuse));
        worked(model);

        assertThat(model.found())
                .extracting(f -> f.text())
                .containsExactly("F1 wire gone", "replaced F1", "F1 wire whole");
    }

    @Test
    void whatNeedsTheSameBenchIsNamedTogether() throws Exception {
        MatchModel model = model(Mood.PLAIN);
        worked(model);

        assertThat(model.inOneGo())
                .extracting(a -> a.ask().words())
                .containsExactly("TP2 to gnd, d.c. volts", "TP1 to gnd, a.c. volts", "TP4 to s2, a.c. volts");
        for (int k = 0; k < 4; k++) {
            model.another();
        }
        assertThat(advised(model).arrangement().powerOn()).isFalse();
        assertThat(model.inOneGo())
                .allMatch(a -> !a.ask().arrangement().powerOn())
                .hasSize(1);
    }

    /** The tag says to set the bench and what to read on it: whatever of that is typed is read on that bench. */
    @Test
    void whatIsReadInOneGoIsReadOnTheBenchOfTheTag() throws Exception {
        MatchModel model = model(Mood.LAMP);
        worked(model);
        model.take("tp2 3.1 dc");
        worked(model);
        model.take("tp5 3.1 dc");
        model.take("tp4 0.1 ac (power on)");

        assertThat(model.found())
                .flatExtracting(f -> f.told().stream().toList())
                .extracting(e -> e.ask().arrangement().seriesLampWatts())
                .containsExactly(100.0, null, null);
    }

    /** A figure that is being typed belongs to what the tag asked for when it was begun. */
    @Test
    void theTagStaysWhileSomebodyTypes() throws Exception {
        MatchModel model = model(Mood.PLAIN);
        worked(model);
        model.typing(true);
        desk.reach("TP1", false);
        worked(model);

        assertThat(advised(model).words()).isEqualTo("TP1 to gnd, d.c. volts");
        model.typing(false);
        assertThat(advised(model).words()).isEqualTo("TP2 to gnd, d.c. volts");
    }
}
