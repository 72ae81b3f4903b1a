package fusetale.mna;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The reductions of one layout by step size, made when first asked for. Steps are a power of two times a grain of the
 * period, so a run needs a dozen of them at most.
 */
final class Reductions {
    /** Grains in one period: the shortest step is 1 μs at 60 Hz. */
    static final int GRAINS = 1 << 14;

    private static final int LEVELS = 40;
    /** Levels, and one for the state at rest. */
    static final int SLOTS = LEVELS + 1;

    final Layout layout;
    private final @Nullable Reductions base;
    private final @Nullable Norton norton;
    /** Conductances to lay onto {@link #base} where it has no source more. */
    private final List<Norton> changes;

    private final @Nullable Solved<Reduction>[] byLevel;
    private @Nullable Solved<Reduction> atRest;
    private final double grainSeconds;

    Reductions(Layout layout) {
        this(layout, null, null, List.of(), Double.NaN);
    }

    private Reductions(
            Layout layout,
            @Nullable Reductions base,
            @Nullable Norton norton,
            List<Norton> changes,
            double grainSeconds) {
        this.layout = layout;
        this.base = base;
        this.norton = norton;
        this.changes = changes;
        this.grainSeconds = grainSeconds;
        this.byLevel = emptyLevels();
    }

    @SuppressWarnings("unchecked") // an array of a generic type cannot be made otherwise
    private static @Nullable Solved<Reduction>[] emptyLevels() {
        return (Solved<Reduction>[]) new Solved<?>[LEVELS];
    }

    /** The same linear part with a Norton source across two of its nodes. */
    Reductions with(Layout widened, Norton extra) {
        return new Reductions(widened, this, extra, List.of(), grainSeconds);
    }

    /** The same linear part with conductances changed between its nodes. */
    Reductions changed(Layout other, List<Norton> conductances) {
        return new Reductions(other, this, null, conductances, grainSeconds);
    }

    /**
     * Those for the steps that divide a period [s]: these where it is theirs, else others. (States handed out work their
     * waveforms out of the reductions they were found with.)
     */
    Reductions of(double period) {
        double grain = period / GRAINS;
        return grain == grainSeconds
                ? this
                : new Reductions(layout, base == null ? null : base.of(period), norton, changes, grain);
    }

    double grainSeconds() {
        return grainSeconds;
    }

    /** For steps of 2^level grains. */
    Solved<Reduction> level(int level) {
        Solved<Reduction> known = byLevel[level];
        if (known == null) {
            double stage = Sdirk.GAMMA * (grainSeconds * Math.scalb(1.0, level));
            known = base == null ? Reduction.of(layout, level, stage) : from(base.level(level), level, stage);
            byLevel[level] = known;
        }
        return known;
    }

    /** For the state at rest. */
    Solved<Reduction> atRest() {
        if (atRest == null) {
            double stage = Double.POSITIVE_INFINITY;
            atRest = base == null ? Reduction.of(layout, LEVELS, stage) : from(base.atRest(), LEVELS, stage);
        }
        return atRest;
    }

    private Solved<Reduction> from(Solved<Reduction> of, int slot, double stageSeconds) {
        if (!(of instanceof Solved.Found<Reduction> found)) {
            return norton == null ? Reduction.of(layout, slot, stageSeconds) : of;
        }
        if (norton != null) {
            return new Solved.Found<>(found.value().with(layout, norton));
        }
        Reduction changed = found.value().changed(layout, changes);
        return changed == null ? Reduction.of(layout, slot, stageSeconds) : new Solved.Found<>(changed);
    }
}
