package fusetale.report;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.aftermath.Strain;
import fusetale.aftermath.Stress;
import fusetale.circuit.MeterFunction;
import fusetale.explore.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TablesTest {
    private static final List<String> SHORTED =
            Tables.suppose(Made.shortedLeg(), "Suppose BR201 leg 1 is shorted.", Emphasis.NONE, Tables.More.NOTHING);

    @Test
    void dangerIsTheFirstLine() {
        assertThat(SHORTED.get(0)).startsWith("DO NOT POWER UP: F201 holds a 25 A fuse");
    }

    @Test
    void linesFitAHundredColumns() {
        assertThat(SHORTED)
                .allSatisfy(line ->
                        assertThat(line.codePointCount(0, line.length())).isLessThanOrEqualTo(100));
    }

    @Test
    void namesTooLongForTheLineAreCut() {
        TextTable table = new TextTable(TextTable.Column.left("name"), TextTable.Column.left("what"));
        table.row(false, "n".repeat(150), "w".repeat(150));

        assertThat(table.lines(Emphasis.NONE))
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test
    void aSignTellsWhatMovedFromWhatIsTooClose() {
        assertThat(SHORTED).anyMatch(line -> line.matches("◆  TP4 .*45\\.53 V +11\\.20 V.*"));
        assertThat(SHORTED).anyMatch(line -> line.matches("◇  TP15 .*189\\.7 V +188\\.9 V.*"));
    }

    @Test
    void withoutTerminalThereAreNoControlSequences() {
        assertThat(String.join("", SHORTED)).doesNotContain("\u001B");
    }

    @Test
    void onATerminalOnlyControlSequencesAreAdded() {
        List<String> bold = Tables.suppose(
                Made.shortedLeg(), "Suppose BR201 leg 1 is shorted.", Emphasis.TERMINAL, Tables.More.NOTHING);

        assertThat(bold.stream().map(l -> l.replaceAll("\u001B\\[[01]m", ""))).containsExactlyElementsOf(SHORTED);
    }

    @Test
    void fuseTableTellsMarkedFromFittedAndWhenItMelts() {
        assertThat(SHORTED)
                .anyMatch(line -> line.matches("F201 +6 A slow +25 A slow +47 A +may melt in 12 s to 60 min"));
    }

    @ParameterizedTest
    @CsvSource({
        "3.15, 3.15 A slow",
        "1.25, 1.25 A slow",
        "6.25, 6.25 A slow",
        "0.315, 315 mA slow",
        "0.125, 125 mA slow",
        "0.063, 63 mA slow",
        "10, 10 A slow"
    })
    void ratingOfAFuseIsToldAsMarked(double amps, String told) {
        assertThat(Tables.link(Made.link(amps))).isEqualTo(told);
    }

    @Test
    void ratingOfAPartIsToldInFull() {
        Stress eighth = new Stress("R1", "", Strain.POWER, 0.3456, 0.125);

        assertThat(StressTable.lines(List.of(eighth), Made.shortedLeg(), Emphasis.NONE))
                .anyMatch(line -> line.matches("R1 .* 350 mW +125 mW +2\\.8"));
    }

    @Test
    void powerOffWarnsOfOhmsInCircuit() {
        Outcome off = Made.powerOff();

        assertThat(String.join(" ", Tables.suppose(off, "", Emphasis.NONE, Tables.More.NOTHING)))
                .contains("Ohms and diode test only with the plug out");
    }

    @Test
    void rangeKeepsThePrefixOfItsReading() {
        assertThat(Figures.range(Made.row("TP1", MeterFunction.DC_VOLTS, 10.81, 10.55, 9.6, 11.9)))
                .isEqualTo("9.60 to 11.90 V");
    }

    @Test
    void csvQuotesWhatHoldsACommaAsRfc4180Asks() {
        assertThat(Csv.suppose(Made.shortedLeg()))
                .contains("\r\nas found,d.c. volts,TP15,gnd,189.7,188.9,V,182.0,197.0,188.9 V,")
                .contains(",\"display rail at the glasses, bites\",,\r\n");
    }

    @Test
    void csvLeavesOverRangeEmpty() {
        assertThat(Csv.suppose(Made.powerOff()))
                .contains("power off,diode test,TP18,gnd,0.444,,V,0.43,0.46,OL,10000.0,");
    }
}
