package fusetale.desk.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Observation.Aspect;
import fusetale.bench.Observation.Sight;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.desk.Answers;
import fusetale.match.Ask;
import fusetale.match.Findings;
import fusetale.match.ReadingsFile;
import fusetale.match.ReadingsReader;
import fusetale.match.ReadingsWriter;
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
        return found.told().orElseThrow().ask();
    }

    @Test
    void aRemarkStaysWithWhatItIsAbout() throws SentenceException {
        Found found = READER.read("tp4 45.2 dc \"lead slipped once\"", null, ON);

        assertThat(found.told().orElseThrow().note()).isEqualTo("lead slipped once");
        assertThat(READER.line(found)).endsWith(" \"lead slipped once\"");
        assertThatThrownBy(() -> READER.read("replaced R201 \"the old one was cooked\"", null, ON))
                .isInstanceOf(SentenceException.class)
                .hasMessageContaining("is no part of this board");
        Found two = ((Found.Noted) found).remarked("said \"dead\"\nby its owner");
        assertThat(READER.read(READER.line(two), null, ON).told().orElseThrow().note())
                .isEqualTo("said 'dead' by its owner");
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
                "tp4 12.1 dc (power on, lamp 100 W)",
                "tp4 45.2 dc \"with the coin door open; (loose) plug\"",
                "F201 blown \"cap says 8 A\"",
                "tp4 to tp5 0.52 diode test (power off, pull f201) \"twice the same\""
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
        assertThat(READER.read("OL", asked, ON).told().orElseThrow().shown()).isEqualTo(new Shown.Over());
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
        assertThat(((Shown.Seen) found.told().orElseThrow().shown()).sight()).isEqualTo(sight);
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

        assertThat(READER.read("2", fuse, ON).told().orElseThrow().shown()).isEqualTo(new Shown.Seen(Sight.WIRE_GONE));
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

    @ParameterizedTest
    @ValueSource(
            strings = {
                "replaced F201",
                "new f201",
                "New: f201",
                "replaced f201, c101",
                "replaced F201 and c101",
                "new J3"
            })
    void whatWasReplacedReadsBackTheSame(String typed) throws SentenceException {
        Found found = READER.read(typed, null, ON);

        assertThat(found).isInstanceOf(Found.Replaced.class);
        assertThat(READER.read(READER.line(found), null, ON)).isEqualTo(found);
        assertThat(((Found.Replaced) found).parts())
                .isSubsetOf("F201", "C101", "J3")
                .hasSize(typed.contains("c101") ? 2 : 1);
    }

    @Test
    void aPartThatIsNotThereCannotBeReplaced() {
        assertThatThrownBy(() -> READER.read("replaced F2O1", null, ON))
                .isInstanceOf(SentenceException.class)
                .hasMessageContaining("Near: F201");
        assertThatThrownBy(() -> READER.read("replaced", null, ON))
                .isInstanceOf(SentenceException.class)
                .hasMessageContaining("Which part");
    }

    /** What was read before a part was replaced stays with the machine as it was. */
    @Test
    void eachReplacementBeginsAnew() throws SentenceException {
        List<Found> found = new ArrayList<>();
        for (String line : List.of("F201 blown", "replaced F201", "replaced BR201", "tp4 1k2 ohms", "replaced F201")) {
            found.add(READER.read(line, null, ON));
        }
        Findings findings = Found.findings(found);

        assertThat(findings.spells())
                .extracting(Findings.Spell::replaced)
                .containsExactly(List.of(), List.of("F201", "BR201"), List.of("F201"));
        assertThat(findings.spells()).extracting(s -> s.evidence().size()).containsExactly(1, 1, 0);
        assertThat(Found.findings(READER.of(findings))).isEqualTo(findings);
        assertThat(Found.now(found)).isEmpty();
        assertThat(Found.now(found.subList(0, 4))).containsExactly(found.get(3));
    }

    /** Saved as CSV and opened again: the same, on every board. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "first-light|tp1 18.2 dc;tp2 0.02 dc;tp1 OL ohms;tp3-tp1 OL diode test (power off, pull f1);replaced R2;F1 good;tp2 13 ohms",
                "night-ferry|F201 blown;start-up stops at 2;tp4 3.98 kohm;gnd-tp4 0.377 diode test;replaced BR201, F201;l202 holds at rest;e310 dark;c101 hums;tp4 12.1 dc (power on, lamp 100 W)",
                "fog-bell|tp1 -12.4 dc;tp2 0.003 ac;tp1 to gnd beeps;new k1;k1 hot"
            })
    void whatIsSavedOpensAsTheSame(String board, String lines) throws SentenceException {
        Circuit circuit = Answers.circuit(board);
        FoundReader reader = new FoundReader(new Sentences(circuit));
        List<Found> found = new ArrayList<>();
        for (String line : lines.split(";", -1)) {
            found.add(reader.read(line, null, Arrangement.powered(circuit)));
        }
        String text = new ReadingsWriter(circuit).text(Found.findings(found), Meter.trueRms4000());
        ReadingsFile read = new ReadingsReader(circuit).read("a.csv", text);

        assertThat(read.problems()).isEmpty();
        assertThat(reader.of(read.findings())).as(text).isEqualTo(found);
    }
}
