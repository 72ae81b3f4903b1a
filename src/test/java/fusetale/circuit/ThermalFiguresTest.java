package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What parts are made of and how their heat gets away, against handbook figures. */
class ThermalFiguresTest {
    private static final PartLibrary SHIPPED = PartLibrary.shipped();

    /** Rises from the junction to the case by data sheets: 6 W in a 2N6045 10 K, 21 W in the 5 V 3 A class 42 K. */
    @Test
    void junctionStandsAboveItsCaseAsDataSheetsSay() {
        Thermal darlington = Objects.requireNonNull(SHIPPED.darlingtons().get("2N6045"))
                .ratings()
                .thermal();
        Thermal regulator = Objects.requireNonNull(SHIPPED.regulators().get("5V-3A"))
                .ratings()
                .thermal();

        assertThat(6 * darlington.junctionToCaseKelvinPerWatt()).isCloseTo(10, within(0.1));
        assertThat(21 * regulator.junctionToCaseKelvinPerWatt()).isCloseTo(42, within(0.1));
        assertThat(6 * darlington.junctionToAirKelvinPerWatt()).isCloseTo(342, within(0.5));
    }

    /** 7 W in a bare 5 V 1 A regulator of 50 K/W: 350 K (data sheet class). */
    @Test
    void bareCaseWarmsByItsResistanceToAir() {
        Thermal bare = Objects.requireNonNull(SHIPPED.regulators().get("5V-1A"))
                .ratings()
                .thermal();

        assertThat(7 * bare.junctionToAirKelvinPerWatt()).isCloseTo(350, within(1e-9));
    }

    /** A plate can only help, and it is never better than interface and plate alone. */
    @ParameterizedTest
    @EnumSource(CaseStyle.class)
    void chassisCoolsEveryCase(CaseStyle style) {
        double free = style.junctionToAirKelvinPerWatt() - style.junctionToCaseKelvinPerWatt();
        double sunk = Mounting.ON_CHASSIS.caseToAirKelvinPerWatt(free);

        assertThat(sunk).isLessThan(free).isLessThan(3.4);
        assertThat(1 / sunk).isCloseTo(1 / free + 1 / 3.4, within(1e-12));
    }

    @Test
    void mountingThatIsNotSaidIsFreeAir() {
        assertThat(Mounting.of(About.NOTHING)).isEqualTo(Mounting.FREE_AIR);
        assertThat(Mounting.of(new About("", "on chassis", 0))).isEqualTo(Mounting.ON_CHASSIS);
    }

    /** Masses of the cases are those of data sheets, grams to tens of grams: heat capacities in the order of size. */
    @Test
    void casesGrowInHeatCapacityWithTheirSize() {
        assertThat(List.of(
                        CaseStyle.DO_35,
                        CaseStyle.TO_92,
                        CaseStyle.DO_41,
                        CaseStyle.DO_201,
                        CaseStyle.TO_220,
                        CaseStyle.TO_3,
                        CaseStyle.BRIDGE_SQUARE))
                .isSortedAccordingTo((a, b) -> Double.compare(a.caseJoulesPerKelvin(), b.caseJoulesPerKelvin()));
    }

    @ParameterizedTest
    @CsvSource({"62.5, TO_220", "350, DO_35", "1e9, DO_35", "Infinity, TO_220"})
    void caseThatIsNotSaidIsTheNearest(double toAir, CaseStyle expected) {
        assertThat(CaseStyle.nearest(toAir)).isEqualTo(expected);
    }

    /** 48 V on 4 Ω in 60 g of copper: 576 W over 60 g times 0.385 J/(g·K) is 24.94 K/s. */
    @Test
    void stuckCoilHeatsAsItsCopperAllows() {
        assertThat(48.0 * 48 / 4 / Wound.ofSolenoid().joulesPerKelvin()).isCloseTo(24.94, within(0.01));
    }

