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
import fusetale.fault.Supposition;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

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
}
