package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Unit;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** What the keys become: units, defaults and where those come from. */
class ReadValuesTest {
    private static Circuit circuit(String text) {
        CircuitFile file = Sample.read(text);
        return Objects.requireNonNull(file.circuit(), file.problems()::toString);
    }

    /** C1 of the sample as another part. */
    private static Part part(String keys) {
        return circuit(Sample.with("{is: capacitor, between: [out, gnd], value: 100 nF, volts: 63 V}", keys))
                .part("C1")
                .orElseThrow();
    }

    @Test
    void everyKindOfPartCanBeWritten() {
        assertThat(PartKinds.ALL.stream().<Class<?>>map(PartKind::type).toList())
                .containsExactlyInAnyOrder(Part.class.getPermittedSubclasses());
    }

    @Test
    void partKnowsItsLineAndWhereItSits() {
        Part part = part("{is: resistor, between: [out, gnd], value: 1k, note: under the table, mounting: free air}");

        assertThat(part.about())
                .isEqualTo(new About("under the table", "free air", 8, new Make.Body(ResistorStyle.CARBON_FILM)));
    }

    @Test
    void mainsRangeIsEightPerCentWhereNotSaid() {
        Mains mains = circuit(Sample.TEXT).mains();

        assertThat(mains.lowestVolts().si()).isCloseTo(110.4, within(1e-9));
        assertThat(mains.highestVolts().si()).isCloseTo(129.6, within(1e-9));
    }

    @Test
    void arrangementMaySetItsOwnFrequency() {
        Circuit circuit = circuit(Sample.with("power on: {power: on}", "power on: {power: on, hertz: 25 kHz}"));

        assertThat(circuit.settings().get(0).mainsHertz()).isEqualTo(new Quantity(25e3, Unit.HERTZ));
        assertThat(circuit.settings().get(1).mainsHertz()).isNull();
    }

    @Test
    void amplifierHasFifteenVoltsEitherWayWhereNotSaid() {
        OpAmp amplifier = (OpAmp) part("{is: op-amp, plus: out, minus: gnd, out: raw, model: op-amp-bipolar}");

        // rails of ±15 V less the headroom of the model
        assertThat(amplifier.highestVolts()).isEqualTo(13.5);
        assertThat(amplifier.lowestVolts()).isEqualTo(-13.5);
    }

    @Test
    void toleranceBehindTheValueCounts() {
        Coil coil = (Coil) part("{is: coil, between: [out, gnd], ohms: 8 ohm -5..+10 %, inductance: 25 mH}");

        assertThat(coil.ohms().tolerance()).isEqualTo(new Tolerance(-0.05, 0.10));
    }

    @Test
    void toleranceInItsOwnKeyCounts() {
        Coil coil = (Coil) part("{is: coil, between: [out, gnd], ohms: 8 ohm, tolerance: ±3 %, inductance: 25 mH}");

        assertThat(coil.ohms().tolerance()).isEqualTo(new Tolerance(-0.03, 0.03));
    }

    /** ESR = tan δ/(2π·f·C): 4700 µF, 0.20 at 120 Hz gives 56.4 mΩ (closed form). */
    @Test
    void electrolyticHasTheSeriesResistanceOfItsLossFactor() {
        Electrolytic can =
                (Electrolytic) part("{is: electrolytic, plus: out, minus: gnd, value: 4700 uF, volts: 25 V}");

        assertThat(can.seriesOhms().si()).isCloseTo(56.4e-3, within(0.05e-3));
    }

    /** 3·√(C·V) µA: 12 000 µF at 63 V leaks 2.61 mA (makers' limit for large cans), which is 24.1 kΩ. */
    @Test
    void electrolyticLeaksAsLargeCansDo() {
        Electrolytic can =
                (Electrolytic) part("{is: electrolytic, plus: out, minus: gnd, value: 12000 uF, volts: 63 V}");

        assertThat(63 / can.leakageOhms().si()).isCloseTo(2.61e-3, within(0.005e-3));
    }

    @Test
    void electrolyticCanMayStrayFurtherUpThanDown() {
        Electrolytic can =
                (Electrolytic) part("{is: electrolytic, plus: out, minus: gnd, value: 4700 uF, volts: 25 V}");

        assertThat(can.farads().tolerance()).isEqualTo(new Tolerance(-0.2, 0.5));
    }

    /** Cold resistance of a 2 A time-delay link 6.3x32: 170 mΩ (datasheet class, table of the part models). */
    @Test
    void fuseTakesItsColdResistanceFromTheTable() {
        Fuse fuse = (Fuse) part("{is: fuse, between: [out, gnd], rating: 2 A, speed: slow}");

        assertThat(fuse.fitted().coldOhms().si()).isCloseTo(0.170, within(1e-12));
        assertThat(fuse.fitted()).isEqualTo(fuse.marked());
    }

    @Test
    void fuseFoundWithAnotherRatingKeepsItsMarking() {
        Fuse fuse = (Fuse) part("{is: fuse, between: [out, gnd], rating: 6 A, speed: slow, fitted: 25 A}");

        assertThat(fuse.marked().ratedAmps().si()).isEqualTo(6);
        assertThat(fuse.fitted().ratedAmps().si()).isEqualTo(25);
        assertThat(fuse.fitted().coldOhms().si())
                .isLessThan(fuse.marked().coldOhms().si());
    }

