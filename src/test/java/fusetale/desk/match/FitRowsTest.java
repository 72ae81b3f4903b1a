package fusetale.desk.match;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.desk.Answers;
import fusetale.desk.match.MadeUp.Mood;
import fusetale.desk.state.Found;
import fusetale.desk.state.FoundReader;
import fusetale.explore.Progress;
import fusetale.match.Findings;
import fusetale.match.Ranking;
import fusetale.sentence.SentenceException;
import fusetale.sentence.Sentences;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The fit grid as text and figures. */
class FitRowsTest {
    private static final Circuit FIRST_LIGHT = Answers.circuit("first-light");
    private static final FoundReader READER = new FoundReader(new Sentences(FIRST_LIGHT));

    private static FitRows rows(String... lines) throws SentenceException {
        List<Found> found = new ArrayList<>();
        for (String line : lines) {
            found.add(READER.read(line, null, Arrangement.powered(FIRST_LIGHT)));
        }
        Findings findings = Found.findings(found);
        try {
            Weigher weigher = MadeUp.in(Mood.PLAIN).of(FIRST_LIGHT, Meter.trueRms4000());
            Ranking plain = weigher.rank(findings, r -> {}, Progress.SILENT, () -> false);
            Ranking ranking = new Standing(FIRST_LIGHT, findings, plain, null)
                    .with(weigher.lookAlikes(findings, Progress.SILENT, () -> false))
                    .ranking();
            return FitRows.of(FIRST_LIGHT, READER, found, ranking, false);
        } catch (UnfitArrangement e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void aRowSaysHowManyReadingsFit() throws SentenceException {
        FitRows rows = rows("tp1 18.2 dc", "tp2 0 dc", "tp4 14 ac");

        assertThat(rows.columns()).extracting(FitColumn::shown).containsExactly("18.2 V", "0 V", "14 V");
        FitRow leader = rows.rows().get(0);
        assertThat(leader.name()).isEqualTo("R2 is open");
        assertThat(leader.fits()).isEqualTo("fits 3 of 3");
        assertThat(leader.share()).matches("9\\d");
        assertThat(leader.cells()).allMatch(FitCell::fits);
        assertThat(leader.spoken()).contains("TP2 d.c. volts: 0.00", "you read 0 V, fits.");
    }

    @Test
    void aMisfitLiesAwayFromTheReading() throws SentenceException {
        FitRows rows = rows("tp2 0 dc");
        FitRow lamp = rows.rows().stream()
                .filter(r -> r.name().equals("E1 is open"))
                .findFirst()
                .orElseThrow();
        FitCell cell = lamp.cells().get(0);

        assertThat(cell.fits()).isFalse();
        assertThat(cell.low()).isGreaterThan(rows.columns().get(0).at());
        assertThat(cell.low()).isLessThan(cell.high());
    }

    @Test
    void lookAlikesAreOneRowWithWhatPartsThem() throws SentenceException {
        FitRows rows = rows("tp1 15.7 dc");

        assertThat(rows.rows()).filteredOn(r -> r.name().contains("J1 pin 1")).hasSize(1);
        FitRow both = rows.rows().get(0);
        assertThat(both.name()).startsWith("BR1 leg 1 is open, or J1 pin 1");
        assertThat(both.notes()).anyMatch(n -> n.startsWith("Look alike. To part them: power off, take F1 out"));
    }

    @Test
    void victimsStandUnderTheCause() throws SentenceException {
        FitRow first = rows("F1 blown").rows().get(0);

        assertThat(first.name()).isEqualTo("BR1 leg 1 is shorted");
        assertThat(first.notes()).contains("takes along: F1");
    }

    @Test
    void whatFitsEveryFaultDecidesNothing() throws SentenceException {
        FitRows rows = rows("tp3 0 dc", "tp2 0 dc");

        assertThat(rows.columns()).extracting(FitColumn::decidesNothing).containsExactly(true, false);
    }

    @Test
    void whatDoesNotFitTheRestIsToBeMeasuredAgain() throws SentenceException {
        FitRows rows = rows("tp1 18.2 dc", "tp2 0 dc", "tp4 3 ac");

        assertThat(rows.columns()).extracting(FitColumn::suspect).containsExactly(false, false, true);
    }

    @Test
    void theBenchIsToldWhereItIsNotPlain() throws SentenceException {
        FitRows rows = rows("tp1 18.2 dc", "tp3 to tp1 OL diode test (power off, pull f1)");

        assertThat(rows.columns().get(0).bench()).isEmpty();
        assertThat(rows.columns().get(1).bench()).contains("F1");
    }

    /** Whatever stands on it: the axis keeps order, keeps to its width, and has over range at its right end. */
    @Test
    void anAxisKeepsItsOrder() {
        List<Double> values = List.of(-31.0, -0.2, 0.0, 0.02, 0.61, 11.2, 34.0, 240.0);
        FitScale scale = FitScale.over(new Check("TP1", "gnd", MeterFunction.DC_VOLTS), values, true);
        List<Double> places = values.stream().map(scale::share).toList();

        assertThat(places)
                .isSorted()
                .doesNotHaveDuplicates()
                .allSatisfy(p -> assertThat(p).isBetween(0.0, 0.8));
        assertThat(scale.share(Double.POSITIVE_INFINITY)).isGreaterThan(0.85);
    }

    /** The new fuse was looked at before the power came on and after: two columns of one text. */
    @Test
    void whatWasSeenTwiceOfANewPartStandsTwice() throws SentenceException {
        FitRows rows = rows(
                "replaced F1",
                "F1 wire whole",
                "tp1 17 dc",
                "F1 wire whole",
                "tp2 0 dc",
                "replaced R2",
                "F1 wire whole");

        assertThat(rows.columns()).extracting(FitColumn::place).containsExactly("F1", "TP1", "F1", "TP2", "F1");
        assertThat(rows.columns()).extracting(FitColumn::fresh).containsExactly("new: F1", "", "", "", "new: R2");
    }
}
