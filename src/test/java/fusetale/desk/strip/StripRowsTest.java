package fusetale.desk.strip;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Check;
import fusetale.bench.Reading;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.desk.Answers;
import fusetale.explore.Compared;
import fusetale.explore.HealthyRange;
import fusetale.explore.Outcome;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Rows of First Light with its dropper open, against the outcome they are made from. */
class StripRowsTest {
    private static final Circuit LIGHT = Answers.circuit("first-light");
    private static final List<Outcome> OUTCOMES = Answers.dropperOpen();
    private static final StripRows ROWS = StripRows.of(OUTCOMES);

    private static List<Compared> readings() {
        return OUTCOMES.stream().flatMap(o -> o.readings().stream()).toList();
    }

    private static Compared reading(Check check) {
        return readings().stream()
                .filter(r -> r.check().equals(check))
                .findFirst()
                .orElseThrow();
    }

    private static Compared made(String shows, double asBuilt, double asSupposed) {
        Check check = new Check("TP1", "gnd", MeterFunction.DC_VOLTS);
        return Compared.of(
                new Reading(check, asBuilt, false, shows, 0.1),
                new Reading(
                        check,
                        asSupposed,
                        Double.isInfinite(asSupposed),
                        Double.isInfinite(asSupposed) ? "OL" : asSupposed + " V",
                        0.1),
                new HealthyRange(asBuilt - 1, asBuilt + 1));
    }

    @Test
    void everyReadingOfEverySettingHasItsRow() {
        assertThat(ROWS.rows())
                .extracting(StripRow::check)
                .containsExactlyInAnyOrderElementsOf(
                        readings().stream().map(Compared::check).toList());
        assertThat(ROWS.rows()).extracting(StripRow::function).contains("d.c. volts", "ohms");
    }

    @Test
    void thoseThatMovedMostComeFirst() {
        assertThat(ROWS.rows().stream().map(r -> reading(r.check()).movedInTwoFigures()))
                .isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    @Test
    void figuresAreThoseOfTheDisplays() {
        Stream<StripRow> settled =
                ROWS.rows().stream().filter(r -> reading(r.check()).asSupposed().climbing() == null);

        assertThat(settled)
                .hasSizeGreaterThan(10)
                .allSatisfy(r -> assertThat(r.supposed())
                        .isEqualTo(reading(r.check()).asSupposed().shows()));
        assertThat(ROWS.rows().stream().filter(r -> reading(r.check()).asBuilt().climbing() == null))
                .allSatisfy(
                        r -> assertThat(reading(r.check()).asBuilt().shows()).startsWith(r.built()));
    }

    @Test
    void theLampsSupplyIsGone() {
        StripRow lamp = ROWS.rows().stream()
                .filter(r -> r.point().equals("TP2") && r.check().function() == MeterFunction.DC_VOLTS)
                .findFirst()
                .orElseThrow();

        assertThat(lamp.tooCloseToTell()).isFalse();
        // nothing drives the lamp any more
        assertThat(Double.parseDouble(lamp.supposed().split(" ")[0])).isBetween(-0.1, 0.1);
    }

    @Test
    void countsOfWhatIsLeftOutAddUp() {
        int moved = OUTCOMES.stream().mapToInt(o -> o.moved().size()).sum();

        assertThat(ROWS.moved()).isEqualTo(moved);
        assertThat(ROWS.movedLeft(5)).startsWith((moved - 5) + " more");
        assertThat(ROWS.closeLeft(5)).isEqualTo((readings().size() - moved) + " too close to tell");
        assertThat(ROWS.movedLeft(moved)).isEmpty();
        assertThat(ROWS.closeLeft(moved + 2)).isEqualTo((readings().size() - moved - 2) + " more too close to tell");
        assertThat(ROWS.closeLeft(readings().size())).isEmpty();
    }

    @Test
    void currentsNeedAClampMeter() {
        assertThat(new StripRows(List.of(), 1).movedLeft(0)).isEqualTo("1 more needs a clamp meter");
        assertThat(new StripRows(List.of(), 2).movedLeft(0)).isEqualTo("2 more need a clamp meter");
    }

    @Test
    void aUnitIsWrittenOnceWhereBothHaveIt() {
        assertThat(StripRow.of(LIGHT, made("5.00 V", 5, 9.5)).built()).isEqualTo("5.00");
        assertThat(StripRow.of(LIGHT, made("5.0 mV", 0.005, 9.5)).built()).isEqualTo("5.0 mV");
    }

    @Test
    void overRangeIsSaid() {
        StripRow row = StripRow.of(LIGHT, made("5.00 V", 5, Double.POSITIVE_INFINITY));

        assertThat(row.supposed()).isEqualTo("OL");
        assertThat(row.built()).isEqualTo("5.00 V");
        assertThat(row.spoken()).contains("over range");
    }

    @Test
    void whatIsSpokenHasPointFunctionAndBothFigures() {
        assertThat(StripRow.of(LIGHT, made("5.00 V", 5, 9.5)).spoken())
                .isEqualTo(
                        "TP1, d.c. volts: healthy 5.00 V, supposed 9.5 V, moved 4.5 times as far as healthy machines stray");
        assertThat(StripRow.of(LIGHT, made("5.00 V", 5, 5.5)).spoken()).contains("too close to tell");
    }
}
