package fusetale.fault;

import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.leak;
import static fusetale.fault.AmountRange.ratio;
import static fusetale.fault.FailureMode.DRIFTED;
import static fusetale.fault.FailureMode.LEAKY;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.SHORT;

import fusetale.circuit.Capacitor;
import fusetale.circuit.Circuit;
import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.List;

/** Film and ceramic capacitors. Shares of modes: FMD-91, row "ceramic" (from memory), change halved over two. */
final class CapacitorFailures implements Failures<Capacitor> {
    /** What a lead torn off leaves [F]: the stray of two wire ends. */
    static final Toleranced STRAY = new Toleranced(new Quantity(1e-12, Unit.FARAD), Tolerance.EXACT);

    @Override
    public String kind() {
        return "capacitor";
    }

    @Override
    public List<FaultForm> forms(Capacitor c) {
        FailureRate rate = FailureRate.CAPACITOR;
        return new FormList(c.name(), kind())
                .whole(SHORT, SHORTED, rate.share(0.49))
                .whole(OPEN, null, rate.share(0.22))
                .whole(LEAKY, leak(10e3), rate.share(0.145))
                .whole(DRIFTED, ratio(0.5, 0.01, 10), rate.share(0.145))
                .list();
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        return a.mode() == SHORT || b.mode() == SHORT || (a.mode() != LEAKY && b.mode() != LEAKY);
    }

    @Override
    public Circuit apply(Failing<Capacitor> f) {
        Capacitor c = f.now();
        return switch (f.fault().mode()) {
            case SHORT, LEAKY -> f.across(c.one(), c.two());
            case OPEN -> f.replacedBy(with(c, STRAY));
            case DRIFTED -> f.replacedBy(with(c, c.farads().times(f.amountSi())));
            default -> throw f.unlisted();
        };
    }

    private static Capacitor with(Capacitor c, Toleranced farads) {
        return new Capacitor(c.name(), c.one(), c.two(), farads, c.ratedVolts(), c.about());
    }
}
