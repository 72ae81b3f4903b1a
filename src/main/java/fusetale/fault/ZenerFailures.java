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
import fusetale.circuit.Zener;
import java.util.List;

/** Zener diodes. Shares of modes: FMD-91, row "zener regulator" (from memory), its parameter change halved over two. */
final class ZenerFailures implements Failures<Zener> {
    @Override
    public String kind() {
        return "zener";
    }

    @Override
    public List<FaultForm> forms(Zener z) {
        FailureRate rate = FailureRate.ZENER;
        return new FormList(z.name(), kind())
                .whole(SHORT, SHORTED, rate.share(0.20))
                .whole(OPEN, OPENED, rate.share(0.45))
                .whole(LEAKY, leak(DiodeFailures.LEAK_OHMS), rate.share(0.175))
                .whole(DRIFTED, ratio(0.85, 0.1, 3), rate.share(0.175))
                .whole(REVERSED, null, FailureRate.HANDS.judged(1))
                .list();
    }

    @Override
    public Circuit apply(Failing<Zener> f) {
        Zener z = f.now();
        return switch (f.fault().mode()) {
            case SHORT, LEAKY -> f.across(z.anode(), z.cathode());
            case OPEN -> f.inSeries(z, "anode", f.amountSi());
            case DRIFTED ->
                f.replacedBy(new Zener(
                        z.name(), z.anode(), z.cathode(), z.model(), z.volts().times(f.amountSi()), z.about()));
            case REVERSED -> f.exchanged(z, "anode", "cathode");
            default -> throw f.unlisted();
        };
    }
}
