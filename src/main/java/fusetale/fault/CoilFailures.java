package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.partlyOpen;
import static fusetale.fault.AmountRange.ratio;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.PARTLY_OPEN;
import static fusetale.fault.FailureMode.SHORT;
import static fusetale.fault.FailureMode.SHORTED_TURNS;

import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.quantity.Unit;
import java.util.List;

/**
 * Solenoids of one winding. FMD-91 gives short .52 and open .05 with the rest slow (from memory); here shorts are split
 * between the whole winding and some of its turns, by judgement.
 *
 * <p>Shorted turns with a share k of the turns left: resistance × k, inductance × k² (turns squared on the same core). That
 * the dead turns also damp the living ones while the current changes is left out: steady currents are right, the first
 * milliseconds of a pulse are not. The plunger asks for the ampere turns it always asked for, so that its currents go with
 * 1/k. Partly open: the wire has all but parted, at a corroded end or where it broke and still
 * touches, so that the winding measures more than it should; its turns are all there.
 */
final class CoilFailures implements Failures<Coil> {
    @Override
    public String kind() {
        return "coil";
    }

    @Override
    public List<FaultForm> forms(Coil c) {
        FailureRate rate = FailureRate.COIL;
        return new FormList(c.name(), kind())
                .whole(OPEN, OPENED, rate.share(0.30))
                .whole(PARTLY_OPEN, partlyOpen(c.ohms().si()), rate.judged(0.05))
                .whole(SHORT, SHORTED, rate.share(0.15))
                .whole(SHORTED_TURNS, ratio(0.7, 0.02, 0.99), rate.share(0.50))
                .list();
    }

    @Override
    public Circuit apply(Failing<Coil> f) {
        Coil c = f.now();
        double left = f.amountSi();
        return switch (f.fault().mode()) {
            case OPEN, PARTLY_OPEN -> f.replacedBy(c.rewound(f.exactly(Unit.OHM), c.henries(), 1));
            case SHORT -> f.across(c.one(), c.two());
            case SHORTED_TURNS ->
                f.replacedBy(c.rewound(c.ohms().times(left), c.henries().times(left * left), left));
            default -> throw f.unlisted();
        };
    }
}
