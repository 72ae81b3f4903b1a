package fusetale.desk.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Observation.Aspect;
import fusetale.bench.Observation.Sight;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.desk.Answers;
import fusetale.match.Ask;
import fusetale.match.Shown;
import fusetale.sentence.Sentence;
import fusetale.sentence.SentenceException;
import fusetale.sentence.Sentences;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines of what was found, and back. */
class FoundReaderTest {
    private static final Circuit FERRY = Answers.circuit("night-ferry");
    private static final FoundReader READER = new FoundReader(new Sentences(FERRY));
    private static final Arrangement ON = Arrangement.powered(FERRY);

    private static Ask ask(Found found) {
        return found.evidence().ask();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "tp4 45.2 dc",
                "tp4-gnd 22,4 ac",
                "tp4 1k2 ohms",
                "tp4 OL ohms",
                "tp4 to tp5 0.52 diode test (power off, pull f201)",
                "F201 blown",
                "e310 dark",
                "L202 does nothing",
                "l202 holds at rest",
                "start-up stops at 2",
                "c101 hums",
                "br201 hot",
                "tp4 12.1 dc (power on, lamp 100 W)"
            })
    void whatIsWrittenReadsBackTheSame(String typed) throws SentenceException {
        Found found = READER.read(typed, null, ON);

        assertThat(READER.read(READER.line(found), null, ON)).isEqualTo(found);
        assertThat(READER.read(READER.line(found), null, Arrangement.unpowered()))
                .as("whatever the bench is")
                .isEqualTo(found);
    }

    @Test
    void theBenchHasThePowerThatTheMeterNeeds() throws SentenceException {
        assertThat(ask(READER.read("tp4 1k2 ohms", null, ON)).arrangement().powerOn())
                .isFalse();
        Found volts = READER.read("tp4 45 dc", null, Arrangement.unpowered());
        assertThat(ask(volts).arrangement().powerOn()).isTrue();
        assertThat(ask(volts).arrangement().mainsVolts()).isEqualTo(120);
    }

    @Test
    void whatIsAskedGoesWithoutSaying() throws SentenceException {
        Arrangement pulled = Sentence.named(Arrangement.unpowered().withPulledFuse("F201"));
        Ask asked = new Ask.Metered(pulled, new Check("TP4", "gnd", MeterFunction.DIODE_TEST));

        assertThat(ask(READER.read("0.52", asked, ON))).isEqualTo(asked);
        assertThat(READER.read("OL", asked, ON).evidence().shown()).isEqualTo(new Shown.Over());
        assertThat(ask(READER.read("tp9 11.5 dc", asked, ON)).arrangement().powerOn())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "F201 blown, F201, FUSE, WIRE_GONE, false",
        "f201 good, F201, FUSE, WIRE_WHOLE, false",
        "E310 dark, E310, LAMP, DARK, true",
        "L202 nothing, L202, COIL, STILL, true",
        "start-up stops at 2, U5, START_UP, STOPS, true"
    })
    void whatIsSeenIsSaidInPlainWords(String typed, String part, Aspect aspect, Sight sight, boolean on)
            throws SentenceException {
        Found found = READER.read(typed, null, ON);

        assertThat(ask(found)).isInstanceOf(Ask.Noticed.class);
        Ask.Noticed noticed = (Ask.Noticed) ask(found);
        assertThat(noticed.aspect()).isEqualTo(aspect);
        assertThat(noticed.part()).startsWith(part.substring(0, 1));
        assertThat(((Shown.Seen) found.evidence().shown()).sight()).isEqualTo(sight);
        assertThat(noticed.arrangement().powerOn()).isEqualTo(on);
    }

    @Test
    void aCoilIsWatchedWhileTheMachineCallsForIt() throws SentenceException {
        assertThat(ask(READER.read("L202 does nothing", null, ON)).arrangement().heldOn())
                .containsExactly("L202");
        assertThat(ask(READER.read("L202 holds at rest", null, ON))
                        .arrangement()
                        .heldOn())
                .isEmpty();
    }

    @Test
    void aNumberChoosesWhereSomethingIsAsked() throws SentenceException {
        Ask.Noticed fuse = READER.sights().intake().get(0);

        assertThat(READER.read("2", fuse, ON).evidence().shown()).isEqualTo(new Shown.Seen(Sight.WIRE_GONE));
        assertThatThrownBy(() -> READER.read("9", fuse, ON)).hasMessageContaining("wire whole");
    }

    @Test
    void aBareFigureAsksForThePoint() {
        assertThatThrownBy(() -> READER.read("32.4", null, ON))
                .isInstanceOf(SentenceException.class)
                .hasMessageContaining("Which point");
    }

    @Test
    void aPastedColumnIsReadLineByLine() {
        List<String> problems = new ArrayList<>();
        List<Found> found = READER.readAll("TP4\t45,2\tdc\nTP9 11.6 dc\r\nTP77 3 dc\n\nF201 blown\n", ON, problems);

        assertThat(found).extracting(Found::text).hasSize(3).last().isEqualTo("F201 wire gone");
        assertThat(problems).singleElement().asString().contains("TP77");
    }
}
