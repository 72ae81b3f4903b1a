package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.signal.Waveform;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Periodic states of rectifiers against closed forms and recomputed curves; the source stands beside each. */
class RectifierReferenceTest {
    private static final double PEAK = 1000;
    private static final double LOAD = 100;

    /** Schade's circuit: a source behind Rs, ideal diodes, C beside RL. The source is 1 kV so that diode drops vanish. */
    private static Network schade(double omegaCr, int waves, double rsOverRl) {
        Network.Builder b = Network.builder("0");
        double farads = omegaCr / (2 * Math.PI * 60 * LOAD);
        for (int k = 0; k < waves; k++) {
            double phase = k * Math.PI;
            b.voltage("V" + k, "e" + k, "0", new SourceShape.Sine(0, PEAK, 60, phase));
            b.resistor("RS" + k, "e" + k, "a" + k, rsOverRl * LOAD);
            b.port("D" + k, "a" + k, "out", PlainJunction.nearlyIdeal());
        }
        b.capacitor("C", "out", "0", farads);
        b.resistor("RL", "out", "0", LOAD);
        return b.build();
    }

    // shared/reference/rectifiers.csv: Schade's circuit (Proc. IRE 31(7), 1943) recomputed; ±1 in the last digit, and
    // the ideal diode of the tests adds 14 mV in 1000 V.
    @ParameterizedTest
    @CsvFileSource(files = "shared/reference/rectifiers.csv")
    void capacitorInputRectifiersFollowSchade(
            double omegaCr, int waves, double rs, double vdc, double ripple, double ipk, double irms) {
        Network n = schade(omegaCr, waves, rs);
        // ten times the default accuracy: the table is good to its last digit, short pulses at default to 0.2 % r.m.s.
        PeriodicState p = Solve.periodic(n, PeriodicSettings.mains(60).withAccuracy(1e-5));
        Waveform out = p.volts(n.node("out"), 0);
        Waveform diode = p.amps("D0");
        assertThat(out.mean() / PEAK).isCloseTo(vdc, within(1.5e-4 + 3e-5));
        assertThat(100 * out.alternatingRms() / out.mean()).isCloseTo(ripple, within(0.0015 * ripple + 5e-4));
        assertThat(diode.highest() / diode.mean()).isCloseTo(ipk, within(0.004 * ipk));
        assertThat(diode.rms() / diode.mean()).isCloseTo(irms, within(0.0015 * irms));
    }

    @ParameterizedTest
    @CsvFileSource(files = "shared/reference/rectifiers.csv")
    void everyRowOfTheTableNamesItsSource(ArgumentsAccessor row) {
        assertThat(row.getString(7)).isNotBlank();
    }

    // Exact: the peak rectifier of Sedra and Smith, Microelectronic Circuits (5e Ex. 3.9; citation from memory), solved
    // without the book's approximations: half-wave, 100 V peak, 60 Hz, 10 kΩ, 83.333 μF, ideal diode. The book's own
    // rounded answer to the conduction is 3.18 % of the cycle.
    @Test
    void textbookPeakRectifierSolvedExactly() {
        Network n = Network.builder("0")
                .voltage("V", "a", "0", new SourceShape.Sine(0, 100, 60, 0))
                .port("D", "a", "out", new PlainJunction(1e-6, 2e-5, 1e-12))
                .capacitor("C", "out", "0", 83.333e-6)
                .resistor("R", "out", "0", 10e3)
                .build();
        PeriodicState p = Solve.periodic(n, PeriodicSettings.mains(60).withAccuracy(1e-9));
        Waveform out = p.volts(n.node("out"), 0);
        // the diode of this test drops 0.3 mV
        assertThat(out.peakToPeak()).isCloseTo(1.918, within(0.001));
        assertThat(out.mean()).isCloseTo(99.048, within(0.001));
        assertThat(out.lowest()).isCloseTo(98.082, within(0.001));
        // conducts for 11.423° of 360°
        Waveform diode = p.amps("D");
        double on = 0;
        for (int k = 0; k < diode.size(); k++) {
            on += diode.value(k) > 1e-3 ? diode.weight(k) : 0;
        }
        assertThat(on * 60).isCloseTo(11.423 / 360, within(3e-4));
    }

    // Exact: averages of rectified sines per volt of peak, as in any handbook (full-wave 2/π, form factor π/(2√2),
    // ripple 0.3078; half-wave 1/π, form factor π/2, ripple 0.3856).
    @ParameterizedTest
    @CsvSource({
        "2, 0.636620, 0.707107, 1.110721, 0.307758",
        "1, 0.318310, 0.500000, 1.570796, 0.385589",
    })
    void rectifiedSinesHaveTheirFormFactors(int waves, double mean, double rms, double form, double alternating) {
        Network.Builder b = Network.builder("0");
        for (int k = 0; k < waves; k++) {
            b.voltage("V" + k, "a" + k, "0", new SourceShape.Sine(0, PEAK, 60, k * Math.PI));
            b.port("D" + k, "a" + k, "out", PlainJunction.nearlyIdeal());
        }
        b.resistor("R", "out", "0", 1000);
        Network n = b.build();
        Waveform out = Solve.periodic(n).volts(n.node("out"), 0);
        assertThat(out.mean() / PEAK).isCloseTo(mean, within(2e-4));
        assertThat(out.rms() / PEAK).isCloseTo(rms, within(2e-4));
        assertThat(out.rms() / out.mean()).isCloseTo(form, within(3e-4));
        assertThat(out.alternatingRms() / PEAK).isCloseTo(alternating, within(2e-4));
    }

    // Independent trapezoidal nodal integration repeated at 5 000 to 20 000 steps a cycle, ±0.1 % (±0.5 digit as
    // printed):
    // 28 V behind 0.4 Ω, four legs of a 35 A bridge, 12 000 μF + 30 mΩ, 20 Ω; then leg 1 shorted by 1 mΩ.
    @ParameterizedTest
    @CsvSource({
        "0,    33.857, 0.934, 0.2773, 0.2667, 3.429, 8.745",
        "1e-3, 32.61,  1.977, 0.575,  0.553,  47.11, 94.5",
    })
    void bridgeSupplyHealthyAndWithAShortedLeg(
            double shortOhms, double vdc, double pp, double ac, double avg, double isec, double ipk) {
        Network n = Supplies.bridge(28, 20, shortOhms);
        PeriodicState p = Solve.periodic(n);
        Waveform out = p.volts(n.node("plus"), 0);
        assertThat(out.mean()).isCloseTo(vdc, within(0.001 * vdc));
        assertThat(out.peakToPeak()).isCloseTo(pp, within(0.002 * pp));
        assertThat(out.alternatingRms()).isCloseTo(ac, within(0.0015 * ac));
        assertThat(Waveform.SINE_FORM_FACTOR * out.alternatingRectifiedMean()).isCloseTo(avg, within(0.0015 * avg));
        assertThat(p.amps("V").rms()).isCloseTo(isec, within(0.001 * isec));
        assertThat(Math.max(p.amps("V").highest(), -p.amps("V").lowest())).isCloseTo(ipk, within(0.001 * ipk));
    }

    // The same integration.
    @ParameterizedTest
    @CsvSource({"0, 0", "1e-3, 28.03"})
    void aShortedLegDrivesDirectCurrentThroughTheWinding(double shortOhms, double isecDc) {
        PeriodicState p = Solve.periodic(Supplies.bridge(28, 20, shortOhms));
        assertThat(Math.abs(p.amps("V").mean())).isCloseTo(isecDc, within(0.001 * isecDc + 1e-6));
    }
}
