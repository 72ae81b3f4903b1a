package fusetale.explore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Reading;
import fusetale.bench.Seen;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.fault.Catalogue;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.mna.NotSolved;
import fusetale.mna.PeriodicSettings;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a batch promises, whatever its circuit: on the teaching board, and once on the table game. */
class BatchSolverTest {
    private static final Circuit FIRST_LIGHT = read("first-light");
    private static final Supposition OPEN_DROPPER = supposing("R2", "", FailureMode.OPEN);
    private static final Supposition SHORTED_LEG = supposing("BR1", "leg1", FailureMode.SHORT);
    private static final Supposition NO_SUCH_PART = supposing("R77", "", FailureMode.OPEN);

    @ParameterizedTest
    @ValueSource(ints = {2, 3})
    void anyNumberOfThreadsGivesTheSameBits(int threads) {
        Batch batch = everything(FIRST_LIGHT);
        List<Supposition> all = singles(FIRST_LIGHT, 2);

        assertThat(bits(threads, batch, all)).isEqualTo(bits(1, batch, all));
    }

    @Test
    void aLargeMachineToo() {
        Circuit ferry = read("night-ferry");
        Batch batch = Batch.of(ferry, Arrangement.powered(ferry));
        List<Supposition> some = singles(ferry, 160);

        assertThat(bits(2, batch, some)).isEqualTo(bits(1, batch, some));
    }

    /**
     * With a driver on for good eight stages conduct that sleep in the healthy machine: what that one's steps ask for there, up
     * to six hundred iterations a stage, is not to be done. 27,663 iterations before, 8,299 when written.
     */
    @Test
    void aDriverThatIsOnForGoodDoesNotFollowTheHealthyMachinesStepsToTheirEnd() {
        Circuit ferry = read("night-ferry");
        Batch batch = Batch.of(ferry, Arrangement.powered(ferry));

        List<BatchAnswer<Seen>> answers = solve(1, batch, List.of(supposing("U201", "", FailureMode.STUCK_ON)));

        assertThat(found(answers.get(0)).effort().solves()).isLessThan(14_000);
    }

    @Test
    void answersStandInTheOrderOfTheSuppositions() {
        List<Supposition> all = singles(FIRST_LIGHT, 3);

        List<BatchAnswer<Seen>> answers = solve(3, states(), all);

        assertThat(answers).extracting(BatchAnswer::supposition).isEqualTo(all);
    }

    @Test
    void whatElseIsInTheBatchAndInWhichOrderChangesNoBit() {
        Batch batch = everything(FIRST_LIGHT);
        List<Supposition> all = new ArrayList<>(singles(FIRST_LIGHT, 6));
        all.add(OPEN_DROPPER);
        List<Supposition> backwards = new ArrayList<>(all);
        Collections.reverse(backwards);
        List<List<Long>> turned = new ArrayList<>(bits(1, batch, backwards));
        Collections.reverse(turned);

        List<List<Long>> forwards = bits(1, batch, all);

        assertThat(turned).isEqualTo(forwards);
        assertThat(bits(1, batch, List.of(OPEN_DROPPER))).containsExactly(forwards.get(all.indexOf(OPEN_DROPPER)));
    }

    /** In the steps in which machines are compared: within the 0.3 % that {@link PeriodicSettings#mains} states, or a digit. */
    @Test
    void itReadsWhatAnExplorerReads() {
        Batch batch = everything(FIRST_LIGHT);
        List<Supposition> all = singles(FIRST_LIGHT, 6);
        Question common = new Question(
                FIRST_LIGHT,
                Supposition.NOTHING,
                batch.arrangement(),
                batch.meter(),
                batch.checks(),
                new Question.Options(2, 1, 0));
        List<Answer> answers = new Explorer(1).answerAll(common, all, Progress.SILENT, () -> false);

        List<BatchAnswer<Readings>> batched = new BatchSolver(1).readings(batch, all, Progress.SILENT, () -> false);

        for (int k = 0; k < all.size(); k++) {
            Outcome outcome = ((Answer.Answered) answers.get(k)).outcome();
            Map<Check, Reading> read =
                    found(batched.get(k)).kept().readings().stream().collect(Collectors.toMap(Reading::check, r -> r));
            assertThat(read).hasSameSizeAs(outcome.readings());
            for (Compared compared : outcome.readings()) {
                Reading shown = compared.asSupposed();
                Reading one = Objects.requireNonNull(read.get(shown.check()));
                assertThat(one.overRange()).isEqualTo(shown.overRange());
                assertThat(one.value())
                        .as("%s", shown)
                        .isCloseTo(shown.value(), within(0.003 * Math.abs(shown.value()) + 1e-4));
            }
        }
    }

