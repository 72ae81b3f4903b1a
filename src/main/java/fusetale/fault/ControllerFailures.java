package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.ratio;
import static fusetale.fault.FailureMode.DRIFTED;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.SHORT;

import fusetale.circuit.Circuit;
import fusetale.circuit.Controller;
import fusetale.circuit.Net;
import fusetale.circuit.Rewiring;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.List;

/**
 * The logic board as a load: dead (its supply open), drawing too much or too little, or shorted; and the inputs of its
 * start-up checks, any of which may be open. Shares: judgement. An open input is taken to be pulled to the board's ground by
 * {@link #INPUT_OHMS}, so that the check sees next to nothing and fails.
 */
final class ControllerFailures implements Failures<Controller> {
    private static final String CHECK = "check";

    /** What an input that nothing drives leaks to ground through [Ω]; judgement, against {@link Failing#OPEN_OHMS}. */
    private static final double INPUT_OHMS = 1e6;

    @Override
    public String kind() {
        return "controller";
    }

    @Override
    public List<FaultForm> forms(Controller u) {
        FailureRate rate = FailureRate.LOGIC;
        FormList list = new FormList(u.name(), kind())
                .whole(OPEN, OPENED, rate.judged(0.5))
                .said("is dead", "is dead, {}")
                .whole(DRIFTED, ratio(1.5, 0.05, 10), rate.judged(0.3))
                .said("draws a wrong current", "draws {} of nominal")
                .whole(SHORT, AmountRange.ohms(0.5, 1e-3, 10), rate.judged(0.2));
        for (int k = 1; k <= u.checks().size(); k++) {
            list.at(CHECK + k, "check " + k, OPEN, OPENED, rate.judged(0.1))
                    .said("has its input open", "has its input open, {}")
                    .told(CHECK)
                    .detailed(u.checks().get(k - 1).label());
        }
        return list.list();
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        return a.place().isEmpty() && b.place().isEmpty();
    }

    @Override
    public Circuit apply(Failing<Controller> f) {
        Controller u = f.now();
        if (f.fault().place().startsWith(CHECK)) {
            return blind(f, Integer.parseInt(f.fault().place().substring(CHECK.length())) - 1);
        }
        return switch (f.fault().mode()) {
            case OPEN -> f.inSeries(u, "supply", f.amountSi());
            case SHORT -> f.across(u.supply(), u.ground());
            case DRIFTED -> f.replacedBy(drawing(u, u.ratedAmps().si() * f.amountSi()));
            default -> throw f.unlisted();
        };
    }

    /** A check that looks at its own input, which is parted from the board's net and sinks to ground. */
    private static Circuit blind(Failing<Controller> f, int check) {
        Controller u = f.now();
        Net input = new Net(f.label() + "~");
        Net board = u.checks().get(check).net();
        Circuit parted = Rewiring.across(f.replacedBy(u.looking(check, input)), f.label(), input, board, f.amountSi());
        return Rewiring.across(parted, f.label() + "~input", input, u.ground(), INPUT_OHMS);
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
