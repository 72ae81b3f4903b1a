package fusetale.explore;

import fusetale.aftermath.Aftermath;
import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.fault.Supposition;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What would it read?
 *
 * @param healthy the machine as built
 * @param supposition what is supposed wrong; empty to ask for a healthy machine alone
 * @param arrangement how the bench is set
 * @param meter what is measured with
 * @param checks what is measured
 * @param options how thoroughly
 */
public record Question(
        Circuit healthy,
        Supposition supposition,
        Arrangement arrangement,
        Meter meter,
        List<Check> checks,
        Options options) {
    /** Copies the list. */
    public Question {
        checks = List.copyOf(checks);
    }

    /**
     * How thoroughly.
     *
     * @param draws healthy machines drawn for the spread, 2 or more
     * @param seed of the draws: the same seed gives the same machines
     * @param traces most waveforms to keep, of the points that moved most; {@link #EVERY_TRACE} for those of all points and fuses,
     *     the others behind them
     * @param aftermath what to play forward; null for nothing, and the verdict on powering up is then a first look
     */
    public record Options(int draws, long seed, int traces, Aftermath.@Nullable Settings aftermath) {
        /** What the commands use. */
        public static final Options USUAL = new Options(24, 1, 3, Aftermath.Settings.USUAL);

        /** Waveforms of every point and every fuse. */
        public static final int EVERY_TRACE = Integer.MAX_VALUE;

        /** Nothing played forward. */
        public Options(int draws, long seed, int traces) {
            this(draws, seed, traces, null);
        }
    }

    /** The same question with the bench set otherwise. */
    public Question arranged(Arrangement other) {
        return new Question(healthy, supposition, other, meter, checks, options);
    }

    /** The same question with another supposition. */
    public Question supposing(Supposition other) {
        return new Question(healthy, other, arrangement, meter, checks, options);
    }
}
