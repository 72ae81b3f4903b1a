package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.ratio;
import static fusetale.fault.FailureMode.DRIFTED;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.SHORT;

import fusetale.circuit.Circuit;
import fusetale.circuit.Controller;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.List;

/** The logic board as a load: dead (its supply open), drawing too much or too little, or shorted. Judgement. */
final class ControllerFailures implements Failures<Controller> {
    @Override
    public List<FaultForm> forms(Controller u) {
        FailureRate rate = FailureRate.LOGIC;
        return new FormList(u.name())
                .whole(OPEN, OPENED, rate.share(0.5))
                .said("is dead", "is dead, {}")
                .whole(DRIFTED, ratio(1.5, 0.05, 10), rate.share(0.3))
                .said("draws a wrong current", "draws {} of nominal")
                .whole(SHORT, AmountRange.ohms(0.5, 1e-3, 10), rate.share(0.2))
                .list();
    }

    @Override
    public Circuit apply(Failing<Controller> f) {
        Controller u = f.now();
        return switch (f.fault().mode()) {
            case OPEN -> f.inSeries(u, "supply", f.amountSi());
            case SHORT -> f.across(u.supply(), u.ground());
            case DRIFTED -> f.replacedBy(drawing(u, u.ratedAmps().si() * f.amountSi()));
            default -> throw f.unlisted();
        };
    }

    private static Controller drawing(Controller u, double amps) {
        return new Controller(
                u.name(),
                u.supply(),
                u.ground(),
                u.ratedVolts(),
                new Quantity(amps, Unit.AMPERE),
                u.resetBelowVolts(),
                u.checks(),
                u.about());
    }
}
