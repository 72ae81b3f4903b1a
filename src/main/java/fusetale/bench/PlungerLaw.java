package fusetale.bench;

import fusetale.bench.Observation.Sight;
import fusetale.circuit.Coil;
import fusetale.circuit.DualCoil;
import fusetale.circuit.EndOfStroke;
import fusetale.circuit.Relay;
import fusetale.quantity.Toleranced;
import fusetale.signal.Waveform;

/**
 * What a plunger or an armature does at a current over a cycle: it goes in where the r.m.s. current reaches the pull-in
 * current (force follows the square), and stays in where the current never falls below the holding current; where it does, in
 * every cycle, it buzzes.
 *
 * <p>Where the file states neither current: it goes in and stays in by the power in its winding, see {@link Coil#PULLS_IN_WATTS}.
 */
final class PlungerLaw {
    private final double pullInAmps;
    private final double holdAmps;

    PlungerLaw(double pullInAmps, double holdAmps) {
        this.pullInAmps = pullInAmps;
        this.holdAmps = holdAmps;
    }

    static PlungerLaw of(Coil coil) {
        return new PlungerLaw(coil.pullsInFromAmps(), coil.holdsFromAmps());
    }

    static PlungerLaw of(Relay relay) {
        return new PlungerLaw(
                relay.winding().pullInAmps().si(), relay.winding().dropOutAmps().si());
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
     * go of the strong one where the plunger is in. The plunger asks of each winding for the ampere turns it asked for when both
     * were sound; inductance goes with the turns squared.
     *
     * @param sound as drawn
     * @param coil as it is
     * @param strongAmps current of the strong winding [A]
     * @param holdAmps current of the holding winding [A]
     * @param volts across both [V]
     */
    static Sight of(DualCoil sound, DualCoil coil, Waveform strongAmps, Waveform holdAmps, Waveform volts) {
        double strongTurnsRatio = turnsRatio(sound.powerHenries(), coil.powerHenries());
        double heldTurnsRatio = turnsRatio(sound.holdHenries(), coil.holdHenries());
        double strong = sound.pullsInFromAmps() / strongTurnsRatio;
        double held = sound.holdsFromAmps() / heldTurnsRatio;
        if (strongAmps.rms() >= strong) {
            return least(strongAmps) >= held ? Sight.PULLS_IN : Sight.BUZZES;
        }
        // commanded is not pulled in: what only holds, both windings in series, never took a plunger in
        boolean wentIn = coil.pulledIn()
                && coil.endOfStroke() == EndOfStroke.FOLLOWS
                && volts.rms() / coil.powerOhms().si() >= strong;
        if (least(holdAmps) >= held) {
            return wentIn ? Sight.HOLDS : Sight.TOO_WEAK;
        }
        return wentIn ? Sight.CHATTERS : Sight.STILL;
    }

    private static double turnsRatio(Toleranced sound, Toleranced now) {
        return Math.sqrt(now.si() / sound.si());
    }

    /** Least magnitude over the cycle: 0 where the current changes sign. */
    private static double least(Waveform amps) {
        return Math.max(0, Math.max(amps.lowest(), -amps.highest()));
    }
}
