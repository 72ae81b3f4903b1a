package fusetale.explore;

import fusetale.aftermath.Surge;
import java.util.ArrayList;
import java.util.List;

/**
 * A diode or zener that catches a pulsed coil's current, at its worst over all moments.
 *
 * @param part designator
 * @param asBuilt highest current, and largest I²t of half a cycle of 60 Hz
 * @param asSupposed alike
 * @param stoodAsBuilt what it stands as built
 * @param stoodAsSupposed what the one that is fitted then stands
 */
public record PulsedClamp(String part, Surge asBuilt, Surge asSupposed, Stands stoodAsBuilt, Stands stoodAsSupposed) {
    private static final Surge NOTHING = new Surge(0, 0);

    /** The clamps of the figures of both sides, in the order given. */
    static List<PulsedClamp> of(List<PulseFigures> built, List<PulseFigures> supposed, List<Fitted> fitted) {
        List<PulsedClamp> clamps = new ArrayList<>();
        for (Fitted each : fitted) {
            clamps.add(new PulsedClamp(
                    each.part(), most(built, each.part()), most(supposed, each.part()), each.built(), each.supposed()));
        }
        return clamps;
    }

    /**
     * Which clamp stands where.
     *
     * @param part designator
     * @param built what it stands as built
     * @param supposed what the one that is fitted then stands
     */
    record Fitted(String part, Stands built, Stands supposed) {}

    /** How often the worse of peak and I²t as built goes into what it stands. */
    double ratioAsBuilt() {
        return ratio(asBuilt, stoodAsBuilt);
    }

    /** The same as supposed. */
    double ratioAsSupposed() {
        return ratio(asSupposed, stoodAsSupposed);
    }

    private static double ratio(Surge surge, Stands stands) {
        return Math.max(
                surge.peakAmps() / stands.peakAmps(), surge.ampsSquaredSeconds() / stands.pulseAmpsSquaredSeconds());
    }

    private static Surge most(List<PulseFigures> side, String clamp) {
        return side.stream().map(f -> f.clamps().getOrDefault(clamp, NOTHING)).reduce(NOTHING, Surge::or);
    }
}
