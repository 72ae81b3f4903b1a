package fusetale.desk.aftermath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.aftermath.Aftermath;
import fusetale.aftermath.Event;
import fusetale.desk.Answers;
import fusetale.explore.Happening;
import fusetale.explore.Outcome;
import fusetale.explore.Step;
import fusetale.fault.Fault;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** First Light with a leg shorted behind a link of 10 A, against the aftermath itself; the axis by what a logarithm is. */
class AftermathModelTest {
    private static final Outcome OUTCOME = Answers.shortedLeg();
    private static final Aftermath AFTERMATH = Objects.requireNonNull(OUTCOME.aftermath());
    private static final AftermathModel MODEL = AftermathModel.of(OUTCOME.question(), AFTERMATH);

    @Test
    void equalFactorsOfTimeTakeEqualRoom() {
        assertThat(MODEL.share(20) - MODEL.share(10)).isCloseTo(MODEL.share(600) - MODEL.share(300), within(1e-12));
        assertThat(MODEL.share(MODEL.leastSeconds())).isZero();
        assertThat(MODEL.share(MODEL.mostSeconds())).isEqualTo(1);
    }

    @Test
    void everythingThatHappensStandsOnTheAxis() {
        assertThat(MODEL.rows()).hasSizeGreaterThan(3).allSatisfy(row -> {
            Happening what = row.happening();
            assertThat(MODEL.share(what.leastSeconds())).isBetween(0.01, MODEL.share(what.middleSeconds()));
            assertThat(MODEL.share(what.mostSeconds())).isBetween(MODEL.share(what.middleSeconds()), 0.999);
        });
        assertThat(MODEL.rows().stream().map(TimeRow::happening))
                .containsExactlyElementsOf(Happening.of(OUTCOME.question().healthy(), AFTERMATH.events()));
    }

    @Test
    void marksAreTimesAPersonCountsIn() {
        assertThat(MODEL.marks().values()).contains("10 s", "1 min", "1 h");
        assertThat(MODEL.marks().keySet())
                .allSatisfy(s -> assertThat(s).isBetween(MODEL.leastSeconds(), MODEL.mostSeconds()));
    }

    @Test
    void storiesComeWithTheirShares() {
        assertThat(MODEL.stories()).hasSameSizeAs(AFTERMATH.stories());
        assertThat(MODEL.stories().get(0).share())
                .contains(Happening.share(
                        AFTERMATH.stories().get(0).count(), AFTERMATH.settings().machines()));
        assertThat(MODEL.stories())
                .allSatisfy(story -> assertThat(story.words()).isNotBlank());
    }

    @Test
    void atSwitchOnTheMachineIsAsSupposed() {
        assertThat(MODEL.stories().get(0).at(0).supposition())
                .isEqualTo(OUTCOME.question().supposition());
    }

    @Test
    void eachStepAddsWhatItLeavesBehind() {
        StoryRow story = MODEL.stories().get(0);
        List<Fault> consequences = AFTERMATH.stories().get(0).steps().stream()
                .map(Event::consequence)
                .filter(Objects::nonNull)
                .toList();
        assertThat(story.steps()).isNotEmpty();

        assertThat(story.at(story.steps().size()).supposition().faults())
                .contains(consequences.get(consequences.size() - 1));
        int before = story.at(0).supposition().faults().size();
        for (int k = 1; k <= story.steps().size(); k++) {
            Step step = story.steps().get(k - 1);
            assertThat(story.at(k).supposition()).isEqualTo(step.after());
            assertThat(story.at(k).supposition().faults().size()).isGreaterThanOrEqualTo(before);
            assertThat(story.at(k).words())
                    .contains(step.what().words())
                    .contains(step.what().when());
            before = story.at(k).supposition().faults().size();
        }
    }
}
