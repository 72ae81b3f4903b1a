package fusetale.explore;

import fusetale.aftermath.FusePulse;
import fusetale.circuit.FuseLink;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A coil or lamp whose driver is switched on for a while and off again, as built and as supposed, from several moments of
 * the mains cycle.
 *
 * @param driven designator of the coil or lamp
 * @param seconds how long it is on
 * @param driver designator of what switches it; empty where none was found
 * @param pullInAmps current that pulls its plunger in; NaN where not known
 * @param holdAmps current that holds it; NaN where not known
 * @param stoodAsBuilt what the driver stands as built
 * @param stoodAsSupposed what the one that is fitted then stands
 * @param asBuilt one a moment
 * @param asSupposed one a moment, alike
 * @param fuses fuses that the pulse stresses most, in the order of the circuit
 * @param clamps diodes and zeners that catch the coil's current, in the order of the circuit
 * @param traces current of the coil and voltage across the driver, from the moment that stresses most; from time 0
 */
public record Pulsed(
        String driven,
        double seconds,
        String driver,
        double pullInAmps,
        double holdAmps,
        Stands stoodAsBuilt,
        Stands stoodAsSupposed,
        List<PulseFigures> asBuilt,
        List<PulseFigures> asSupposed,
        List<PulsedFuse> fuses,
        List<PulsedClamp> clamps,
        List<Trace> traces) {
    /** Copies the lists. */
    public Pulsed {
        asBuilt = List.copyOf(asBuilt);
        asSupposed = List.copyOf(asSupposed);
        fuses = List.copyOf(fuses);
        clamps = List.copyOf(clamps);
        traces = List.copyOf(traces);
    }

    /**
     * A fuse through which the pulse goes.
     *
     * @param part designator
     * @param asBuilt against its link as built, from the worst moment
     * @param asSupposed against the link it holds as supposed
     */
    public record PulsedFuse(String part, FusePulse asBuilt, FusePulse asSupposed) {
        /**
         * Of a fuse.
         *
         * @param seconds how long the pulse lasts [s]
         */
        static PulsedFuse of(
                String part, FuseLink built, double asBuilt, FuseLink fitted, double asSupposed, double seconds) {
            return new PulsedFuse(
                    part, FusePulse.of(built, asBuilt, seconds), FusePulse.of(fitted, asSupposed, seconds));
        }
    }

    /**
     * A figure over all moments.
     *
     * @param least of those where there is one; NaN where there is none
     * @param most likewise
     * @param moments in how many there is one
     */
    public record Range(double least, double most, int moments) {}

    /** The range of one figure over the moments of one side. */
    public static Range range(List<PulseFigures> side, ToDoubleFunction<PulseFigures> figure) {
        double least = Double.NaN;
        double most = Double.NaN;
        int moments = 0;
        for (PulseFigures each : side) {
            double value = figure.applyAsDouble(each);
            if (!Double.isNaN(value)) {
                least = moments == 0 ? value : Math.min(least, value);
                most = moments == 0 ? value : Math.max(most, value);
                moments++;
            }
        }
        return new Range(least, most, moments);
    }

    /** What the driver as supposed stands in breakdown, once [J]; NaN where that is not known. */
    public double avalancheRatedJoules() {
        return stoodAsSupposed.avalancheKnown() ? stoodAsSupposed.avalancheJoules() : Double.NaN;
    }
}
