package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.FailureMode.HIGH_LINE;
import static fusetale.fault.FailureMode.LOW_LINE;
import static fusetale.fault.FailureMode.OPEN;

import fusetale.circuit.Circuit;
import fusetale.circuit.Mains;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.List;

/**
 * The mains at the machine's inlet: dead (socket, plug or lead open), low or high. Low and high say what the socket gives
 * with nothing plugged in, outside the range of a healthy one, and overrule the volts the bench is set to; the resistance of
 * the house wiring stays. Usual amounts, 0.8 and 1.15 times nominal, and shares: judgement. (ANSI C84.1 lets a 120 V socket
 * give 104 to 127 V in its range B: from memory.)
 */
final class MainsFailures implements Failures<Mains> {
    private static final double USUAL_LOW_RATIO = 0.8;
    private static final double USUAL_HIGH_RATIO = 1.15;

    @Override
    public String kind() {
        return "mains";
    }

    @Override
    public List<FaultForm> forms(Mains m) {
        double nominal = m.volts().si();
        double lowest = m.lowestVolts().si();
        double highest = m.highestVolts().si();
        FailureRate rate = FailureRate.MAINS;
        return new FormList(Mains.NAME, kind())
                .whole(OPEN, OPENED, rate.judged(0.6))
                .said("is dead", "is dead, {}")
                .whole(LOW_LINE, volts(Math.min(USUAL_LOW_RATIO * nominal, lowest), 1, lowest), rate.judged(0.3))
                .whole(
                        HIGH_LINE,
                        volts(Math.max(USUAL_HIGH_RATIO * nominal, highest), highest, 2.2 * nominal),
                        rate.judged(0.1))
                .list();
    }

    private static AmountRange volts(double usualSi, double lowSi, double highSi) {
        return new AmountRange(Unit.VOLT, usualSi, Math.min(lowSi, usualSi), Math.max(highSi, usualSi));
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        return true;
    }

    @Override
    public Circuit apply(Failing<Mains> f) {
        Mains m = f.now();
        return switch (f.fault().mode()) {
            case OPEN -> f.circuit().withMains(m.behind(f.ohms()));
            case LOW_LINE, HIGH_LINE -> f.circuit().withMains(m.giving(new Quantity(f.amountSi(), Unit.VOLT)));
            default -> throw f.unlisted();
        };
    }
}
