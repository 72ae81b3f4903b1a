package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.leak;
import static fusetale.fault.AmountRange.ratio;
import static fusetale.fault.FailureMode.LEAKY;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.SHORT;
import static fusetale.fault.FailureMode.WEAK;

import fusetale.circuit.Circuit;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Ratings;
import java.util.List;

/**
 * What transistors and Darlingtons have in common: shorts and leaks between two of collector, emitter and base ({@code ce},
 * {@code be}, {@code cb}), opens of one ({@code c}, {@code b}, {@code e}); MOSFETs ({@code d}, {@code g}, {@code s}) and thyristors ({@code a}, {@code g},
 * {@code k}) use the same letters' way. Shares: FMD-91, "transistor, bipolar", short .73
 * and open .27 (from memory), divided among the places by judgement, with a little set aside for leaks and lost gain.
 */
final class ThreePins {
    /** From this dissipation [W] on a transistor counts as a power transistor. */
    private static final double POWER_WATTS = 5;

    private ThreePins() {}

    static List<FaultForm> forms(String kind, String name, Ratings ratings) {
        boolean power = ratings.watts() >= POWER_WATTS;
        FailureRate rate = power ? FailureRate.POWER_TRANSISTOR : FailureRate.SMALL_TRANSISTOR;
        return new FormList(name, kind)
                .at("ce", "C to E", SHORT, SHORTED, rate.share(0.48))
                .at("be", "B to E", SHORT, SHORTED, rate.share(0.08))
                .at("cb", "C to B", SHORT, SHORTED, rate.share(0.10))
                .at("c", "collector", OPEN, OPENED, rate.share(0.07))
                .at("b", "base", OPEN, OPENED, rate.share(0.10))
                .at("e", "emitter", OPEN, OPENED, rate.share(0.07))
                .at("ce", "C to E", LEAKY, leak(1000), rate.judged(0.05))
                .whole(WEAK, ratio(0.2, 0.001, 0.99), rate.judged(0.05))
                .list();
    }

    /** Two faults between the same pins, or a pin both open and shorted to something. */
    static boolean clash(Fault a, Fault b) {
        if (a.place().equals(b.place())) {
            return true;
        }
        return a.mode() == OPEN && b.place().contains(a.place());
    }

    static Circuit across(Failing<? extends Part> f) {
        String place = f.fault().place();
        return f.across(net(f.now(), place.charAt(0)), net(f.now(), place.charAt(1)));
    }

    static Circuit open(Failing<? extends Part> f) {
        return f.inSeries(f.now(), pin(f.fault().place().charAt(0)), f.amountSi());
    }

    private static Net net(Part part, char letter) {
        return part.net(pin(letter));
    }

    private static String pin(char letter) {
        return switch (letter) {
            case 'c' -> "collector";
            case 'b' -> "base";
            case 'e' -> "emitter";
            case 'd' -> "drain";
            case 'g' -> "gate";
            case 's' -> "source";
            case 'a' -> "anode";
            case 'k' -> "cathode";
            default -> throw new IllegalStateException("no pin for " + letter);
        };
    }
}
