package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.leak;
import static fusetale.fault.FailureMode.LEAKY;
import static fusetale.fault.FailureMode.NO_LATCH;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.SHORT;

import fusetale.circuit.Circuit;
import fusetale.circuit.Thyristor;
import java.util.List;

/**
 * Thyristors. Shares: FMD-91, "thyristor": failed off .45, short .40, open .10, failed on .05 (from memory); what fails off
 * is divided among gate and latching by judgement.
 */
final class ThyristorFailures implements Failures<Thyristor> {
    @Override
    public String kind() {
        return "thyristor";
    }

    @Override
    public List<FaultForm> forms(Thyristor q) {
        FailureRate rate = FailureRate.THYRISTOR;
        return new FormList(q.name(), kind())
                .at("ak", "A to K", SHORT, SHORTED, rate.share(0.40))
                .at("gk", "G to K", SHORT, SHORTED, rate.share(0.20))
                .at("ag", "A to G", SHORT, SHORTED, rate.share(0.03))
                .at("a", "anode", OPEN, OPENED, rate.share(0.05))
                .at("g", "gate", OPEN, OPENED, rate.share(0.15))
                .at("k", "cathode", OPEN, OPENED, rate.share(0.05))
                .at("ak", "A to K", LEAKY, leak(1000), rate.share(0.05))
                .at("gk", "G to K", LEAKY, leak(470), rate.share(0.03))
                .whole(NO_LATCH, null, rate.share(0.04))
                .list();
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        return ThreePins.clash(a, b);
    }

    @Override
    public Circuit apply(Failing<Thyristor> f) {
        Thyristor q = f.now();
        if (f.fault().mode() == NO_LATCH) {
            return f.replacedBy(new Thyristor(
                    q.name(), q.anode(), q.gate(), q.cathode(), q.model().withoutLatch(), q.about()));
        }
        return f.fault().mode() == OPEN ? ThreePins.open(f) : ThreePins.across(f);
    }
}
