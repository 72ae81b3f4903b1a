package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Every junction's two points of its data sheet, worked out anew from its parameters: V = N·VT·ln(1 + I/IS) + I·RS. */
class DiodePointsTest {
    private static final String POINTS = "shared/reference/diode-points.csv";

    /** kT/q at 25 °C [V], exact constants of the SI. */
    private static final double VT = 0.025692579;

    private static Map<String, DiodeModel> junctions() {
        PartLibrary library = PartLibrary.shipped();
        Map<String, DiodeModel> all = new LinkedHashMap<>(library.diodes());
        all.putAll(library.bridges());
        all.putAll(library.zeners());
        return all;
    }

    @ParameterizedTest
    @CsvFileSource(files = POINTS, numLinesToSkip = 1)
    void modelGoesThroughThePoint(String model, double amps, double volts, double precisionVolts, String source) {
        DiodeModel junction = Objects.requireNonNull(junctions().get(model), model);
        double worked = junction.idealityRatio() * VT * Math.log1p(amps / junction.saturationAmps())
                + amps * junction.seriesOhms();

        assertThat(worked).as(model + " at " + amps + " A: " + source).isCloseTo(volts, within(precisionVolts));
    }

    @Test
    void everyJunctionHasTwoPointsWithASource() throws IOException {
        Map<String, Integer> points = new HashMap<>();
        for (String line : Files.readAllLines(Path.of(POINTS))) {
            String[] cells = line.split(",", 5);
            assertThat(cells).hasSize(5).allSatisfy(cell -> assertThat(cell).isNotBlank());
            points.merge(cells[0], 1, Integer::sum);
        }

        assertThat(junctions().keySet())
                .isNotEmpty()
                .allSatisfy(name -> assertThat(points).containsEntry(name, 2));
    }
}
