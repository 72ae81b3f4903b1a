package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.leak;
import static fusetale.fault.FailureMode.LEAKY;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.REVERSED;
import static fusetale.fault.FailureMode.SHORT;

import fusetale.circuit.Circuit;
import fusetale.circuit.Diode;
import fusetale.circuit.DiodeModel;
import java.util.List;

/** Rectifier and signal diodes. Shares of modes: FMD-91, rows "diode, rectifier" and "small signal" (from memory). */
final class DiodeFailures implements Failures<Diode> {
    /** Below this average current [A] a diode counts as a signal diode. */
    private static final double RECTIFIER_AMPS = 0.5;

    /** A leaky junction [Ω]: judgement, enough to warm a rectifier and to fool an ohmmeter. */
    static final double LEAK_OHMS = 470;

    @Override
    public List<FaultForm> forms(Diode d) {
        FailureRate rate = rate(d.model());
        boolean signal = rate == FailureRate.SIGNAL_DIODE;
        return new FormList(d.name())
                .whole(SHORT, SHORTED, rate.share(signal ? 0.18 : 0.51))
                .whole(OPEN, OPENED, rate.share(signal ? 0.24 : 0.29))
                .whole(LEAKY, leak(LEAK_OHMS), rate.share(signal ? 0.58 : 0.20))
                .whole(REVERSED, null, FailureRate.HANDS.share(1))
                .list();
    }

    /** Which row of the handbook a junction belongs to. */
    static FailureRate rate(DiodeModel model) {
        return model.ratings().averageAmps() < RECTIFIER_AMPS ? FailureRate.SIGNAL_DIODE : FailureRate.RECTIFIER;
    }

    @Override
    public Circuit apply(Failing<Diode> f) {
        Diode d = f.now();
        return switch (f.fault().mode()) {
            case SHORT, LEAKY -> f.across(d.anode(), d.cathode());
            case OPEN -> f.inSeries(d, "anode", f.amountSi());
            case REVERSED -> f.exchanged(d, "anode", "cathode");
            default -> throw f.unlisted();
        };
    }
}
