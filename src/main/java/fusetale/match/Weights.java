package fusetale.match;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

/**
 * How often a part of a kind is what a machine is brought in for: {@code weights.csv}, each row with its source. Only
 * ratios mean something. How a part's weight is shared among its failure modes comes from {@code fault}.
 */
final class Weights {
    private static final double UNKNOWN = 1;

    private final Map<String, Double> perPart = new HashMap<>();
    private final Map<String, Double> perPin = new HashMap<>();

    private Weights() {}

    /** Those that come with the program. */
    static Weights shipped() {
        Weights weights = new Weights();
        try (InputStream in = Objects.requireNonNull(Weights.class.getResourceAsStream("weights.csv"));
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            lines.lines().skip(1).forEach(weights::row);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return weights;
    }

    private void row(String line) {
        String[] cells = line.split(",", 4);
        Map<String, Double> by = "pin".equals(cells[2]) ? perPin : perPart;
        by.put(cells[0], Double.valueOf(cells[1]));
    }

    /**
     * Weight of a whole part.
     *
     * @param kind as the catalogue of failures calls it
     * @param pins of a connector, how many it has
     */
    double of(String kind, int pins) {
        Double pin = perPin.get(kind);
        return pin != null ? pin * pins : perPart.getOrDefault(kind, UNKNOWN);
    }
}
