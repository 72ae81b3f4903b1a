package fusetale.bench;

import fusetale.bench.Observation.Sight;
import fusetale.circuit.Coil;
import fusetale.circuit.DualCoil;
import fusetale.circuit.EndOfStroke;
import fusetale.circuit.Relay;
import fusetale.quantity.Quantity;
import fusetale.signal.Waveform;
import org.jspecify.annotations.Nullable;

/**
 * What a plunger or an armature does at a current over a cycle: it goes in where the r.m.s. current reaches the pull-in
 * current (force follows the square), and stays in where the current never falls below the holding current; where it does, in
 * every cycle, it buzzes.
 *
 * <p>Where the file states neither current: it goes in from 30 W in its winding and stays in from 4 W (judgement, from coils
 * whose currents are stated: 2 A and 0.8 A through 7 ohm).
 */
final class PlungerLaw {
    private static final double PULLS_IN_WATTS = 30;
    private static final double HOLDS_WATTS = 4;

    private final double pullInAmps;
    private final double holdAmps;

    PlungerLaw(double pullInAmps, double holdAmps) {
        this.pullInAmps = pullInAmps;
        this.holdAmps = holdAmps;
    }

    static PlungerLaw of(Coil coil) {
        return new PlungerLaw(
                stated(coil.pullInAmps(), PULLS_IN_WATTS, coil.ohms().si()),
                stated(coil.holdAmps(), HOLDS_WATTS, coil.ohms().si()));
    }

    static PlungerLaw of(Relay relay) {
        return new PlungerLaw(
                relay.winding().pullInAmps().si(), relay.winding().dropOutAmps().si());
    }

    private static double stated(@Nullable Quantity amps, double watts, double ohms) {
        return amps == null ? Math.sqrt(watts / ohms) : amps.si();
    }

    /** What it does at a current [A]. */
    Sight at(Waveform amps) {
        double least = least(amps);
        if (amps.rms() >= pullInAmps) {
            return least >= holdAmps ? Sight.PULLS_IN : Sight.BUZZES;
        }
        if (Math.max(amps.highest(), -amps.lowest()) >= pullInAmps) {
            return Sight.BUZZES;
        }
        return least >= holdAmps ? Sight.TOO_WEAK : Sight.STILL;
    }

    /**
     * What a coil of two windings does: the strong one takes it in, the holding one keeps it, and the switch between them lets
     * go of the strong one where the plunger is in.
     *
     * @param strongAmps current of the strong winding [A]
     * @param holdAmps current of the holding winding [A]
     * @param volts across both [V]
     */
    static Sight of(DualCoil coil, Waveform strongAmps, Waveform holdAmps, Waveform volts) {
        double strong = Math.sqrt(PULLS_IN_WATTS / coil.powerOhms().si());
        double held = Math.sqrt(HOLDS_WATTS / coil.holdOhms().si());
        if (strongAmps.rms() >= strong) {
            return least(strongAmps) >= held ? Sight.PULLS_IN : Sight.BUZZES;
        }
        if (least(holdAmps) >= held) {
            return coil.pulledIn() ? Sight.HOLDS : Sight.TOO_WEAK;
        }
        boolean switchCloses = coil.pulledIn() && coil.endOfStroke() == EndOfStroke.FOLLOWS;
        boolean goesInAgain = volts.rms() / coil.powerOhms().si() >= strong;
        return switchCloses && goesInAgain ? Sight.CHATTERS : Sight.STILL;
    }

    /** Least magnitude over the cycle: 0 where the current changes sign. */
    private static double least(Waveform amps) {
        return Math.max(0, Math.max(amps.lowest(), -amps.highest()));
    }
}
