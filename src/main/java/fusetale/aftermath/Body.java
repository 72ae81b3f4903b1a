package fusetale.aftermath;

import java.util.List;

/**
 * Something that warms up: a junction, a winding, a contact.
 *
 * @param part designator
 * @param place leg, winding, pin; empty for the whole part
 * @param nature what it is
 * @param network how it sheds its heat; shared stages take the heat of all bodies of the part
 * @param spread how far machines differ from it
 * @param limits temperatures at which something happens to it
 */
public record Body(
        String part, String place, Nature nature, ThermalNetwork network, Spread spread, List<Limit> limits) {
    /** Copies the list. */
    public Body {
        limits = List.copyOf(limits);
    }

    /** What warms up. */
    public enum Nature {
        /** Silicon. */
        JUNCTION,
        /** Copper of a transformer. */
        WINDING,
        /** Copper of a solenoid or relay. */
        COIL,
        /** A resistor's body. */
        RESISTOR,
        /** A pin in its socket. */
        CONTACT,
        /** A fuse's clips. */
        CLIP,
        /** A wire or a trace. */
        CONDUCTOR;

        /** Whether its resistance follows its temperature. */
        boolean copper() {
            return this == WINDING || this == COIL;
        }
    }

    /**
     * Factors between which figures are drawn: a figure of 10 with a factor of 1.25 is one from 8 to 12.5.
     *
     * @param resistanceRatio of thermal resistances, 1 or more
     * @param capacityRatio of heat capacities, 1 or more
     */
    public record Spread(double resistanceRatio, double capacityRatio) {}

    /** {@code BR201.leg2} or {@code R204}. */
    public String name() {
        return place.isEmpty() ? part : part + "." + place;
    }
}
