package fusetale.desk.state;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.circuit.Circuit;
import fusetale.desk.Answers;
import fusetale.desk.consequence.Consequence;
import fusetale.desk.line.LineModel;
import fusetale.desk.state.DeskModel.Freshness;
import fusetale.desk.tags.TagFigures;
import fusetale.desk.tags.TagRow;
import fusetale.explore.Answer;
import fusetale.explore.Compared;
import fusetale.explore.Explorer;
import fusetale.explore.Outcome;
import fusetale.explore.Progress;
import fusetale.explore.Question;
import fusetale.fault.Fault;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import fusetale.sentence.Piece;
import fusetale.sentence.Sentence;
import fusetale.sentence.SentenceException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The model of the window without a window: its thread is the one of the test. */
class DeskModelTest {
    private static final Circuit FIRST_LIGHT = Answers.circuit("first-light");

    private final LinkedBlockingQueue<Runnable> window = new LinkedBlockingQueue<>();
    private final List<Throwable> trouble = new ArrayList<>();
    private final DeskModel model =
            new DeskModel(new Workers(window::add, trouble::add), BenchState.atFirst(null, FIRST_LIGHT));

    /** Does what the window's thread would do until something holds. */
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

    private void worked() throws InterruptedException {
        until(() -> !model.workingProperty().get().busy());
    }

    private Outcome outcome() {
        return model.shownProperty().get().orElseThrow().outcome();
    }

    @Test
    void aBoardIsAskedAboutWhenItIsOpened() throws InterruptedException {
        assertThat(model.freshness()).isEqualTo(Freshness.WORKING);
        worked();

        assertThat(model.freshness()).isEqualTo(Freshness.FRESH);
        assertThat(outcome().moved()).isEmpty();
    }

    /** Window and command line ask the same service: the same figures to the last bit. */
    @Test
    void theAnswerIsThatOfTheCommandLine() throws Exception {
        model.type("br1 leg1 short");
        worked();
        Sentence sentence = model.state().sentence();
        Question question = new Question(
                FIRST_LIGHT,
                sentence.supposition(),
                sentence.arrangement(),
                sentence.setting().meter(),
                Check.all(FIRST_LIGHT, true),
                Question.Options.USUAL);
        Answer answer = new Explorer(1).answer(question, Progress.SILENT, () -> false);
        Outcome theirs = ((Answer.Answered) answer).outcome();

        assertThat(byCheck(outcome())).isEqualTo(byCheck(theirs));
        assertThat(outcome().aftermath()).isEqualTo(theirs.aftermath());
        assertThat(outcome().doubts()).isEqualTo(theirs.doubts());
    }

    private static Map<Check, Compared> byCheck(Outcome outcome) {
        return outcome.readings().stream().collect(Collectors.toMap(Compared::check, Function.identity()));
    }

    @Test
    void anOldAnswerNeverLooksFresh() throws Exception {
        worked();
        List<String> wrong = new ArrayList<>();
        model.shownProperty()
                .addListener((property, before, now) -> now.ifPresent(s -> {
                    if (!s.sentence().equals(model.state().sentence())) {
                        wrong.add(model.sentences().text(s.sentence()));
                    }
                }));
        for (String line : List.of(
                "r2 open", "put back", "f1 blown", "r1 drifted x2", "c1 high esr 2 ohm", "put back", "e1 open")) {
            model.type(line);
            boolean answered = model.shownProperty()
                    .get()
                    .map(s -> s.sentence().equals(model.state().sentence()))
                    .orElse(false);
            assertThat(model.freshness() == Freshness.FRESH).as(line).isEqualTo(answered);
            until(() -> true);
        }
        worked();

        assertThat(wrong).isEmpty();
        assertThat(model.shownProperty().get().orElseThrow().sentence())
                .isEqualTo(model.state().sentence());
        assertThat(outcome().question().supposition().faults())
                .extracting(Fault::target)
                .containsExactly("E1");
    }

