package fusetale.explore;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the arrangement itself shows, beside the readings.
 *
 * @param seriesLamp the lamp in the mains lead; null where there is none
 * @param pulses coils and lamps that are pulsed, by name
 */
public record AtTheBench(@Nullable SeriesLamp seriesLamp, List<Pulsed> pulses) {
    /** Neither lamp nor pulse. */
    public static final AtTheBench NOTHING = new AtTheBench(null, List.of());

    /** Copies the list. */
    public AtTheBench {
        pulses = List.copyOf(pulses);
    }
}
