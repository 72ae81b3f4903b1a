package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.contact;
import static fusetale.fault.AmountRange.ratio;
import static fusetale.fault.FailureMode.CRACKED_JOINT;
import static fusetale.fault.FailureMode.DRIFTED;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.SHORT;

import fusetale.circuit.Circuit;
import fusetale.circuit.Resistor;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.List;

/**
 * Resistors. Shares of modes: FMD-91, rows "film" and, from 2 W up, "wirewound" (from memory). A short is a solder bridge
 * or a scrap of wire across it.
 */
final class ResistorFailures implements Failures<Resistor> {
    private static final double POWER_WATTS = 2;

    @Override
    public String kind() {
        return "resistor";
    }

    @Override
    public List<FaultForm> forms(Resistor r) {
        boolean power = r.ratedWatts().si() >= POWER_WATTS;
        FailureRate rate = power ? FailureRate.POWER_RESISTOR : FailureRate.RESISTOR;
        return new FormList(r.name(), kind())
                .whole(OPEN, OPENED, rate.share(power ? 0.65 : 0.59))
                .whole(DRIFTED, ratio(1.5, 0.01, 100), rate.share(power ? 0.26 : 0.36))
                .whole(SHORT, SHORTED, rate.share(power ? 0.09 : 0.05))
                .whole(CRACKED_JOINT, contact(1000), FailureRate.JOINT.judged(power ? 1 : 0.1))
                .list();
    }

    @Override
    public Circuit apply(Failing<Resistor> f) {
        Resistor r = f.now();
        return switch (f.fault().mode()) {
            case OPEN -> f.replacedBy(with(r, f.exactly(Unit.OHM)));
            case DRIFTED -> f.replacedBy(with(r, r.ohms().times(f.amountSi())));
            case SHORT -> f.across(r.one(), r.two());
            case CRACKED_JOINT -> f.inSeries(r, "one", f.amountSi());
            default -> throw f.unlisted();
        };
    }

    private static Resistor with(Resistor r, Toleranced ohms) {
        return new Resistor(r.name(), r.one(), r.two(), ohms, r.ratedWatts(), r.about());
    }
}