    @Test
    void stoppedWorkLeavesTheLastAnswerMarkedOutOfDate() throws Exception {
        worked();
        Outcome before = outcome();
        model.type("br1 leg1 short");
        long begun = System.nanoTime();
        model.stop();

        assertThat(model.workingProperty().get().busy()).isFalse();
        assertThat(TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun)).isLessThan(200);
        assertThat(model.freshness()).isEqualTo(Freshness.OUT_OF_DATE);
        assertThat(outcome()).isSameAs(before);
        model.askAgain();
        worked();
        assertThat(model.freshness()).isEqualTo(Freshness.FRESH);
    }

    @Test
    void goingBackShowsWhatWasThereWithoutAnotherBaseline() throws Exception {
        worked();
        model.type("r2 open");
        worked();
        model.undo();
        worked();

        assertThat(model.state().sentence().supposition().isNothing()).isTrue();
        assertThat(outcome().moved()).isEmpty();
        model.redo();
        worked();
        assertThat(outcome().moved()).isNotEmpty();
    }

    /** A glance leaves out the meter's load alone, of 10 Mohm, which is nothing but at TP5, where blocked junctions leak. */
    @Test
    void readingsFollowTheHandAndThenHold() throws Exception {
        model.type("r2 drifted x1.2");
        worked();
        Piece piece = model.sentences().pieces(model.state().sentence()).stream()
                .filter(p -> p.kind() == Piece.Kind.FAULT)
                .findFirst()
                .orElseThrow();
        Sentence moved = model.sentences().withAmount(model.state().sentence(), piece, new Quantity(1.5, Unit.RATIO));
        model.drag(moved);
        until(() -> model.glancedProperty().get().isPresent());
        List<Compared> glanced = model.glancedProperty().get().orElseThrow().readings();
        assertThat(model.historyProperty().get().present().sentence()).isNotEqualTo(moved);
        model.drop(moved);
        worked();

        assertThat(model.glancedProperty().get()).isEmpty();
        assertThat(glanced).hasSameSizeAs(model.tags());
        assertThat(glanced).filteredOn(g -> !g.check().from().equals("TP5")).allSatisfy(g -> {
            Compared whole = Objects.requireNonNull(byCheck(outcome()).get(g.check()));
            assertThat(Math.abs(g.asSupposed().value() - whole.asSupposed().value()))
                    .isLessThanOrEqualTo(whole.asSupposed().halfWidth());
        });
    }

    /** What is done at the bench has amounts as failures have; readings wait until the hand lets go. */
    @Test
    void theLampInSeriesIsDragged() throws Exception {
        model.type("lamp 60 W");
        worked();
        LineModel line = new LineModel(model);
        Piece lamp = line.pieces().stream()
                .filter(p -> p.kind() == Piece.Kind.LAMP)
                .findFirst()
                .orElseThrow();
        int before = model.historyProperty().get().states().size();
        double position = line.position(lamp);
        assertThat(line.scale(lamp).orElseThrow().at(position).si()).isEqualTo(60);
        line.drag(lamp, position + 0.1);
        line.drag(lamp, position + 0.2);

        assertThat(model.moving()).isTrue();
        assertThat(model.follows()).isFalse();
        assertThat(TagRow.of(model)).allMatch(t -> t.state() == TagFigures.State.WORKING);
        line.drop(lamp, position + 0.2);
        worked();
        assertThat(model.state().sentence().arrangement().seriesLampWatts()).isGreaterThan(60);
        assertThat(model.historyProperty().get().states()).hasSize(before + 1);
        assertThat(TagRow.of(model)).noneMatch(t -> t.state() == TagFigures.State.WORKING);
    }

    @Test
    void ohmsTurnThePowerOffAndTheOtherPowerStillWarns() throws Exception {
        model.type("br1 leg1 short");
        model.type("f1 holds 25 A");
        model.type("ohms");
        worked();
        until(() -> model.otherPowerProperty().get().isPresent());

        assertThat(model.state().sentence().arrangement().powerOn()).isFalse();
        assertThat(model.otherPowerProperty().get().orElseThrow().outcome().doNotPowerUp())
                .isTrue();
    }

    @Test
    void theDangerStandsAtOnceWhenThePlugComesOut() throws Exception {
        model.type("br1 leg1 short");
        model.type("f1 holds 25 A");
        worked();
        Shown powered = model.shownProperty().get().orElseThrow();

        model.type("ohms");

        assertThat(model.otherPowerProperty().get()).containsSame(powered);
        worked();
        assertThat(model.shownProperty()
                        .get()
                        .orElseThrow()
                        .sentence()
                        .arrangement()
                        .powerOn())
                .isFalse();
        assertThat(model.otherPowerProperty().get()).containsSame(powered);
    }

    @Test
    void whatTheSameMachineShowsOnAnotherBenchNeverPassesForTheOtherPower() throws Exception {
        model.type("ohms");
        worked();
        until(() -> model.otherPowerProperty().get().isPresent());

        model.type("pull f1");

        assertThat(model.otherPowerProperty().get()).isEmpty();
        until(() -> model.otherPowerProperty().get().isPresent());
        Arrangement other = model.otherPowerProperty()
                .get()
                .orElseThrow()
                .outcome()
                .question()
                .arrangement();
        assertThat(other.powerOn()).isTrue();
        assertThat(other.pulledFuses()).containsExactly("F1");
    }

    @Test
    void aLineThatIsNotUnderstoodChangesNothing() {
        Sentence before = model.state().sentence();
        boolean refused = false;
        try {
            model.type("x99 melted");
        } catch (SentenceException e) {
            refused = true;
        }

        assertThat(refused).isTrue();
        assertThat(model.state().sentence()).isEqualTo(before);
    }

    @Test
    void theBoardAfterAnEventIsAskedAboutAndLeftAgain() throws Exception {
        model.type("br1 leg1 short");
        worked();
        Sentence now = model.state().sentence();
        Sentence after = model.sentences().apply(now, "f1 blown");
        model.lookForward(Optional.of(new DeskModel.Forward(after.supposition(), "F1 melted")));
        worked();
        assertThat(outcome().question().supposition()).isEqualTo(after.supposition());
        assertThat(model.state().sentence()).isEqualTo(now);
        model.lookForward(Optional.empty());
        worked();

        assertThat(outcome().question().supposition()).isEqualTo(now.supposition());
    }

    /** A link of 25 A feeds a leaking capacitor: nothing is far past its rating, yet the winding fails within the hour. */
    private static final String OVERHEATS_SLOWLY = "f1 holds 25 A and c1 leaky 5 ohm";

    @Test
    void paperWaitsForWhatFollows() throws Exception {
        worked();
        model.type(OVERHEATS_SLOWLY);
        until(() -> model.shownProperty()
                .get()
                .filter(s -> s.answers(model.board(), model.asked()))
                .isPresent());

        assertThat(model.shownProperty().get().orElseThrow().whole()).isFalse();
        assertThat(outcome().doNotPowerUp()).isFalse();
        assertThat(OnPaper.of(model)).isEmpty();
        worked();
        assertThat(OnPaper.of(model))
                .get()
                .extracting(OnPaper::danger)
                .asString()
                .isNotEmpty();
    }

    @Test
    void paperNeverHasAFirstLookThatWasStoppedAt() throws Exception {
        worked();
        model.type(OVERHEATS_SLOWLY);
        until(() -> model.shownProperty().get().filter(s -> !s.whole()).isPresent());
        model.stop();

        assertThat(OnPaper.of(model)).isEmpty();
        assertThat(Consequence.of(model).sentences()).contains("What follows was not worked out. A asks again.");
        model.askAgain();
        worked();
        assertThat(OnPaper.of(model)).isPresent();
    }

    /** A step that only warns leaves the machine as it is; what is known of it must not be forgotten. */
    @Test
    void theDangerStandsWhileOneStepsThroughWhatFollows() throws Exception {
        model.type(OVERHEATS_SLOWLY);
        worked();
        List<Boolean> danger = new ArrayList<>();
        model.shownProperty()
                .addListener((property, before, now) ->
                        danger.add(now.orElseThrow().outcome().doNotPowerUp()));
        model.lookForward(
                Optional.of(new DeskModel.Forward(model.state().sentence().supposition(), "T1: warm")));
        worked();

        assertThat(danger).doesNotContain(false);
        assertThat(outcome().doNotPowerUp()).isTrue();
        assertThat(Consequence.of(model).danger()).isTrue();
    }

    @Test
    void whatFollowsIsPlayedForAMachineToWhichSomethingHasHappened() throws Exception {
        model.type("br1 leg1 short");
        worked();
        Sentence after = model.sentences().apply(model.state().sentence(), OVERHEATS_SLOWLY);
        model.lookForward(Optional.of(new DeskModel.Forward(after.supposition(), "something")));
        worked();

        assertThat(outcome().aftermath()).isNotNull();
        assertThat(outcome().doNotPowerUp()).isTrue();
    }

    @Test
    void whatIsUndoneWhileItIsWorkedOutIsNeverShown() throws Exception {
        model.type("r2 open");
        worked();
        Shown before = model.shownProperty().get().orElseThrow();

        model.type("br1 leg1 short");
        model.undo();
        worked();

        assertThat(model.shownProperty().get()).containsSame(before);
        assertThat(model.freshness()).isEqualTo(Freshness.FRESH);
        until(() -> model.otherPowerProperty()
                .get()
                .filter(o -> o.sentence().equals(model.asked()))
                .isPresent());
    }

    @Test
    void bothHalvesOnPaperAnswerOneQuestion() throws Exception {
        model.type("r2 open");
        worked();
        until(() -> model.otherPowerProperty().get().isPresent());
        assertThat(OnPaper.of(model).orElseThrow().off()).isPresent();
        List<String> mixed = new ArrayList<>();
        model.shownProperty().addListener(changed -> OnPaper.of(model).ifPresent(p -> mixed(p, mixed)));
        model.otherPowerProperty().addListener(changed -> OnPaper.of(model).ifPresent(p -> mixed(p, mixed)));

        model.type("ohms");
        OnPaper turned = OnPaper.of(model).orElseThrow();
        assertThat(turned.old()).isTrue();
        assertThat(turned.off()).isEmpty();
        model.type("lamp 60 W");
        model.type("dc volts");
        model.type("r2 drifted x2");
        model.type("pull f1");
        worked();
        until(() -> OnPaper.of(model)
                .filter(p -> p.on().isPresent() && p.off().isPresent())
                .isPresent());

        assertThat(mixed).isEmpty();
    }

    private static void mixed(OnPaper paper, List<String> mixed) {
        if (paper.on().isPresent() && paper.off().isPresent()) {
            Question on = paper.on().get().question();
            Question off = paper.off().get().question();
            if (!on.supposition().equals(off.supposition())
                    || !on.arrangement().pulledFuses().equals(off.arrangement().pulledFuses())) {
                mixed.add(on + " and " + off);
            }
        }
    }

    @Test
    void aBoardDrawnAnewKeepsTheSentence() throws Exception {
        model.type("r2 open");
        worked();
        model.redrawn(Answers.circuit("first-light"));
        worked();

        assertThat(model.sentences().text(model.state().sentence())).contains("R2 is open");
        assertThat(model.shownProperty().get().orElseThrow().board()).isSameAs(model.board());
    }
}
