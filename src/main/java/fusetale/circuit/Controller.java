package fusetale.circuit;

import fusetale.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;

/**
 * The logic board seen as a load, with the checks it goes through when it starts.
 *
 * @param name reference designator
 * @param supply supply pin's net
 * @param ground ground pin's net
 * @param ratedVolts supply voltage at which it draws {@code ratedAmps}
 * @param ratedAmps supply current
 * @param resetBelowVolts below this it is held in reset
 * @param checks start-up checks in order; it stops at the first that fails
 * @param about notes
 */
public record Controller(
        String name,
        Net supply,
        Net ground,
        Quantity ratedVolts,
        Quantity ratedAmps,
        Quantity resetBelowVolts,
        List<StartUpCheck> checks,
        About about)
        implements Part {
    /**
     * One start-up check: passes while a net lies within limits.
     *
     * @param label what the controller looks at
     * @param net the net it looks at, against its ground
     * @param lowestVolts passes from here
     * @param highestVolts to here
     */
    public record StartUpCheck(String label, Net net, Quantity lowestVolts, Quantity highestVolts) {}

    /** Copies the list. */
    public Controller {
        checks = List.copyOf(checks);
    }

    /** The same with one of its checks looking at another net; checks count from 0. */
    public Controller looking(int check, Net net) {
        List<StartUpCheck> others = new ArrayList<>(checks);
        StartUpCheck was = others.get(check);
        others.set(check, new StartUpCheck(was.label(), net, was.lowestVolts(), was.highestVolts()));
        return new Controller(name, supply, ground, ratedVolts, ratedAmps, resetBelowVolts, others, about);
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("supply", supply), new Pin("ground", ground));
    }

    @Override
    public Controller rewired(String pin, Net net) {
        return switch (pin) {
            case "supply" -> new Controller(name, net, ground, ratedVolts, ratedAmps, resetBelowVolts, checks, about);
            case "ground" -> new Controller(name, supply, net, ratedVolts, ratedAmps, resetBelowVolts, checks, about);
            default -> throw noPin(pin);
        };
    }
}
