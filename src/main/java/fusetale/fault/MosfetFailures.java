package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.leak;
import static fusetale.fault.FailureMode.LEAKY;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.SHORT;

import fusetale.circuit.Circuit;
import fusetale.circuit.Mosfet;
import java.util.List;

/**
 * MOSFETs. Shares: FMD-91, "transistor, FET": short .51, open .05, the rest changes of output (from memory), divided among
 * the places by judgement; the gate's oxide, which a finger can break through, stands for the changes.
 */
final class MosfetFailures implements Failures<Mosfet> {
    @Override
    public List<FaultForm> forms(Mosfet q) {
        FailureRate rate = FailureRate.MOSFET;
        return new FormList(q.name())
                .at("ds", "D to S", SHORT, SHORTED, rate.share(0.40))
                .at("gs", "G to S", SHORT, SHORTED, rate.share(0.10))
                .at("dg", "D to G", SHORT, SHORTED, rate.share(0.10))
                .at("d", "drain", OPEN, OPENED, rate.share(0.04))
                .at("g", "gate", OPEN, OPENED, rate.share(0.04))
                .at("s", "source", OPEN, OPENED, rate.share(0.04))
                .at("gs", "G to S", LEAKY, leak(10e3), rate.share(0.20))
                .at("ds", "D to S", LEAKY, leak(1000), rate.share(0.08))
                .list();
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        return ThreePins.clash(a, b);
    }

    @Override
    public Circuit apply(Failing<Mosfet> f) {
        return f.fault().mode() == OPEN ? ThreePins.open(f) : ThreePins.across(f);
    }
}
