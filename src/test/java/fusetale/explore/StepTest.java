package fusetale.explore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import fusetale.aftermath.Event;
import fusetale.aftermath.Harm;
import fusetale.aftermath.Story;
import fusetale.bench.Arrangement;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.fault.Catalogue;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Fitting;
import fusetale.fault.Supposition;
import fusetale.fault.Swap;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is supposed after each step of a story, by the rules of {@link Catalogue} for what can hold together. */
class StepTest {
    private static final Circuit FERRY = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/night-ferry.yaml"))
            .circuit());

    private static final Fault LEG = new Fault("BR201", "leg1", FailureMode.SHORT, null);
    private static final Fault LINK = new Fault("F201", "", FailureMode.WRONG_RATING, new Quantity(25, Unit.AMPERE));
    private static final Fault BURNT = new Fault("J1", "3", FailureMode.BURNT, null);
    private static final Fault OPEN = new Fault("J1", "3", FailureMode.OPEN, null);
    private static final Fault BESIDE = new Fault("J1", "4", FailureMode.BURNT, null);
    private static final Fault BLOWN = new Fault("F201", "", FailureMode.BLOWN, null);

    private static Question supposing(Fault... faults) {
        return new Question(
                FERRY,
                new Supposition(List.of(faults)),
                Arrangement.powered(FERRY),
                Meter.trueRms4000(),
                List.of(),
                Question.Options.USUAL);
    }

    private static Event event(Fault fault, Harm harm, @Nullable Fault consequence, double seconds) {
        return new Event(
                fault.part(),
                fault.place(),
                harm,
                consequence,
                seconds,
                2 * seconds,
                3 * seconds,
                10,
                2 * seconds,
                "made for this test");
    }

    private static Event burns(Fault what, double seconds) {
        return event(what, Harm.CONTACT_BURNS, what, seconds);
    }

    private static List<Step> steps(Question question, Event... events) {
        return Step.of(question, new Story(List.of(events), 10, Story.End.RESTS));
    }

    @Test
    void consequencesAreAddedToWhatWasSupposed() {
        List<Step> steps = steps(
                supposing(LEG, LINK),
                burns(BURNT, 10),
                event(LEG, Harm.FAILS_SHORT, new Fault("BR201", "leg2", FailureMode.SHORT, null), 100));

        assertThat(steps.get(0).after().faults()).containsExactly(LEG, LINK, BURNT);
        assertThat(steps.get(1).after().faults())
                .containsExactly(LEG, LINK, BURNT, new Fault("BR201", "leg2", FailureMode.SHORT, null));
    }

    @Test
    void aConsequenceTakesThePlaceOfWhatItContradictsThere() {
        List<Step> steps = steps(supposing(LEG), burns(BURNT, 10), event(OPEN, Harm.BURNS_OPEN, OPEN, 100));

        assertThat(steps.get(1).after().faults()).containsExactly(LEG, OPEN);
    }

    @Test
    void aWrongLinkThatMeltsIsABlownFuse() {
        List<Step> steps = steps(supposing(LINK), event(BLOWN, Harm.FUSE_MELTS, BLOWN, 10));

        Supposition after = steps.get(0).after();
        assertThat(after.faults()).contains(BLOWN);
        assertThatCode(() -> Catalogue.check(FERRY, after)).doesNotThrowAnyException();
    }

    @Test
    void whatWasSupposedAlreadyIsNotSupposedTwice() {
        List<Step> steps = steps(supposing(LEG), event(LEG, Harm.FAILS_SHORT, LEG, 10));

        assertThat(steps.get(0).after().faults()).containsExactly(LEG);
    }

    @Test
    void placesOfOnePartThatMeetTheSameEndTogetherAreOneStep() {
        List<Step> steps =
                steps(supposing(LEG), burns(BURNT, 10), burns(BESIDE, 11), event(BLOWN, Harm.FUSE_MELTS, BLOWN, 100));

        assertThat(steps).hasSize(2);
        assertThat(steps.get(0).after().faults()).containsExactly(LEG, BURNT, BESIDE);
        assertThat(steps.get(1).after().faults()).containsExactly(LEG, BURNT, BESIDE, BLOWN);
        assertThat(steps.get(0).what().words()).contains("pin 3").contains("pin 4");
    }

    @Test
    void whatChangesNothingLeavesTheSupposition() {
        List<Step> steps = steps(supposing(LEG), event(BURNT, Harm.HOUSING_SOFTENS, null, 10));

        assertThat(steps.get(0).after()).isEqualTo(new Supposition(List.of(LEG)));
    }

    private static Fault amount(String part, String place, FailureMode mode, double si, Unit unit) {
        return new Fault(part, place, mode, new Quantity(si, unit));
    }

    /** What burns for the first time has 0.1 ohm; a pin that had more does not mend by burning. */
    @ParameterizedTest
    @EnumSource(
            value = FailureMode.class,
            names = {"BURNT", "LOOSE", "CRACKED_JOINT"})
    void aBadContactDoesNotMendByBurning(FailureMode mode) {
        Fault bad = amount("J1", "3", mode, 2, Unit.OHM);
        Fault burns = amount("J1", "3", FailureMode.BURNT, 0.1, Unit.OHM);

        assertThat(steps(supposing(bad), burns(burns, 10)).get(0).after().faults())
                .containsExactly(bad);
        Fault slightly = amount("J1", "3", mode, 0.02, Unit.OHM);
        assertThat(steps(supposing(slightly), burns(burns, 10)).get(0).after().faults())
                .containsExactly(burns);
    }

    /** 70 % of the 40 % that were left are 28 %; of a transformer's 90 % another 95 % are 85.5 %. */
    @Test
    void turnsThatShortAreFewerThanBefore() {
        Fault coil = amount("L205", "", FailureMode.SHORTED_TURNS, 0.4, Unit.RATIO);
        Fault winding = amount("T101", "sol", FailureMode.SHORTED_TURNS, 0.9, Unit.RATIO);
        Fault enamel = new Fault("L205", "", FailureMode.SHORTED_TURNS, null);
        Fault paper = new Fault("T101", "sol", FailureMode.SHORTED_TURNS, null);

        List<Step> steps = steps(
                supposing(coil, winding),
                event(enamel, Harm.TURNS_SHORT, enamel, 10),
                event(paper, Harm.TURNS_SHORT, paper, 100));

        List<Fault> faults = steps.get(1).after().faults();
        assertThat(faults).extracting(Fault::target).containsExactly("L205", "T101.sol");
        assertThat(faults)
                .extracting(f -> Objects.requireNonNull(f.amount()).si())
                .usingElementComparator(Comparator.comparingDouble(x -> Math.round(1e9 * x)))
                .containsExactly(0.28, 0.855);
    }

    @Test
    void aShortedWindingLosesNothingByTurnsThatShort() {
        Fault whole = new Fault("T101", "sol", FailureMode.SHORT, null);
        Fault turns = new Fault("T101", "sol", FailureMode.SHORTED_TURNS, null);

        assertThat(steps(supposing(whole), event(turns, Harm.TURNS_SHORT, turns, 10))
                        .get(0)
                        .after()
                        .faults())
                .containsExactly(whole);
    }

    @Test
    void aBurntPinKeepsTheWiresItWasGiven() {
        Fault swapped = new Fault("J7", "1", FailureMode.SWAPPED, null);
        Fault burnt = amount("J7", "1", FailureMode.BURNT, 2, Unit.OHM);
        Fault parts = new Fault("J7", "1", FailureMode.OPEN, null);

        assertThat(steps(supposing(swapped, burnt), event(parts, Harm.BURNS_OPEN, parts, 10))
                        .get(0)
                        .after()
                        .faults())
                .containsExactly(swapped, parts);
    }

    @Test
    void aLinkThatWasSwappedFallsOutOfItsClips() {
        Swap link = new Swap("F201", new Fitting.Link(new Quantity(25, Unit.AMPERE), null, null));
        Swap bulk = new Swap("BR201", new Fitting.Model("bridge-35A"));
        Fault loose = amount("F201", "", FailureMode.LOOSE, 0.5, Unit.OHM);
        Fault gone = new Fault("F201", "", FailureMode.MISSING, null);
        Question question = supposing(loose).supposing(new Supposition(List.of(loose), List.of(link, bulk)));

        Supposition after = steps(question, event(gone, Harm.CLIP_UNSOLDERS, gone, 10))
                .get(0)
                .after();

        assertThat(after.faults()).containsExactly(loose, gone);
        assertThat(after.swaps()).containsExactly(bulk);
        assertThatCode(() -> Catalogue.apply(FERRY, after)).doesNotThrowAnyException();
    }
}
