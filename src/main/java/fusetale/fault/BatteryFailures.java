package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.leak;
import static fusetale.fault.AmountRange.ratio;
import static fusetale.fault.FailureMode.LEAKY;
import static fusetale.fault.FailureMode.MISSING;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.REVERSED;
import static fusetale.fault.FailureMode.WEAK;

import fusetale.circuit.Battery;
import fusetale.circuit.Circuit;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.List;

/** Memory batteries: flat (weak), open, missing, reversed, or leaking a conducting path over the board. Judgement. */
final class BatteryFailures implements Failures<Battery> {
    /**
     * By how much of itself the inner resistance grows for each share of the voltage at rest that is lost. A dry block went
     * from 1.2 ohm at 9 V over 4.2 ohm at 8.8 V to 74 ohm at 8.4 V (f-alpha.net, Physics, Battery, experiments 12 to 14),
     * which is 110 and more; rechargeable cells take longer to get there. In between by judgement.
     */
    private static final double GROWTH_RATIO = 100;

    @Override
    public String kind() {
        return "battery";
    }

    @Override
    public List<FaultForm> forms(Battery b) {
        FailureRate rate = FailureRate.BATTERY;
        return new FormList(b.name(), kind())
                .whole(WEAK, ratio(0.3, 0, 0.99), rate.judged(0.6))
                .whole(OPEN, OPENED, rate.judged(0.2))
                .whole(LEAKY, leak(1000), rate.judged(0.2))
                .whole(MISSING, null, FailureRate.HANDS.judged(10))
                .whole(REVERSED, null, FailureRate.HANDS.judged(1))
                .list();
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        boolean leaks = a.mode() == LEAKY || b.mode() == LEAKY;
        boolean turned = a.mode() == REVERSED || b.mode() == REVERSED;
        boolean gone = a.mode() == MISSING || b.mode() == MISSING;
        return !leaks && (gone || !turned);
    }

    @Override
    public Circuit apply(Failing<Battery> f) {
        Battery b = f.now();
        return switch (f.fault().mode()) {
            case WEAK -> f.replacedBy(with(b, b.volts().si() * f.amountSi(), spent(b, f.amountSi())));
            case OPEN -> f.replacedBy(with(b, b.volts().si(), f.ohms()));
            case MISSING -> f.replacedBy(with(b, b.volts().si(), new Quantity(Failing.OPEN_OHMS, Unit.OHM)));
            case LEAKY -> f.across(b.plus(), b.minus());
            case REVERSED -> f.exchanged(b, "plus", "minus");
            default -> throw f.unlisted();
        };
    }

    /** What is left sinks under load: the resistance grows as the cells run down. */
    private static Quantity spent(Battery b, double leftRatio) {
        return new Quantity(b.seriesOhms().si() * (1 + GROWTH_RATIO * (1 - leftRatio)), Unit.OHM);
    }

    private static Battery with(Battery b, double volts, Quantity seriesOhms) {
        return new Battery(b.name(), b.plus(), b.minus(), new Quantity(volts, Unit.VOLT), seriesOhms, b.about());
    }
}
