package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.contact;
import static fusetale.fault.FailureMode.BURNT;
import static fusetale.fault.FailureMode.CRACKED_JOINT;
import static fusetale.fault.FailureMode.OPEN;

import fusetale.circuit.Circuit;
import fusetale.circuit.Wire;
import fusetale.quantity.Unit;
import java.util.List;

/** Wires, board traces and joints worth suspecting; judgement, all three alike of a solder joint. */
final class WireFailures implements Failures<Wire> {
    @Override
    public String kind() {
        return "wire";
    }

    @Override
    public List<FaultForm> forms(Wire w) {
        FailureRate rate = FailureRate.JOINT;
        return new FormList(w.name(), kind())
                .whole(OPEN, OPENED, rate.judged(0.3))
                .whole(BURNT, contact(1), rate.judged(0.3))
                .whole(CRACKED_JOINT, contact(1000), rate.judged(0.4))
                .list();
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        return true;
    }

    @Override
    public Circuit apply(Failing<Wire> f) {
        Wire w = f.now();
        return switch (f.fault().mode()) {
            case OPEN, BURNT, CRACKED_JOINT ->
                f.replacedBy(new Wire(w.name(), w.one(), w.two(), f.exactly(Unit.OHM), w.ratedAmps(), w.about()));
            default -> throw f.unlisted();
        };
    }
}
