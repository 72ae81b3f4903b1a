package fusetale.desk.bars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.bench.Check;
import fusetale.bench.Reading;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.TestPoint;
import fusetale.desk.Answers;
import fusetale.explore.Compared;
import fusetale.explore.HealthyRange;
import fusetale.explore.Outcome;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Shares by hand, and rows of First Light with its dropper open against the outcome. */
class BarRowsTest {
    private static final Circuit LIGHT = Answers.circuit("first-light");
    private static final double OL = Double.POSITIVE_INFINITY;

    private static BarRow row(double asBuilt, double asSupposed, double low, double high) {
        Check check = new Check("TP1", "gnd", MeterFunction.DC_VOLTS);
        return BarRow.of(
                LIGHT, Compared.of(reading(check, asBuilt), reading(check, asSupposed), new HealthyRange(low, high)));
    }

    private static Reading reading(Check check, double value) {
        boolean over = Double.isInfinite(value);
        return new Reading(check, value, over, over ? "OL" : value + " V", 0.01);
    }

    @Test
    void sharesAreThoseOfTheHealthyReading() {
        BarRow rail = row(200, 50, 180, 220);
        BarRow logic = row(5, 1.25, 4.5, 5.5);

        assertThat(rail.supposedRatio()).isEqualTo(0.25);
        assertThat(logic.supposedRatio()).isEqualTo(rail.supposedRatio());
        assertThat(logic.lowRatio()).isCloseTo(0.9, within(1e-12));
        assertThat(logic.highRatio()).isCloseTo(1.1, within(1e-12));
    }

    @Test
    void aNegativeRailIsReadAsItIs() {
        BarRow row = row(-100, -90, -110, -80);

        assertThat(row.supposedRatio()).isEqualTo(0.9);
        assertThat(row.lowRatio()).isEqualTo(0.8);
        assertThat(row.highRatio()).isEqualTo(1.1);
        assertThat(row(-100, 20, -110, -80).supposedRatio()).isNegative();
    }

    @Test
    void somethingWhereAHealthyMachineReadsNothingIsMoreThanAnyShare() {
        BarRow row = row(0.002, 3, -0.02, 0.02);
        ShareModel scale = ShareModel.of(List.of(row));

        assertThat(row.healthyReadsNothing()).isTrue();
        assertThat(scale.more()).isTrue();
        assertThat(scale.at(row.supposedRatio())).isGreaterThan(ShareModel.MOST_RATIO);
        assertThat(row(0.002, 0.004, -0.02, 0.02).supposedRatio()).isEqualTo(1);
    }

    @Test
    void overRangeHasALaneOfItsOwnBeyondAllFigures() {
        BarRow becomes = row(5, OL, 4, 6);
        BarRow was = row(OL, 12, OL, OL);
        BarRow far = row(5, 500, 4, 6);
        ShareModel scale = ShareModel.of(List.of(becomes, was, far));

        assertThat(scale.at(becomes.supposedRatio())).isGreaterThan(scale.at(far.supposedRatio()));
        assertThat(scale.at(was.builtRatio())).isEqualTo(scale.at(becomes.supposedRatio()));
        assertThat(scale.at(was.supposedRatio())).isEqualTo(scale.at(0));
        assertThat(scale.marks().get(scale.at(OL))).isEqualTo("OL");
    }

    @Test
    void lanesAreThereOnlyWhereARowNeedsThem() {
        ShareModel scale = ShareModel.of(List.of(row(5, 4, 4, 6)));

        assertThat(scale).isEqualTo(new ShareModel(false, false, false));
        assertThat(scale.marks().values()).containsExactly("0 %", "50 %", "100 %", "150 %", "200 %");
    }

    @Test
    void theScaleKeepsTheOrderOfShares() {
        ShareModel scale = new ShareModel(true, true, true);
        double[] places =
                DoubleStream.of(-0.5, 0, 0.3, 1, 2, 2.5, OL).map(scale::at).toArray();

        assertThat(places).isSorted();
        assertThat(places[0]).isBetween(scale.low(), 0.0);
        assertThat(places[6]).isLessThan(scale.high());
    }

    @Test
    void rowsComeInTheOrderOfTheTestPoints() {
        List<Outcome> outcomes = Answers.dropperOpen();
        BarRows rows = BarRows.of(outcomes);

        assertThat(rows.functions())
                .containsExactly(
                        MeterFunction.DC_VOLTS, MeterFunction.AC_VOLTS, MeterFunction.OHMS, MeterFunction.DIODE_TEST);
        assertThat(rows.of(MeterFunction.DC_VOLTS))
                .extracting(BarRow::point)
                .containsExactlyElementsOf(
                        LIGHT.points().stream().map(TestPoint::name).toList());
        assertThat(rows.of(MeterFunction.OHMS)).hasSize(2 * LIGHT.points().size());
        assertThat(rows.of(MeterFunction.DC_VOLTS))
                .allSatisfy(row -> assertThat(outcomes.get(0).readings()).contains(row.reading()));
    }
}