    @Test
    void fusesMeltOrHoldAsAsked() {
        Batch melting = everything(FIRST_LIGHT);
        Batch holding = states();

        assertThat(found(solve(1, melting, List.of(SHORTED_LEG)).get(0)).melted())
                .containsExactly("F1");
        assertThat(found(solve(1, holding, List.of(SHORTED_LEG)).get(0)).melted())
                .isEmpty();
        assertThat(found(solve(1, holding, List.of(SHORTED_LEG)).get(0))
                        .kept()
                        .amps("F1")
                        .rms())
                .isGreaterThan(2 * 2.0);
    }

    @Test
    void progressCountsEachAnswerOnce() {
        List<Supposition> all = singles(FIRST_LIGHT, 3);
        List<Integer> told = new ArrayList<>();

        new BatchSolver(3).solve(states(), all, seen -> seen, (done, of) -> told.add(done), () -> false);

        assertThat(told).isEqualTo(IntStream.rangeClosed(1, all.size()).boxed().toList());
    }

    @Test
    void whatWasAnsweredBeforeTheStopStaysAndTheRestIsToldAsStopped() {
        AtomicInteger answered = new AtomicInteger();

        List<BatchAnswer<Seen>> answers = new BatchSolver(1)
                .solve(
                        states(),
                        singles(FIRST_LIGHT, 3),
                        seen -> seen,
                        (done, of) -> answered.set(done),
                        () -> answered.get() == 3);

        assertThat(answers.subList(0, 3)).allSatisfy(a -> assertThat(a).isInstanceOf(BatchAnswer.Found.class));
        assertThat(answers.subList(3, answers.size())).allSatisfy(BatchSolverTest::wasStopped);
    }

    @Test
    void aStopReachesIntoASolve() {
        List<Supposition> one = List.of(SHORTED_LEG);
        AtomicInteger asked = new AtomicInteger();
        new BatchSolver(1).solve(states(), one, seen -> seen, Progress.SILENT, () -> asked.incrementAndGet() < 0);
        int last = asked.getAndSet(0);

        List<BatchAnswer<Seen>> answers = new BatchSolver(1)
                .solve(states(), one, seen -> seen, Progress.SILENT, () -> asked.incrementAndGet() == last);

        assertThat(answers).singleElement().satisfies(BatchSolverTest::wasStopped);
    }

    @Test
    void interruptingTheCallerStopsTheBatch() {
        Thread.currentThread().interrupt();

        List<BatchAnswer<Seen>> answers = solve(1, states(), singles(FIRST_LIGHT, 3));

        assertThat(Thread.interrupted()).isTrue();
        wasStopped(answers.get(answers.size() - 1));
    }

    @Test
    void aMistakeInTheProgramIsToldWhereItHappenedAndTakesNothingAlong() {
        List<Supposition> three = List.of(OPEN_DROPPER, SHORTED_LEG, Supposition.NOTHING);

        List<BatchAnswer<Seen>> answers = new BatchSolver(2)
                .solve(
                        states(),
                        three,
                        seen -> {
                            if (seen.amps("F1").rms() > 2 * 2.0) {
                                throw new IllegalStateException("on purpose");
                            }
                            return seen;
                        },
                        Progress.SILENT,
                        () -> false);

        assertThat(answers.get(1))
                .isInstanceOfSatisfying(
                        BatchAnswer.Mistaken.class, m -> assertThat(m.thrown()).hasMessage("on purpose"));
        found(answers.get(0));
        found(answers.get(2));
    }

