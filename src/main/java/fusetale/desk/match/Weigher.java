package fusetale.desk.match;

import fusetale.bench.Meter;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.explore.Progress;
import fusetale.match.Ask;
import fusetale.match.Findings;
import fusetale.match.LookAlike;
import fusetale.match.Matcher;
import fusetale.match.NextReadings;
import fusetale.match.Ranking;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Weighs what was found on one machine: the part of {@link Matcher} that the place needs. Used by one thread at a time. */
public interface Weigher {
    /** As {@link Matcher#rank}. */
    Ranking rank(Findings findings, Consumer<Ranking> sharper, Progress progress, BooleanSupplier stopped)
            throws UnfitArrangement;

    /** As {@link Matcher#next}; also called while {@link #rank} tells of a better answer, in the same thread. */
    NextReadings next(
            Findings findings, Set<String> outOfReach, List<Ask> ruledOut, Progress progress, BooleanSupplier stopped)
            throws UnfitArrangement;

    /** As {@link Matcher#lookAlikes}. */
    List<LookAlike> lookAlikes(Findings findings, Progress progress, BooleanSupplier stopped) throws UnfitArrangement;

    /** As {@link Matcher#keep}; called when nobody waits. */
    default void keep() {}

    /** Makes one for a machine. */
    @FunctionalInterface
    interface Maker {
        /** For a machine and the meter it is measured with; called by the thread that will use it. */
        Weigher of(Circuit circuit, Meter meter);
    }

    /** Asks the matcher. */
    static Maker matcher(Matcher.Settings settings) {
        return (circuit, meter) -> {
            Matcher matcher = Matcher.of(circuit, meter, settings);
            return new Weigher() {
                @Override
                public Ranking rank(
                        Findings findings, Consumer<Ranking> sharper, Progress progress, BooleanSupplier stopped)
                        throws UnfitArrangement {
                    return matcher.rank(findings, sharper, progress, stopped);
                }

                @Override
                public NextReadings next(
                        Findings findings,
                        Set<String> outOfReach,
                        List<Ask> ruledOut,
                        Progress progress,
                        BooleanSupplier stopped)
                        throws UnfitArrangement {
                    return matcher.next(findings, outOfReach, ruledOut, progress, stopped);
                }

                @Override
                public List<LookAlike> lookAlikes(Findings findings, Progress progress, BooleanSupplier stopped)
                        throws UnfitArrangement {
                    return matcher.lookAlikes(findings, progress, stopped);
                }

                @Override
                public void keep() {
                    matcher.keep();
                }
            };
        };
    }
}
