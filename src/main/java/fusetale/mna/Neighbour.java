package fusetale.mna;

import org.jspecify.annotations.Nullable;

/** The periodic state of a machine with the same states, from which the search for another's begins. */
final class Neighbour {
    /** A mains that differs by more than this is no neighbour's. */
    private static final double LEAST_SOURCE_RATIO = 0.7;

    final SampledRun.Restart near;

    Neighbour(SampledRun.Restart near) {
        this.near = near;
    }

    /**
     * Puts a machine into its state, changed as the alternating sources are.
     *
     * @param map of that machine; its {@code start} is modified
     * @return its inverse, a copy; null where that is of other carried states
     */
    @Nullable
    PeriodInverse load(PeriodMap map) {
        Stepper stepper = map.stepper;
        stepper.begin(near);
        stepper.carryStates(near.carriedStates);
        if (near.stageVolts.length > 0) {
            stepper.stage.foresight.startFrom(near.mesh, near.stageVolts);
        }
        double ratio = sourceRatio(map.layout);
        AlongMains along = near.alongMains;
        if (along != null && along.size() == stepper.carried()) {
            along.move(map, ratio - 1);
        } else {
            for (int k = 0; k < map.layout.slowStates; k++) {
                stepper.x[k] *= ratio;
            }
        }
        stepper.stage.sortSleepers();
        stepper.jump();
        PeriodInverse theirs = near.inverse;
        return theirs != null && theirs.size() == stepper.carried() ? theirs.copy() : null;
    }

    /**
     * What all alternating sources are raised by against this neighbour, as where only the mains differs: charges and currents
     * then are about as much larger; 1 where they do not all go together.
     */
    private double sourceRatio(Layout layout) {
        double ratio = 0;
        Layout theirs = near.layout;
        for (int s = 0; s < layout.sources.size() && layout.sources.size() == theirs.sources.size(); s++) {
            if (layout.sources.get(s).shape() instanceof SourceShape.Sine mine
                    && theirs.sources.get(s).shape() instanceof SourceShape.Sine other) {
                double here = mine.peak() / other.peak();
                if (ratio != 0 && Math.abs(here - ratio) > 1e-9) {
                    return 1;
                }
                ratio = here;
            }
        }
        return ratio > LEAST_SOURCE_RATIO && ratio < 1 / LEAST_SOURCE_RATIO ? ratio : 1;
    }
}
