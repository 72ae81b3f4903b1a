package fusetale.explore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.aftermath.Aftermath;
import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.MeterFunction;
import fusetale.fault.Catalogue;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** On the teaching board, whose faults one can foretell by hand. */
class ExplorerTest {
    private static final Circuit FIRST_LIGHT = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/first-light.yaml"))
            .circuit());
    private static final Explorer EXPLORER = new Explorer(1);

    @Test
    void openDropperLeavesTheRailOnOneSideOnly() {
        Outcome outcome = suppose(fault("R2", FailureMode.OPEN));

        assertThat(reading(outcome, "TP1", MeterFunction.DC_VOLTS).asSupposed().value())
                .isGreaterThan(15);
        assertThat(reading(outcome, "TP2", MeterFunction.DC_VOLTS).asSupposed().value())
                .isCloseTo(0, within(0.1));
    }

    @Test
    void blownFuseIsToldAsBlownAndTakesItsRailAlong() {
        Outcome outcome = suppose(fault("F1", FailureMode.BLOWN));

        assertThat(fuse(outcome, "F1").state()).isEqualTo(FuseFate.State.BLOWN);
        assertThat(reading(outcome, "TP1", MeterFunction.DC_VOLTS).asSupposed().value())
                .isCloseTo(0, within(0.1));
    }

    /** UL/CSA 248-14: at 200 % of its rating and more a link up to 30 A has melted within two minutes. */
    @Test
    void shortedLegMeltsTheMarkedFuseWithinItsStandard() {
        FuseFate fate = fuse(suppose(fault("BR1", "leg1", FailureMode.SHORT)), "F1");

        assertThat(fate.state()).isEqualTo(FuseFate.State.MELTS);
        assertThat(fate.amps()).isGreaterThan(2 * 2.0);
        assertThat(Objects.requireNonNull(fate.seconds()).most()).isLessThanOrEqualTo(120);
    }

    @Test
    void readingsAreThoseAfterTheFuseHasMelted() {
        Outcome outcome = suppose(fault("BR1", "leg1", FailureMode.SHORT));

        assertThat(reading(outcome, "TP1", MeterFunction.DC_VOLTS).asSupposed().value())
                .isCloseTo(0, within(0.1));
        assertThat(outcome.doubts()).anyMatch(d -> d.text().startsWith("F1 (2 A) carries"));
    }

    @Test
    void behindAFuseTooLargeItSaysDoNotPowerUpAndWhy() {
        Outcome outcome = suppose(
                fault("BR1", "leg1", FailureMode.SHORT),
                new Fault("F1", "", FailureMode.WRONG_RATING, new Quantity(25, Unit.AMPERE)));

        assertThat(fuse(outcome, "F1").state()).isNotEqualTo(FuseFate.State.MELTS);
        assertThat(outcome.doNotPowerUp()).isTrue();
        assertThat(outcome.doubts().get(0).text())
                .contains("F1 holds a 25 A link where 2 A is marked")
                .contains("BR1 leg 2: too hot, shorted from now on, in")
                .contains("T1 winding sec, primary: insulation burnt through, turns short, in");
    }

    @Test
    void fuseOfAHigherRatingThanMarkedIsSpokenOfEvenWhereItMelts() {
        Outcome outcome = suppose(new Fault("F1", "", FailureMode.WRONG_RATING, new Quantity(3, Unit.AMPERE)));

        assertThat(outcome.doubts()).anyMatch(d -> d.text().contains("never fit a fuse of a higher rating"));
    }

    @Test
    void healthyMachineMaySafelyBePoweredUp() {
        Outcome outcome = outcome(EXPLORER.answer(question(Supposition.NOTHING), Progress.SILENT, () -> false));

        assertThat(outcome.doNotPowerUp()).isFalse();
        assertThat(outcome.moved()).isEmpty();
    }

    @Test
    void readingsComeWithTheFurthestMovedFirst() {
        List<Double> moved = suppose(fault("C1", FailureMode.OPEN)).readings().stream()
                .map(Compared::movedInTwoFigures)
                .toList();

        assertThat(moved).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    /** The mean of a rectified sine is 2/π of its peak: without its reservoir the rail is near that, far below it with. */
    @Test
    void openReservoirLeavesTheMeanOfARectifiedSine() {
        Outcome outcome = suppose(fault("C1", FailureMode.OPEN));
        double secondary =
                reading(outcome, "TP3", MeterFunction.AC_VOLTS).asSupposed().value();
        double rail =
                reading(outcome, "TP1", MeterFunction.DC_VOLTS).asSupposed().value();

        double ideal = 2 / Math.PI * Math.sqrt(2) * secondary;
        assertThat(rail).isBetween(ideal - 2 * 0.9, ideal);
    }

    @Test
    void batchAnswersAsSingleQuestionsDoOnAnyNumberOfThreads() {
        List<Supposition> suppositions = List.of(
                new Supposition(List.of(fault("C1", FailureMode.OPEN))),
                new Supposition(List.of(fault("BR1", "leg2", FailureMode.OPEN))),
                new Supposition(List.of(fault("E1", FailureMode.OPEN))),
                new Supposition(List.of(fault("BR1", "leg1", FailureMode.SHORT))));
        Question common = question(Supposition.NOTHING);

        List<Answer> one = new Explorer(1).answerAll(common, suppositions, Progress.SILENT, () -> false);
        List<Answer> three = new Explorer(3).answerAll(common, suppositions, Progress.SILENT, () -> false);

        assertThat(three.stream().map(a -> outcome(a).readings()).toList())
                .isEqualTo(one.stream().map(a -> outcome(a).readings()).toList());
        assertThat(outcome(one.get(1)).readings())
                .isEqualTo(outcome(EXPLORER.answer(common.supposing(suppositions.get(1)), Progress.SILENT, () -> false))
                        .readings());
    }

    @Test
    void batchTellsItsProgress() {
        List<Integer> done = new ArrayList<>();
        List<Supposition> suppositions =
                List.of(new Supposition(List.of(fault("C1", FailureMode.OPEN))), Supposition.NOTHING);

        new Explorer(1).answerAll(question(Supposition.NOTHING), suppositions, (d, of) -> done.add(d), () -> false);

        assertThat(done).containsExactly(1, 2);
    }

    @Test
    void everySingleFaultOfTheBoardIsAnswered() {
        List<Supposition> all = Catalogue.possible(FIRST_LIGHT).stream()
                .map(form -> new Supposition(List.of(new Fault(form.part(), form.place(), form.mode(), null))))
                .toList();
        Question common = new Question(
                FIRST_LIGHT,
                Supposition.NOTHING,
                Arrangement.powered(FIRST_LIGHT),
                Meter.trueRms4000(),
                List.of(new Check("TP1", "gnd", MeterFunction.DC_VOLTS)),
                new Question.Options(2, 1, 3));

        List<Answer> answers = new Explorer(2).answerAll(common, all, Progress.SILENT, () -> false);

        assertThat(answers).hasSizeGreaterThan(40).allMatch(Answer.Answered.class::isInstance);
    }

    @Test
    void batchThatIsStoppedKeepsWhatItHasAndTellsTheRest() {
        Supposition open = new Supposition(List.of(fault("C1", FailureMode.OPEN)));
        AtomicInteger done = new AtomicInteger();

        List<Answer> answers = new Explorer(1)
                .answerAll(
                        question(Supposition.NOTHING),
                        List.of(open, open, open),
                        (d, of) -> done.set(d),
                        () -> done.get() >= 1);

        assertThat(answers.get(0)).isInstanceOf(Answer.Answered.class);
        assertThat(answers.get(2))
                .isInstanceOfSatisfying(
                        Answer.Unanswered.class, none -> assertThat(none.why()).isEqualTo(Answer.Why.STOPPED));
    }

    @Test
    void stoppedWorkSaysSo() {
        Answer answer = EXPLORER.answer(question(Supposition.NOTHING), Progress.SILENT, () -> true);

        assertThat(answer)
                .isInstanceOfSatisfying(
                        Answer.Unanswered.class, none -> assertThat(none.why()).isEqualTo(Answer.Why.STOPPED));
    }

    @Test
    void suppositionThatDoesNotFitIsUnusable() {
        Answer answer = EXPLORER.answer(
                question(new Supposition(List.of(fault("R9", FailureMode.OPEN)))), Progress.SILENT, () -> false);

        assertThat(answer).isInstanceOfSatisfying(Answer.Unanswered.class, none -> {
            assertThat(none.why()).isEqualTo(Answer.Why.UNUSABLE);
            assertThat(none.text()).contains("R9");
        });
    }

    @Test
    void ohmsWithThePowerOnAreRefusedWithTheReason() {
        Question question = new Question(
                FIRST_LIGHT,
                Supposition.NOTHING,
                Arrangement.powered(FIRST_LIGHT),
                Meter.trueRms4000(),
                List.of(new Check("TP1", "gnd", MeterFunction.OHMS)),
                Question.Options.USUAL);

        assertThat(EXPLORER.answer(question, Progress.SILENT, () -> false))
                .isInstanceOfSatisfying(
                        Answer.Unanswered.class, none -> assertThat(none.text()).contains("not with the power on"));
    }

    /** Pins of a bridge that fell into four diodes can still be measured at. */
    @Test
    void liftedPinOfAShortedBridgeCanBeMeasuredAt() {
        Check check = new Check("BR1.ac1", "BR1.plus", MeterFunction.DIODE_TEST);
        Question question = new Question(
                FIRST_LIGHT,
                new Supposition(List.of(fault("BR1", "leg1", FailureMode.SHORT))),
                Arrangement.unpowered().withLiftedPin("BR1.ac1"),
                Meter.trueRms4000(),
                List.of(check),
                Question.Options.USUAL);

        Compared row = outcome(EXPLORER.answer(question, Progress.SILENT, () -> false))
                .readings()
                .get(0);

        assertThat(row.check()).isEqualTo(check);
        assertThat(row.asSupposed().value()).isLessThan(0.03);
    }

    private static Outcome suppose(Fault... faults) {
        return outcome(EXPLORER.answer(question(new Supposition(List.of(faults))), Progress.SILENT, () -> false));
    }

    private static Question question(Supposition supposition) {
        return new Question(
                FIRST_LIGHT,
                supposition,
                Arrangement.powered(FIRST_LIGHT),
                Meter.trueRms4000(),
                Check.all(FIRST_LIGHT, true),
                new Question.Options(8, 1, 3, Aftermath.Settings.USUAL));
    }

    private static Outcome outcome(Answer answer) {
        assertThat(answer).isInstanceOf(Answer.Answered.class);
        return ((Answer.Answered) answer).outcome();
    }

    private static Compared reading(Outcome outcome, String point, MeterFunction function) {
        return outcome.readings().stream()
                .filter(r -> r.check().from().equals(point) && r.check().function() == function)
                .findFirst()
                .orElseThrow();
    }

    private static FuseFate fuse(Outcome outcome, String name) {
        return outcome.fuses().stream()
                .filter(f -> f.part().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Fault fault(String part, FailureMode mode) {
        return fault(part, "", mode);
    }

    private static Fault fault(String part, String place, FailureMode mode) {
        return new Fault(part, place, mode, null);
    }
}
