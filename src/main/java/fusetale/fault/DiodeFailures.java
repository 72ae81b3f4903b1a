package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.leak;
import static fusetale.fault.AmountRange.ratio;
import static fusetale.fault.FailureMode.DRIFTED;
import static fusetale.fault.FailureMode.LEAKY;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.REVERSED;
import static fusetale.fault.FailureMode.SHORT;

import fusetale.circuit.Circuit;
import fusetale.circuit.Diode;
import fusetale.circuit.DiodeModel;
import java.util.List;

/**
 * Rectifier and signal diodes, light-emitting ones among the latter. Shares of modes: FMD-91, rows "diode, rectifier" and
 * "small signal" (from memory), the latter's parameter change halved over leaky and drifted. Drifted: the forward voltage at
 * every current is so many times what it was.
 */
final class DiodeFailures implements Failures<Diode> {
    /** Below this average current [A] a diode counts as a signal diode. */
    private static final double RECTIFIER_AMPS = 0.5;

    /** A leaky junction [Ω]: judgement, enough to warm a rectifier and to fool an ohmmeter. */
    static final double LEAK_OHMS = 470;

    @Override
    public String kind() {
        return "diode";
    }

    @Override
    public List<FaultForm> forms(Diode d) {
        FailureRate rate = rate(d.model());
        boolean signal = rate == FailureRate.SIGNAL_DIODE;
        FormList list = new FormList(d.name(), kind())
                .whole(SHORT, SHORTED, rate.share(signal ? 0.18 : 0.51))
                .whole(OPEN, OPENED, rate.share(signal ? 0.24 : 0.29))
                .whole(LEAKY, leak(LEAK_OHMS), rate.share(signal ? 0.29 : 0.20));
        if (signal) {
            list.whole(DRIFTED, ratio(1.3, 0.5, 3), rate.share(0.29));
        }
        return list.whole(REVERSED, null, FailureRate.HANDS.judged(1)).list();
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
            case DRIFTED ->
                f.replacedBy(new Diode(
                        d.name(), d.anode(), d.cathode(), d.model().withForwardVoltsTimes(f.amountSi()), d.about()));
            case REVERSED -> f.exchanged(d, "anode", "cathode");
            default -> throw f.unlisted();
        };
    }
}