    @Test
    void whatDoesNotFitTheMachineIsToldAndTakesNothingAlong() {
        List<BatchAnswer<Seen>> answers = solve(1, states(), List.of(NO_SUCH_PART, OPEN_DROPPER));

        assertThat(answers.get(0))
                .isInstanceOfSatisfying(
                        BatchAnswer.Unfit.class, u -> assertThat(u.text()).contains("no part 'R77'"));
        found(answers.get(1));
    }

    @Test
    void anArrangementThatDoesNotFitIsToldForEach() {
        Batch batch = states().with(Arrangement.powered(FIRST_LIGHT).withPulledFuse("F77"));

        List<BatchAnswer<Seen>> answers = solve(1, batch, List.of(OPEN_DROPPER, SHORTED_LEG));

        assertThat(answers)
                .hasSize(2)
                .allSatisfy(a -> assertThat(a)
                        .isInstanceOfSatisfying(
                                BatchAnswer.Unfit.class,
                                u -> assertThat(u.text()).contains("F77")));
    }

    @Test
    void withThePowerOffItReadsOhms() {
        Arrangement off = Arrangement.unpowered();
        Batch batch = new Batch(FIRST_LIGHT, off, Meter.trueRms4000(), Check.all(FIRST_LIGHT, false), Batch.Fuses.HOLD);
        List<Supposition> all = singles(FIRST_LIGHT, 3);

        assertThat(bits(2, batch, all))
                .isEqualTo(bits(1, batch, all))
                .allSatisfy(row -> assertThat(row).hasSameSizeAs(batch.checks()));
    }

    @Test
    void noThreadsAreRefused() {
        assertThatThrownBy(() -> new BatchSolver(0)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Batch states() {
        return Batch.of(FIRST_LIGHT, Arrangement.powered(FIRST_LIGHT));
    }

    private static Batch everything(Circuit circuit) {
        return new Batch(
                circuit, Arrangement.powered(circuit), Meter.trueRms4000(), Check.all(circuit, true), Batch.Fuses.MELT);
    }

    private static List<BatchAnswer<Seen>> solve(int threads, Batch batch, List<Supposition> suppositions) {
        return new BatchSolver(threads).solve(batch, suppositions, seen -> seen, Progress.SILENT, () -> false);
    }

    /** Every reading, and the mean voltage of every test point, bit for bit; empty where there is no answer. */
    private static List<List<Long>> bits(int threads, Batch batch, List<Supposition> suppositions) {
        List<BatchAnswer<List<Long>>> answers = new BatchSolver(threads)
                .solve(
                        batch,
                        suppositions,
                        seen -> {
                            List<Long> bits = new ArrayList<>();
                            seen.readings().forEach(r -> bits.add(Double.doubleToLongBits(r.value())));
                            if (bits.isEmpty()) {
                                seen.circuit()
                                        .points()
                                        .forEach(p -> bits.add(Double.doubleToLongBits(
                                                seen.volts(p.at(), p.against()).mean())));
                            }
                            return bits;
                        },
                        Progress.SILENT,
                        () -> false);
        return answers.stream()
                .map(a -> a instanceof BatchAnswer.Found<List<Long>> f ? f.kept() : List.<Long>of())
                .toList();
    }

    private static <T> BatchAnswer.Found<T> found(BatchAnswer<T> answer) {
        assertThat(answer).isInstanceOf(BatchAnswer.Found.class);
        return (BatchAnswer.Found<T>) answer;
    }

    private static void wasStopped(BatchAnswer<?> answer) {
        assertThat(answer)
                .isInstanceOfSatisfying(
                        BatchAnswer.NotFound.class,
                        n -> assertThat(n.reason().kind()).isEqualTo(NotSolved.Kind.STOPPED));
    }

    private static List<Supposition> singles(Circuit circuit, int every) {
        List<Supposition> all = Catalogue.possible(circuit).stream()
                .map(form -> new Supposition(List.of(form.usual())))
                .toList();
        return IntStream.range(0, all.size())
                .filter(k -> k % every == 0)
                .mapToObj(all::get)
                .toList();
    }

    private static Supposition supposing(String part, String place, FailureMode mode) {
        return new Supposition(List.of(new Fault(part, place, mode, null)));
    }

    private static Circuit read(String machine) {
        return Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits", machine + ".yaml"))
                .circuit());
    }
}
