package fusetale.circuit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a part is made of, beyond its electrical values, as a file says it or as it is usual. */
public sealed interface Make permits Make.NotSaid, Make.Windings, Make.Body, Make.Metal, Make.Clips {
    /** Nothing is known of it. */
    NotSaid NOT_SAID = new NotSaid();

    /** Nothing is known. */
    record NotSaid() implements Make {}

    /**
     * Windings by name.
     *
     * @param byName {@code primary} and the secondaries of a transformer; {@code power} and {@code hold} of a dual coil;
     *     {@code coil} where there is one alone
     * @param celsius temperature of their copper, at which the part's resistances are [°C]
     */
    record Windings(Map<String, Wound> byName, double celsius) implements Make {
        /** The one winding of a coil or relay. */
        public static final String ALONE = "coil";
        /** The strong winding of a dual coil. */
        public static final String POWER = "power";
        /** The holding winding of a dual coil. */
        public static final String HOLD = "hold";

        /** With resistances as they are stated. */
        public Windings(Map<String, Wound> byName) {
            this(byName, Copper.STATED_CELSIUS);
        }

        /** Copies the map. */
        public Windings {
            byName = Collections.unmodifiableMap(new LinkedHashMap<>(byName));
        }
    }

    /** A resistor's body. */
    record Body(ResistorStyle style) implements Make {}

    /** A wire's or a trace's copper. */
    record Metal(Conductor conductor) implements Make {}

    /** A fuse's clips or holder. */
    record Clips(ClipModel model) implements Make {}
}