    /** Between 1 A, 100 mΩ and 4 A, 25 mΩ a power law gives 50 mΩ at 2 A (closed form: resistance as 1/rating). */
    /** No table has this size: the fitted link's resistance is measured and stated, of the one that is not there nobody knows. */
    @Test
    void aMarkedLinkNeedsNoTableWhereAnotherIsFitted() {
        Fuse fuse = (Fuse) part(
                "{is: fuse, between: [out, gnd], rating: 5 A, speed: slow, size: 6.3x25, fitted: 10 A, cold: 12 mohm}");

        assertThat(fuse.fitted().coldOhms().si()).isCloseTo(0.012, within(1e-12));
        assertThat(fuse.marked().ratedAmps().si()).isEqualTo(5);
        // 120 mV at the rated current of either
        assertThat(fuse.marked().coldOhms().si()).isCloseTo(0.024, within(1e-12));
    }

    @Test
    void fuseTableIsReadOnLogarithmicScales() {
        FuseTable table = new FuseTable(
                FuseLink.Standard.IEC_60127,
                FuseLink.Speed.QUICK,
                "5x20",
                java.util.List.of(new FuseTable.Row(4, 0.025), new FuseTable.Row(1, 0.100)),
                java.util.List.of());

        assertThat(table.coldOhms(2)).isCloseTo(0.050, within(1e-12));
    }

    @Test
    void zenerVoltageIsTheModelsWhereNotSaid() {
        Zener zener = (Zener) part("{is: zener, anode: gnd, cathode: out, model: 1N4742A}");

        // JEDEC 1N4742A: 12 V, suffix A 5 %
        assertThat(zener.volts().si()).isEqualTo(12);
        assertThat(zener.volts().tolerance()).isEqualTo(new Tolerance(-0.05, 0.05));
    }

    @Test
    void tapsOfAWindingAreNumberedInOrder() {
        Circuit circuit = circuit(Sample.with("pins: [raw, gnd]", "pins: [raw, gnd, out]"));

        assertThat(circuit.part("T1").orElseThrow().pins())
                .contains(new Pin("sec.2", new Net("gnd")), new Pin("sec.3", new Net("out")));
    }

    /** 4 % of the rated primary current: 12 V · 5 A / 120 V is 0.5 A, 4 % of it 20 mA (common practice). */
    @Test
    void magnetisingCurrentFollowsFromTheRatedPower() {
        Transformer transformer =
                (Transformer) circuit(Sample.with("volts: 12 V, ohms: 1 ohm", "volts: 12 V, ohms: 1 ohm, amps: 5 A"))
                        .part("T1")
                        .orElseThrow();

        assertThat(transformer.magnetics().magnetisingAmps().si()).isCloseTo(0.020, within(1e-12));
    }

    @Test
    void testPointIsAgainstGroundWhereNotSaid() {
        TestPoint point = circuit(Sample.TEXT).point("TP1").orElseThrow();

        assertThat(point.against()).isEqualTo(new Net("gnd"));
    }

    @Test
    void expectedReadingKeepsItsSign() {
        TestPoint point = circuit(Sample.with("label: output", "label: output, expect: {d.c. volts: -100 V ±20 %}"))
                .point("TP1")
                .orElseThrow();

        assertThat(point.expect().get(MeterFunction.DC_VOLTS)).isNotNull().satisfies(t -> {
            assertThat(t.si()).isEqualTo(-100);
            assertThat(t.tolerance()).isEqualTo(new Tolerance(-0.2, 0.2));
        });
    }

    @Test
    void connectorPinMayBeWrittenAsAList() {
        Circuit circuit = circuit(Sample.with("{board: out, harness: raw}", "[board: out, harness: raw]"));

        assertThat(circuit.connectors()).isEqualTo(circuit(Sample.TEXT).connectors());
    }

    @Test
    void arrangementsAreKeptInOrder() {
        assertThat(circuit(Sample.TEXT).settings())
                .extracting(BenchSetting::name)
                .containsExactly("power on", "power off");
    }

    @Test
    void circuitWithoutArrangementsHasPowerOnAndOff() {
        String text = Sample.TEXT.replaceAll("(?s)arrangements:.*drawing:", "drawing:");

        assertThat(circuit(text).settings())
                .extracting(BenchSetting::name, BenchSetting::powerOn)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("power on", true),
                        org.assertj.core.groups.Tuple.tuple("power off", false));
    }

    /** Ripple rejection 78 dB is a ratio of 10^(78/20), about 7943 (definition of the decibel). */
    @Test
    void decibelsBecomeARatioOfVoltages() {
        assertThat(PartLibrary.shipped().regulators().get("5V-1A"))
                .isNotNull()
                .satisfies(m -> assertThat(m.rippleRejectionRatio()).isCloseTo(7943.28, within(0.01)));
    }

    @Test
    void ratingThatIsNotStatedIsNeverExceeded() {
        assertThat(PartLibrary.shipped().zeners().get("1N4733A"))
                .isNotNull()
                .satisfies(m -> assertThat(m.ratings().surgeAmps()).isInfinite());
    }

    @Test
    void everyShippedModelSaysWhereItsFiguresAreFrom() {
        PartLibrary library = PartLibrary.shipped();

        assertThat(library.diodes().values())
                .allSatisfy(m -> assertThat(m.ratings().sources()).isNotEmpty());
        assertThat(library.transistors().values())
                .allSatisfy(m -> assertThat(m.ratings().sources()).isNotEmpty());
        assertThat(library.fuses().values())
                .allSatisfy(t -> assertThat(t.sources()).isNotEmpty());
    }

    @Test
    void modelNamedTwiceIsToldWithTheFirst() {
        String one = "format: 1\nfuses:\n  slow: {standard: IEC 60127, speed: slow, size: 5x20, rows: [[1 A, 1 ohm]],"
                + " sources: [from memory]}\n";

        assertThat(PartFiles.read(new java.util.TreeMap<>(Map.of("a.yaml", one, "b.yaml", one)))
                        .problems())
                .extracting(Problem::toString)
                .containsExactly("b.yaml:3: slow: this name is already taken at a.yaml:3.");
    }
}
