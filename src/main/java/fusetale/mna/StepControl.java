package fusetale.mna;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import java.util.function.LongConsumer;

/** Chooses steps by their error, landing on every corner of sources and laws. */
final class StepControl {
    private final Stepper stepper;
    private final double accuracy;
    private final int coarsest;
    private final long[] corners;
    private int[] levels = new int[256];
    private int count;

    StepControl(Stepper stepper, double accuracy, int coarsest) {
        this.stepper = stepper;
        this.accuracy = accuracy;
        this.coarsest = coarsest;
        this.corners = corners(stepper);
    }

    /** The steps taken. */
    Mesh mesh() {
        return Mesh.of(levels, count);
    }

    /**
     * Steps from one tick to another.
     *
     * @param taken told of every step that was taken how many grains it was long
     * @return false where a step of one grain failed or the caller asked to stop; the stepper knows why a step failed
     */
    boolean run(long from, long to, boolean record, BooleanSupplier stopped, LongConsumer taken) {
        long tick = from;
        int level = Math.min(3, coarsest);
        while (tick < to) {
            if (stopped.getAsBoolean()) {
                return false;
            }
            long end = Math.min(to, nextCorner(tick));
            while (tick % (1L << level) != 0 || tick + (1L << level) > end) {
                level--;
            }
            int kept = stepper.recorder.size();
            stepper.impatient(level > 0);
            boolean solved = stepper.attempt(level, tick, false, record);
            stepper.impatient(false);
            if (!solved && level == 0) {
                return false;
            }
            double error = solved ? stepper.error(level) : Double.POSITIVE_INFINITY;
            if (error > accuracy && level > 0) {
                stepper.refuse();
                stepper.recorder.cut(kept);
                level--;
                continue;
            }
            stepper.accept();
            if (stepper.isEndless()) {
                return false;
            }
            keep(level);
            tick += 1L << level;
            taken.accept(1L << level);
            if (isCorner(tick)) {
                stepper.jump();
                level = 0;
            } else if (error < accuracy / 12 && level < coarsest && tick % (2L << level) == 0) {
                level++;
            }
        }
        return true;
    }

    private void keep(int level) {
        if (count == levels.length) {
            levels = Arrays.copyOf(levels, 2 * count);
        }
        levels[count++] = level;
    }

    private boolean isCorner(long tick) {
        return Arrays.binarySearch(corners, tick) >= 0;
    }

    private long nextCorner(long tick) {
        for (long c : corners) {
            if (c > tick) {
                return c;
            }
        }
        return Long.MAX_VALUE;
    }

    private static long[] corners(Stepper stepper) {
        double grain = stepper.reductions.grainSeconds();
        java.util.TreeSet<Long> ticks = new java.util.TreeSet<>();
        for (Layout.Source s : stepper.layout.sources) {
            if (s.shape() instanceof SourceShape.Corners c) {
                c.seconds().forEach(t -> ticks.add(Math.round(t / grain)));
            }
        }
        for (Layout.Device d : stepper.layout.devices) {
            for (double t : d.law().corners()) {
                ticks.add(Math.round(t / grain));
            }
        }
        return ticks.stream().mapToLong(Long::longValue).toArray();
    }
}
