package fusetale.circuit;

import java.util.Locale;

/**
 * What resistors are made of, with the share of their rated power that they stand by the temperature around them. The film
 * and wirewound curves are those of MIL-R-55182 and MIL-R-39007 as read in a derating table; at the end of its curve a
 * resistor stands nothing more, so that temperature is its hottest spot at rated power and 70 °C around it.
 */
public enum ResistorStyle {
    /** Moulded carbon composition: full to 70 °C, nothing at 130 °C (from memory). */
    CARBON_COMPOSITION(130),
    /** Carbon film: full to 70 °C, nothing at 155 °C (from memory, the usual data sheet class). */
    CARBON_FILM(155),
    /** Metal film. */
    METAL_FILM(150),
    /** Wirewound, cement or enamel. */
    WIREWOUND(275);

    /** Largest rating [W] that is film where nothing is said (judgement: above it films were rare). */
    private static final double LARGEST_FILM_WATTS = 2;

    private static final double FULL_TO_CELSIUS = 70;

    private final double hottestCelsius;

    ResistorStyle(double hottestCelsius) {
        this.hottestCelsius = hottestCelsius;
    }

    /** What a resistor of a rating usually was: carbon film up to 2 W, wirewound above (judgement). */
    static ResistorStyle usual(double ratedWatts) {
        return ratedWatts <= LARGEST_FILM_WATTS ? CARBON_FILM : WIREWOUND;
    }

    /** As written in circuit files. */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The temperature around it [°C] up to which it stands its whole rating. */
    public double fullToCelsius() {
        return FULL_TO_CELSIUS;
    }

    /** Hottest spot [°C] at rated power and {@link #fullToCelsius} around it: where the derating curve ends. */
    public double hottestCelsius() {
        return hottestCelsius;
    }

    /** From the hottest spot to the air around it, for a rating [W]: (hottest − full)/rating. */
    public double kelvinPerWatt(double ratedWatts) {
        return (hottestCelsius - FULL_TO_CELSIUS) / ratedWatts;
    }

    /** The share of its rating that it stands at a temperature around it [°C], 0 to 1; straight between the points. */
    public double share(double celsius) {
        double[] around = around();
        double[] shares = shares();
        if (celsius <= around[0]) {
            return 1;
        }
        for (int i = 1; i < around.length; i++) {
            if (celsius <= around[i]) {
                double way = (celsius - around[i - 1]) / (around[i] - around[i - 1]);
                return shares[i - 1] + way * (shares[i] - shares[i - 1]);
            }
        }
        return 0;
    }

    /** Temperatures [°C] of the derating curve. */
    private double[] around() {
        return switch (this) {
            case METAL_FILM -> new double[] {FULL_TO_CELSIUS, 85, 100, 120, 140, 145, hottestCelsius};
            case WIREWOUND -> new double[] {FULL_TO_CELSIUS, 110, 150, 190, 240, 260, hottestCelsius};
            default -> new double[] {FULL_TO_CELSIUS, hottestCelsius};
        };
    }

    /** Shares of the rating at the points of {@link #around}. */
    private double[] shares() {
        return switch (this) {
            case METAL_FILM, WIREWOUND -> new double[] {1, 0.8, 0.6, 0.4, 0.2, 0.1, 0};
            default -> new double[] {1, 0};
        };
    }
}
