package fusetale.bench;

import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.electrolytic;
import static fusetale.model.PartsBox.resistor;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Capacitors that charge or discharge through the meter, beside the closed forms of an RC circuit. */
class ChargedCapacitorsTest {
    private static final Meter METER = Meter.trueRms4000();

    private static Seen look(Circuit circuit, Arrangement arrangement, MeterFunction function) {
        return BridgeSupplyTest.look(circuit, arrangement, METER, List.of(new Check("a", "gnd", function)));
    }

    private static Reading read(Circuit circuit, Arrangement arrangement, MeterFunction function) {
        return look(circuit, arrangement, function).readings().get(0);
    }

    private static Circuit rc(double ohms, double farads) {
        return circuit(120, 1, resistor("R1", "a", "gnd", ohms), electrolytic("C1", "a", "gnd", farads, 1e-3));
    }

    /**
     * Ohms of R beside C on the lowest range, 3.2 V behind 3200 + 0.2 ohm: v = V∞·(1 − e^(−t/τ)), τ = (R ∥ 3200.2)·C, and the
     * display shows v/i: after 3 s less than R, R in the end.
     */
    @ParameterizedTest
    @CsvSource({"300, 0.01", "150, 0.03", "390, 0.0047"})
    void ohmsClimbAsACapacitorCharges(double ohms, double farads) {
        double source = 3200.2;
        double seconds = 1 / (1 / ohms + 1 / source) * farads;
        double across = 3.2 * ohms / (ohms + source) * (1 - Math.exp(-3 / seconds));
        double shown = across / ((3.2 - across) / source) + 0.2;

        Reading reading = read(rc(ohms, farads), Arrangement.unpowered(), MeterFunction.OHMS);

        Climbing climbing = Objects.requireNonNull(reading.climbing());
        assertThat(reading.value()).isCloseTo(ohms + 0.2, within(0.05));
        assertThat(climbing.after().value()).isCloseTo(shown, within(0.002 * shown + 0.05));
        assertThat(climbing.falling()).isFalse();
    }

    /** 1 mA into 30 mF: V = I·t/C = 0.1 V after 3 s (less the little that the current falls by: 1.2 mA shorted). */
    @Test
    void constantCurrentBringsVoltsInProportionToTime() {
        Circuit circuit = circuit(120, 1, electrolytic("C1", "a", "gnd", 0.03, 1e-3));

        Climbing climbing = Objects.requireNonNull(
                read(circuit, Arrangement.unpowered(), MeterFunction.DIODE_TEST).climbing());

        assertThat(climbing.after().value()).isCloseTo(1.2e-3 * 3 / 0.03, within(0.004));
    }

    @Test
    void smallCapacitorsHaveSettledLongBefore() {
        assertThat(read(rc(300, 1e-6), Arrangement.unpowered(), MeterFunction.OHMS)
                        .climbing())
                .isNull();
    }

    /** v = V0·e^(−t/RC), 10 Mohm of the meter beside R: 8 V on 470 ohm and 12 mF fall to 4.70 V in 3 s. */
    @ParameterizedTest
    @CsvSource({"8, 470, 0.012", "30, 1000, 0.0047", "-5, 2200, 0.001"})
    void chargedCapacitorFallsThroughItsBleeder(double volts, double ohms, double farads) {
        double r = 1 / (1 / ohms + 1e-7);

        Reading reading =
                read(rc(ohms, farads), Arrangement.unpowered().withCharged("C1", volts), MeterFunction.DC_VOLTS);

        assertThat(reading.value()).isCloseTo(volts * Math.exp(-3 / (r * farads)), within(2e-4 * Math.abs(volts)));
        assertThat(Objects.requireNonNull(reading.climbing()).settled().value()).isCloseTo(0, within(1e-3));
    }

    /** 8 V drive the current of a source of 3.2 V backwards: OL, while the same resistor discharged reads its value. */
    @Test
    void chargeFalsifiesOhmsAndIsSaidTo() {
        Seen seen = look(rc(300, 0.1), Arrangement.unpowered().withCharged("C1", 8), MeterFunction.OHMS);

        assertThat(seen.readings().get(0).shows()).isEqualTo("OL");
        assertThat(Objects.requireNonNull(seen.readings().get(0).climbing())
                        .settled()
                        .shows())
                .isEqualTo("300.2 Ω");
        assertThat(seen.remarks())
                .anySatisfy(r -> assertThat(r).contains("C1 holds 8 V").contains("discharge it first"));
    }

    /** The meter stands 600 V between its jacks on ohms; less than that only misleads. */
    @ParameterizedTest
    @CsvSource({"200, false", "700, true"})
    void chargeThatMayDestroyTheMeterIsSaidTo(double volts, boolean destroys) {
        Seen seen = look(rc(1e6, 1e-4), Arrangement.unpowered().withCharged("C1", volts), MeterFunction.DIODE_TEST);

        assertThat(seen.remarks().stream().anyMatch(r -> r.contains("may destroy the meter")))
                .isEqualTo(destroys);
    }

    /** Points that do not feel the charge read as if there were none. */
    @Test
    void chargeElsewhereIsNotFelt() {
        Circuit circuit = circuit(
                120,
                1,
                resistor("R1", "a", "gnd", 300),
                resistor("R2", "b", "gnd", 1000),
                electrolytic("C1", "b", "gnd", 0.01, 1e-3));

        assertThat(read(circuit, Arrangement.unpowered().withCharged("C1", 8), MeterFunction.OHMS)
                        .shows())
                .isEqualTo("300.2 Ω");
    }

    @Test
    void onlyCapacitorsAndOnlyWithThePowerOff() {
        Circuit circuit = rc(300, 0.01);

        assertThatThrownBy(() -> Arrangement.unpowered().withCharged("R1", 8).appliedTo(circuit))
                .hasMessageContaining("no capacitor R1")
                .hasMessageContaining("C1");
        assertThatThrownBy(
                        () -> Arrangement.powered(circuit).withCharged("C1", 8).appliedTo(circuit))
                .hasMessageContaining("only with the power off");
        assertThatThrownBy(() -> Arrangement.unpowered().withCharged("C1", 5000).appliedTo(circuit))
                .hasMessageContaining("1000 V");
    }
}
