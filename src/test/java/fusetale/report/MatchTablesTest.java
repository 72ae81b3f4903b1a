package fusetale.report;

import static fusetale.report.MatchAnswers.advice;
import static fusetale.report.MatchAnswers.bleeder;
import static fusetale.report.MatchAnswers.bridge;
import static fusetale.report.MatchAnswers.healthy;
import static fusetale.report.MatchAnswers.matched;
import static fusetale.report.MatchAnswers.next;
import static fusetale.report.MatchAnswers.ranking;
import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Check;
import fusetale.circuit.MeterFunction;
import fusetale.match.Ask;
import fusetale.match.Candidate;
import fusetale.match.Evidence;
import fusetale.match.NextReadings;
import fusetale.match.Ranking;
import fusetale.match.Shown;
import fusetale.match.Weighed;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MatchTablesTest {
    private static final Ranking USUAL =
            ranking(List.of(bridge(0.884), healthy(0.06), bleeder(0.004)), 0.031, List.of());

    private static final MatchWords WORDS = new MatchWords(MatchAnswers.FERRY);

    private static List<String> lines(Matched matched) {
        return MatchTables.of(matched, Emphasis.NONE);
    }

    private static String text(Matched matched) {
        return String.join("\n", lines(matched));
    }

    @Test
    void theDangerStandsFirst() {
        Ranking danger = ranking(List.of(bridge(0.9)), 0.05, List.of("a short that F201 would not clear"));

        assertThat(lines(matched(danger, null)).get(0)).isEqualTo("DO NOT POWER UP: a short that F201 would not clear");
        assertThat(text(matched(USUAL, null))).doesNotContain("DO NOT POWER UP");
    }

    @Test
    void sharesAreSaidAsPeopleSayThem() {
        assertThat(lines(matched(USUAL, null)))
                .contains(
                        "90 of 100  Change BR201. Fits 2 of 3.",
                        " 6 of 100  Healthy, or a fault these readings cannot show. Fits 2 of 3.",
                        "  under 1  Change R201. Fits 3 of 3.",
                        " 3 of 100  Something not in the list (kept open on purpose).");
    }

    @Test
    void aCandidateSaysWhatIsWrongWhatSpeaksForItAndWhatItTakesAlong() {
        assertThat(lines(matched(USUAL, null)))
                .containsSubsequence(
                        "           BR201 leg 1 is shorted.",
                        "           or BR201 leg 2 is shorted.",
                        "           for      F201, fuse: wire gone, as expected",
                        "                    gnd to TP4, diode test (Power off, F202 pulled): OL, as expected",
                        "           against  TP4 to gnd, d.c. volts: 17.4 V; expected 41.2 to 46.3 V; far off",
                        "           Will need new: F201. Taken along by the fault, not its cause.");
        // a twentieth of the repair's share is not worth a line
        assertThat(text(matched(USUAL, null))).doesNotContain("leg 3");
    }

    @Test
    void howFarOffIsSaidInWords() {
        assertThat(lines(matched(USUAL, null)))
                .containsSubsequence(
                        "                    TP4 to gnd, d.c. volts: 17.4 V; expected 41.2 to 46.3 V; off, and more so",
                        "                    elsewhere",
                        "           against  TP4 to gnd, d.c. volts: 17.4 V; expected 41.2 to 46.3 V; fits, but better",
                        "                    elsewhere");
    }

    @Test
    void somethingElseStandsFirstWhereItFitsBest() {
        Ranking unlisted = ranking(List.of(bridge(0.3)), 0.6, List.of());
        List<String> lines = lines(matched(unlisted, null));

        assertThat(matched(unlisted, null).noneFits()).isTrue();
        assertThat(lines.get(lines.indexOf("What fits") + 1))
                .startsWith("60 of 100  Something not in the list. Nothing listed explains");
        assertThat(matched(USUAL, null).noneFits()).isFalse();
    }

    @Test
    void anUnfinishedAnswerSaysHowFarItHasCome() {
        assertThat(text(matched(USUAL, null)))
                .contains(
                        "First look, getting sharper: 640 of 4,576 machines worked out.",
                        "These shares hold if the fault is one of 143 listed and the schematic is right.");
        assertThat(text(MatchAnswers.nothingRead()))
                .contains("Nothing was read yet", "one of 143 listed, of which 90 are compared so far")
                .doesNotContain("First look");
    }

    @Test
    void lookAlikesAndSuspectsAreOneLineEach() {
        assertThat(lines(matched(USUAL, null)))
                .contains("Look-alikes", "Measure again")
                .contains("TP4 to gnd, d.c. volts: 17.4 V (line 3) does not fit the rest; 60 of 100 that it is a slip.")
                .anyMatch(l ->
                        l.startsWith("BR201 or healthy, or a fault these readings cannot show: 93 of 100 together."));
        assertThat(text(matched(USUAL, null)).replace('\n', ' '))
                .contains("What parts them: power off, take F202 out, then gnd to TP4, diode test.");
    }

    @Test
    void whatIsMeasuredNextSaysDeedsLeadsMinutesAndWhatFollows() {
        Matched asked = matched(USUAL, next(NextReadings.Verdict.GO_ON, "BR201 costs less than its proof.", advice()));

        assertThat(lines(asked))
                .containsSubsequence(
                        "Measure next",
                        "More readings tell more.",
                        "1. Power off.",
                        "   Take F202 out.",
                        "   gnd to TP4, diode test: red lead on gnd, black lead on TP4; about 3 minutes.",
                        "     0.37 to 0.39 V  60 of 100  BR201, then 97 of 100",
                        "     OL              40 of 100  something not in the list, then 40 of 100",
                        "   Caution: Capacitors discharged and measured first.",
                        "Or just replace it: BR201 costs less than its proof.",
                        "To make sure, or to be proved wrong:");
    }

    @ParameterizedTest
    @EnumSource(NextReadings.Verdict.class)
    void everyVerdictHasWords(NextReadings.Verdict verdict) {
        List<String> lines = lines(matched(USUAL, next(verdict, "", null)));

        assertThat(lines.get(lines.indexOf("Measure next") + 1)).endsWith(".");
        assertThat(String.join("\n", lines)).doesNotContain("Or just replace it", "To make sure");
    }

    @Test
    void manyCandidatesAreSummedUp() {
        List<Candidate> many = new ArrayList<>(Collections.nCopies(9, bleeder(0.1)));

        assertThat(lines(matched(ranking(many, 0.1, List.of()), null)))
                .contains("4 more repairs have 40 of 100 together; --json lists them.");
    }

    @Test
    void aSingleCandidateMoreIsOne() {
        List<Candidate> six = new ArrayList<>(Collections.nCopies(6, bleeder(0.1)));

        assertThat(lines(matched(ranking(six, 0.1, List.of()), null)))
                .contains("One more repair has 10 of 100; --json lists it.");
    }

    private static Weighed read(MeterFunction function, double si, double low, double high, double away, double bits) {
        Ask ask = new Ask.Metered(Made.arrangement(function.powered()), new Check("TP4", "gnd", function));
        Evidence evidence = new Evidence(ask, new Shown.Figure(si));
        return new Weighed(evidence, "", (low + high) / 2, low, high, away, bits, 0.001, 0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "18.1 | 9 | -4 | 18.1 V; expected 16.0 to 20.5 V; possible alone, not together with the others",
                "16.0 | -4 | 1 | 16 V; expected 16.0 to 20.5 V; possible alone, not together with the others, and less"
                        + " so elsewhere",
                "20.6 | 9 | -4 | 20.6 V; expected 16.0 to 20.5 V; far off",
                "20.6 | 4 | -4 | 20.6 V; expected 16.0 to 20.5 V; off",
            })
    void aReadingWithinItsRangeIsNotSaidToBeOff(double si, double away, double bits, String told) {
        assertThat(WORDS.weighed(read(MeterFunction.DC_VOLTS, si, 16, 20.5, away, bits)))
                .endsWith(": " + told);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "DC_VOLTS | 0.001 | 0.0204 | 0.001 to 0.020 V",
                "DC_VOLTS | -0.004 | 0.0204 | -0.004 to 0.020 V",
                "DC_VOLTS | -0.0041 | 0.0041 | -4.10 to 4.10 mV",
                "DC_VOLTS | 0 | 0 | 0.00 V",
                "AC_VOLTS | -0.003 | 0.024 | 0.000 to 0.024 V",
                "OHMS | -0.02 | 0.3 | 0.000 to 0.300 Ω",
                "DC_VOLTS | 0.436 | 0.452 | 0.436 to 0.452 V",
                "DC_VOLTS | 1.118 | 1.224 | 1.12 to 1.22 V",
                "DIODE_TEST | 0.436 | 0.452 | 0.436 to 0.452 V",
                "DIODE_TEST | 1.118 | 1.224 | 1.118 to 1.224 V",
                "DIODE_TEST | -0.0004 | 0.002 | 0.000 to 0.002 V",
                "OHMS | 0.4 | 0.51 | 0.400 to 0.510 Ω",
                "DC_VOLTS | 0.9996 | 9.996 | 1.0 to 10.0 V",
                "DC_VOLTS | 41.2 | 46.3 | 41.2 to 46.3 V",
            })
    void rangesHaveThreeDigits(MeterFunction function, double low, double high, String told) {
        assertThat(WORDS.expected(read(function, low, low, high, 0, 0))).isEqualTo(told);
    }

    @Test
    void noLineIsLongerThanAHundred() {
        assertThat(lines(matched(
                        USUAL,
                        next(NextReadings.Verdict.REPEAT, "word ".repeat(60).strip(), advice()))))
                .allMatch(l -> l.length() <= 100);
    }

    @Test
    void cautionsAreAlwaysTold() {
        assertThat(text(matched(USUAL, null)).replace('\n', ' '))
                .contains("Cautions", "Reservoir capacitors hold a charge", "plug out and every capacitor discharged");
    }

    @ParameterizedTest
    @CsvSource({
        "0.3,less than a minute",
        "1.2,about a minute",
        "12,about 12 minutes",
        "95,about 1.5 hours",
        "59.6,about an hour",
        "60,about an hour",
        "120,about 2 hours"
    })
    void minutesAreRounded(double minutes, String said) {
        assertThat(MatchWords.minutes(minutes)).isEqualTo(said);
    }

    @Test
    void theTableForASpreadsheetHasALineARepair() {
        assertThat(Csv.match(matched(USUAL, null)).lines())
                .containsExactly(
                        "share,repair,supposition,sentence,fits,readings,will need new",
                        "0.884,BR201,BR201.leg1=short,BR201 leg 1 is shorted,2,3,F201",
                        "0.06,,,\"Healthy, or a fault these readings cannot show\",2,3,",
                        "0.004,R201,R201=open,R201 is open,3,3,",
                        "0.031,,,something not in the list,,,");
    }
}
