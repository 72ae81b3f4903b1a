package fusetale.explore;

import fusetale.bench.Seen;
import fusetale.circuit.Mains;
import fusetale.model.Modelled;
import fusetale.signal.Waveform;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The lamp in the mains lead, as hot as it gets.
 *
 * @param ratedWatts its power at the nominal mains voltage
 * @param asBuilt on a healthy machine
 * @param asSupposed with the supposition
 */
public record SeriesLamp(double ratedWatts, Glow asBuilt, Glow asSupposed) {
    /**
     * How it burns.
     *
     * @param watts its power
     * @param volts across it, r.m.s.
     * @param mainsAmps current out of the wall, r.m.s.
     * @param shareRatio its power over its rated power
     */
    public record Glow(double watts, double volts, double mainsAmps, double shareRatio) {
        /** What one sees of it. */
        public Brightness brightness() {
            return Brightness.of(shareRatio);
        }
    }

    /**
     * What one sees of a mains filament, by the share of its rated power. A filament at a share p of its power is at T(hot)·p^¼
     * (Stefan and Boltzmann), T(hot) about 2600 K. Dark: below the Draper point, 798 K, under which no solid is seen to glow
     * (J. W. Draper, 1847): 0.9 %. Dim, red: up to 1300 K, where heat colours turn to orange (the smith's scale, from
     * memory): 6.3 %. Bright: from half of its power, where it gives a quarter of its light (light V^3.4, power V^1.6,
     * Standard Handbook for Electrical Engineers).
     */
    public enum Brightness {
        /** Nothing to be seen. */
        DARK("dark"),
        /** Red. */
        DIM("dim"),
        /** Orange to yellow. */
        GLOWING("glowing"),
        /** A quarter of its light and more. */
        BRIGHT("bright");

        private static final double HOT_KELVIN = 2600;
        private static final double DRAPER_KELVIN = 798;
        private static final double ORANGE_KELVIN = 1300;
        private static final double HALF_RATIO = 0.5;

        private final String words;

        Brightness(String words) {
            this.words = words;
        }

        /** As written in tables and JSON. */
        public String words() {
            return words;
        }

        /** By the share of its rated power. */
        public static Brightness of(double shareRatio) {
            double kelvin = HOT_KELVIN * Math.sqrt(Math.sqrt(Math.max(0, shareRatio)));
            if (kelvin < DRAPER_KELVIN) {
                return DARK;
            }
            if (kelvin < ORANGE_KELVIN) {
                return DIM;
            }
            return shareRatio < HALF_RATIO ? GLOWING : BRIGHT;
        }
    }

    /** Of two looks at a machine with the power on; null where no lamp is in the lead. */
    static @Nullable SeriesLamp of(@Nullable Double ratedWatts, Seen asBuilt, Seen asSupposed) {
        return ratedWatts == null || asBuilt.state() == null || asSupposed.state() == null
                ? null
                : new SeriesLamp(ratedWatts, glow(ratedWatts, asBuilt), glow(ratedWatts, asSupposed));
    }

    private static Glow glow(double ratedWatts, Seen seen) {
        Modelled modelled = seen.modelled();
        Waveform volts = Objects.requireNonNull(seen.state())
                .volts(modelled.network().node(Modelled.SERIES_LAMP_NODE), modelled.node(Mains.LINE));
        Waveform amps = seen.amps("mains");
        double watts = volts.times(amps).mean();
        return new Glow(watts, volts.rms(), amps.rms(), watts / ratedWatts);
    }
}
