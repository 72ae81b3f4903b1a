package fusetale.aftermath;

import fusetale.circuit.FuseLink;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The time-current band of a fuse link: between the shortest and the longest melting time that its standard allows.
 *
 * <p>Between gates the times follow straight lines in log-log. For the longest times that is an upper bound as long as a
 * link's own curve is convex there, as that of a wire losing heat is; for the shortest it is the usual reading of such charts,
 * no promise: {@link #promised} keeps to the gates alone. Beyond the last gate I²t stays what it is there. Where
 * melting takes less than about 10 ms, and no heat is lost, that is exact (t = I²t/I²); where it takes longer, the true I²t
 * falls towards that value, so that a longest time is never too short. Up to the rating
 * a link holds for ever. A link in a hot place, or one that has aged, melts earlier than this band says.
 *
 * <p>Gates and their sources: {@link FuseGates}.
 */
public final class FuseBand {
    private final double ratedAmps;
    private final List<FuseGate> lower;
    private final List<FuseGate> upper;
    private final List<String> assumptions;

    private FuseBand(double ratedAmps, FuseGates gates) {
        this.ratedAmps = ratedAmps;
        this.lower = gates.gates().stream().filter(FuseGate::setsMin).toList();
        this.upper = gates.gates().stream().filter(FuseGate::setsMax).toList();
        this.assumptions = gates.assumptions();
    }

    /** The band of a link by its standard, speed and rating. */
    public static FuseBand of(FuseLink link) {
        return new FuseBand(link.ratedAmps().si(), FuseGates.of(link));
    }

    /**
     * When the link melts at a steady current.
     *
     * @param rmsAmps r.m.s. current [A], 0 or more
     */
    public Melting melting(double rmsAmps) {
        double multiple = multiple(rmsAmps);
        if (multiple <= 1) {
            return Melting.NEVER;
        }
        double min = times(multiple, lower, FuseGate::minSeconds, lower.get(0).minSeconds());
        double max = times(multiple, upper, FuseGate::maxSeconds, Double.POSITIVE_INFINITY);
        return new Melting(Math.min(min, max), max);
    }

    /**
     * What the gates alone promise at a steady current, without reading anything between them: it holds at least as long as
     * the next gate above asks, and at most as long as the next gate below allows.
     *
     * @param rmsAmps r.m.s. current [A], 0 or more
     */
    public Melting promised(double rmsAmps) {
        double multiple = multiple(rmsAmps);
        if (multiple <= 1) {
            return Melting.NEVER;
        }
        double min = 0;
        for (int k = lower.size() - 1; k >= 0 && multiple <= lower.get(k).multiple(); k--) {
            min = lower.get(k).minSeconds();
        }
        double max = Double.POSITIVE_INFINITY;
        for (FuseGate gate : upper) {
            max = multiple >= gate.multiple() ? gate.maxSeconds() : max;
        }
        return new Melting(Math.min(min, max), max);
    }

    /** What the band rests on, one plain sentence each. */
    public List<String> assumptions() {
        return assumptions;
    }

    private double multiple(double rmsAmps) {
        if (!(rmsAmps >= 0)) {
            throw new IllegalArgumentException("no r.m.s. current: " + rmsAmps + " A");
        }
        return rmsAmps / ratedAmps;
    }

    /** @param below what holds at smaller currents than the first gate */
    private static double times(
            double multiple, List<FuseGate> gates, ToDoubleFunction<FuseGate> seconds, double below) {
        FuseGate first = gates.get(0);
        if (multiple < first.multiple()) {
            return below;
        }
        FuseGate left = first;
        for (FuseGate right : gates) {
            if (multiple <= right.multiple()) {
                return multiple == right.multiple()
                        ? seconds.applyAsDouble(right)
                        : between(multiple, left, right, seconds);
            }
            left = right;
        }
        double over = left.multiple() / multiple;
        return seconds.applyAsDouble(left) * over * over;
    }

    private static double between(double multiple, FuseGate left, FuseGate right, ToDoubleFunction<FuseGate> seconds) {
        double share = Math.log(multiple / left.multiple()) / Math.log(right.multiple() / left.multiple());
        double low = seconds.applyAsDouble(left);
        return low * Math.pow(seconds.applyAsDouble(right) / low, share);
    }
}
