package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.ohms;
import static fusetale.fault.AmountRange.partlyOpen;
import static fusetale.fault.AmountRange.ratio;
import static fusetale.fault.FailureMode.BURNT;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.PARTLY_OPEN;
import static fusetale.fault.FailureMode.SHORT;
import static fusetale.fault.FailureMode.SHORTED_TURNS;
import static fusetale.fault.FailureMode.STUCK_OFF;
import static fusetale.fault.FailureMode.STUCK_ON;

import fusetale.circuit.Circuit;
import fusetale.circuit.DualCoil;
import fusetale.circuit.EndOfStroke;
import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.List;

/**
 * Coils of a strong and a holding winding with an end-of-stroke switch. Shares of modes: judgement; the switch, which arcs
 * at every stroke, goes first. Shorted turns and partly open windings as in {@link CoilFailures}. A burnt switch contact stands in series with the
 * strong winding, which is where its current goes while it is closed; while it is open the little it adds is far below the
 * holding winding.
 */
final class DualCoilFailures implements Failures<DualCoil> {
    private static final String POWER = "power";
    private static final String HOLD = "hold";

    /** Place of the end-of-stroke switch. */
    static final String SWITCH = "switch";

    @Override
    public String kind() {
        return "dual coil";
    }

    @Override
    public List<FaultForm> forms(DualCoil c) {
        FailureRate rate = FailureRate.COIL;
        AmountRange turns = ratio(0.7, 0.02, 0.99);
        String power = "power winding";
        String hold = "hold winding";
        String stroke = "end-of-stroke switch";
        return new FormList(c.name(), kind())
                .at(POWER, power, OPEN, OPENED, rate.judged(0.08))
                .at(POWER, power, PARTLY_OPEN, partlyOpen(c.powerOhms().si()), rate.judged(0.02))
                .at(POWER, power, SHORTED_TURNS, turns, rate.judged(0.2))
                .at(HOLD, hold, OPEN, OPENED, rate.judged(0.25))
                .at(HOLD, hold, PARTLY_OPEN, partlyOpen(c.holdOhms().si()), rate.judged(0.05))
                .at(HOLD, hold, SHORT, SHORTED, rate.judged(0.1))
                .at(HOLD, hold, SHORTED_TURNS, turns, rate.judged(0.3))
                .at(SWITCH, stroke, STUCK_ON, null, FailureRate.CONTACT.judged(1))
                .at(SWITCH, stroke, STUCK_OFF, null, FailureRate.CONTACT.judged(1))
                .at(SWITCH, stroke, BURNT, ohms(5, 0.05, 20), FailureRate.CONTACT.judged(1))
                .whole(SHORT, SHORTED, rate.judged(0.1))
                .list();
    }

    @Override
    public Circuit apply(Failing<DualCoil> f) {
        DualCoil c = f.now();
        return switch (f.fault().mode()) {
            case OPEN, PARTLY_OPEN, SHORTED_TURNS ->
                f.replacedBy(f.fault().place().equals(POWER) ? power(f) : hold(f));
            case SHORT -> f.fault().place().equals(HOLD) ? f.replacedBy(shortedHold(f)) : f.across(c.one(), c.two());
            case STUCK_ON -> f.replacedBy(c.with(EndOfStroke.STUCK_CLOSED));
            case STUCK_OFF -> f.replacedBy(c.with(EndOfStroke.STUCK_OPEN));
            case BURNT -> f.replacedBy(c.withPower(more(c.powerOhms(), f.amountSi()), c.powerHenries()));
            default -> throw f.unlisted();
        };
    }

    private static Toleranced more(Toleranced ohms, double extra) {
        return new Toleranced(new Quantity(ohms.si() + extra, Unit.OHM), ohms.tolerance());
    }

    private static DualCoil power(Failing<DualCoil> f) {
        DualCoil c = f.now();
        double k = f.amountSi();
        return f.fault().mode() != SHORTED_TURNS
                ? c.withPower(f.exactly(Unit.OHM), c.powerHenries())
                : c.withPower(c.powerOhms().times(k), c.powerHenries().times(k * k));
    }

    /** A short across the winding takes its inductance away as well: what is left of it keeps no field. */
    private static DualCoil shortedHold(Failing<DualCoil> f) {
        DualCoil c = f.now();
        double k = Math.min(1, f.amountSi() / c.holdOhms().si());
        return c.withHold(f.exactly(Unit.OHM), c.holdHenries().times(k * k));
    }

    private static DualCoil hold(Failing<DualCoil> f) {
        DualCoil c = f.now();
        double k = f.amountSi();
        return f.fault().mode() != SHORTED_TURNS
                ? c.withHold(f.exactly(Unit.OHM), c.holdHenries())
                : c.withHold(c.holdOhms().times(k), c.holdHenries().times(k * k));
    }
}