    /** 46 m of 1.33 mm² weigh 0.545 kg (8.89 g/cm³), and have 0.6 Ω: what 4 A at 3 A/mm² ask for. */
    @Test
    void transformerWindingWeighsWhatItsResistanceNeeds() {
        Transformer.Winding winding = new Transformer.Winding(
                "sol",
                List.of(new Net("a"), new Net("b")),
                new Quantity(34, Unit.VOLT),
                new Toleranced(new Quantity(0.6, Unit.OHM), Tolerance.EXACT),
                new Quantity(4, Unit.AMPERE));

        assertThat(Wound.ofTransformer(winding).copperGrams()).isCloseTo(550, within(5.0));
    }

    /** ASTM B258 and IEC 60028: cross-section and Ω/km at 20 °C. */
    @ParameterizedTest
    @CsvSource({
        "10, 2.5882, 5.261, 3.277",
        "14, 1.6277, 2.081, 8.285",
        "18, 1.0237, 0.8230, 20.95",
        "22, 0.6438, 0.3255, 52.96",
        "26, 0.4049, 0.1288, 133.9",
        "30, 0.2546, 0.0509, 338.6"
    })
    void gaugesFollowTheirStandard(int gauge, double millimetres, double squareMillimetres, double ohmsPerKilometre) {
        assertThat(Conductor.gaugeMillimetres(gauge)).isCloseTo(millimetres, within(5e-5));
        assertThat(Conductor.gaugeSquareMillimetres(gauge)).isCloseTo(squareMillimetres, within(5e-4));
        assertThat(Conductor.wire(Conductor.gaugeSquareMillimetres(gauge), 1000).ohms(20))
                .isCloseTo(ohmsPerKilometre, within(5e-4 * ohmsPerKilometre));
    }

    /** Contacts are rated for their gauge at the same rise of 30 K: the wire is never the weaker, nor far the stronger. */
    @ParameterizedTest
    @CsvSource({"24, 2", "22, 3", "20, 4.5", "18, 6", "16, 8", "14, 10"})
    void wireCarriesWhatContactsOfItsGaugeCarry(int gauge, double contactAmps) {
        double amps = Conductor.wire(Conductor.gaugeSquareMillimetres(gauge), 1).ratedAmps();

        assertThat(amps).isBetween(contactAmps, 1.5 * contactAmps);
    }

    /** IPC-2221, outer layer, 20 K, 100 mil: 6.38 A of 1 oz, 10.54 A of 2 oz (foil of 1.378 mil an ounce). */
    @ParameterizedTest
    @CsvSource({"0.035, 6.38", "0.070, 10.54"})
    void tracesCarryWhatTheirStandardSays(double thickness, double amps) {
        assertThat(Conductor.trace(2.54, thickness, 1).ratedAmps()).isCloseTo(amps, within(0.01));
    }

    /** Derating of wirewound and metal film resistors (MIL-R-39007, MIL-R-55182, as read in a derating table). */
    @ParameterizedTest
    @CsvSource({
        "WIREWOUND, 25, 1",
        "WIREWOUND, 110, 0.8",
        "WIREWOUND, 150, 0.6",
        "WIREWOUND, 240, 0.2",
        "WIREWOUND, 300, 0",
        "METAL_FILM, 70, 1",
        "METAL_FILM, 100, 0.6",
        "METAL_FILM, 130, 0.3",
        "METAL_FILM, 145, 0.1",
        "CARBON_FILM, 112.5, 0.5"
    })
    void resistorsAreDeratedAsTheirSheetsSay(ResistorStyle style, double celsius, double share) {
        assertThat(style.share(celsius)).isCloseTo(share, within(1e-9));
    }

    /** At its rating and 70 °C around it, a resistor's hottest spot is where its curve ends. */
    @ParameterizedTest
    @EnumSource(ResistorStyle.class)
    void hottestSpotIsWhereTheCurveEnds(ResistorStyle style) {
        assertThat(style.fullToCelsius() + 5 * style.kelvinPerWatt(5)).isCloseTo(style.hottestCelsius(), within(1e-9));
    }
}
