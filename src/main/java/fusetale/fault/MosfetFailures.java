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
 *
 * <p>A gate that is open does not keep what it had: what dirt and damp leak from it to the source takes it to the source's
 * voltage in the end, and the transistor is off. That leak is taken as {@link #FLOATING_GATE_OHMS}, by judgement.
 */
final class MosfetFailures implements Failures<Mosfet> {
    /** Leak of a board around a gate that nothing drives [Ω], against {@link Failing#OPEN_OHMS} to what drove it. */
    private static final double FLOATING_GATE_OHMS = 5e6;

    @Override
    public String kind() {
        return "mosfet";
    }

    @Override
    public List<FaultForm> forms(Mosfet q) {
        FailureRate rate = FailureRate.MOSFET;
        return new FormList(q.name(), kind())
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
        if (f.fault().mode() != OPEN) {
            return ThreePins.across(f);
        }
        Mosfet q = f.now();
        if (!f.fault().place().equals("g")) {
            return ThreePins.open(f);
        }
        Mosfet dirty =
                new Mosfet(q.name(), q.drain(), q.gate(), q.source(), q.model().leaking(FLOATING_GATE_OHMS), q.about());
        return f.inSeries(dirty, "gate", f.amountSi());
    }
}
