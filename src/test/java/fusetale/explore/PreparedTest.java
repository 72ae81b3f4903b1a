package fusetale.explore;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.MeterFunction;
import fusetale.fault.Supposition;
import fusetale.sentence.SentenceParser;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A healthy side worked out once gives what working everything out gives. */
class PreparedTest {
    private static final Circuit FIRST_LIGHT = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/first-light.yaml"))
            .circuit());

    private final Question common = new Question(
            FIRST_LIGHT,
            Supposition.NOTHING,
            Arrangement.powered(FIRST_LIGHT),
            Meter.trueRms4000(),
            Check.all(FIRST_LIGHT, true),
            new Question.Options(6, 1, Question.Options.EVERY_TRACE));
    private final Prepared prepared =
            ((Preparation.Ready) new Explorer(1).prepare(common, Progress.SILENT, () -> false)).prepared();

    private static Supposition saying(String line) throws Exception {
        return new SentenceParser(FIRST_LIGHT).parse(line);
    }

    @Test
    void answersAreThoseOfAWholeQuestion() throws Exception {
        for (String line : List.of("R2 is open", "F1 is blown", "C1 is dried out to 30 %", "BR1 leg 1 is shorted")) {
            Supposition supposed = saying(line);
            Outcome one = ((Answer.Answered) prepared.answer(supposed, () -> false)).outcome();
            Outcome two = ((Answer.Answered)
                            new Explorer(1).answer(common.supposing(supposed), Progress.SILENT, () -> false))
                    .outcome();

            assertThat(one.readings()).as(line).isEqualTo(two.readings());
            assertThat(one.doubts()).as(line).isEqualTo(two.doubts());
        }
    }

    @Test
    void everyPointAndFuseHasAWaveformWhereAllAreAskedFor() throws Exception {
        Outcome outcome = ((Answer.Answered) prepared.answer(saying("R2 is open"), () -> false)).outcome();

        assertThat(outcome.traces())
                .extracting(Trace::label)
                .doesNotHaveDuplicates()
                .contains("TP1", "TP2", "TP3", "TP4", "TP5", "F1");
    }

    /** A glance differs from a whole answer by the meter's load at most, which lies within its accuracy on this board. */
    @Test
    void aGlanceIsWithinTheMetersAccuracyOfAnAnswer() throws Exception {
        Glances glances = new Glances(prepared);
        Set<Check> wanted = common.checks().stream()
                .filter(c -> c.function() == MeterFunction.DC_VOLTS)
                .collect(Collectors.toSet());
        for (int share = 20; share <= 90; share += 10) {
            Supposition supposed = saying("C1 is dried out to " + share + " %");
            Glance glance = glances.at(supposed, wanted, () -> false).orElseThrow();
            Outcome outcome = ((Answer.Answered) prepared.answer(supposed, () -> false)).outcome();

            assertThat(glance.readings()).hasSize(wanted.size()).allSatisfy(g -> {
                Compared whole = outcome.readings().stream()
                        .filter(r -> r.check().equals(g.check()))
                        .findFirst()
                        .orElseThrow();
                assertThat(Math.abs(g.asSupposed().value() - whole.asSupposed().value()))
                        .isLessThanOrEqualTo(whole.asSupposed().halfWidth());
                assertThat(g.healthy()).isEqualTo(whole.healthy());
            });
        }
    }

    @Test
    void aGlanceThatIsStoppedGivesNothing() throws Exception {
        assertThat(new Glances(prepared).at(saying("R2 is open"), Set.copyOf(common.checks()), () -> true))
                .isEmpty();
    }
}
