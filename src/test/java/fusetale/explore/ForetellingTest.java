package fusetale.explore;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Reading;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.fault.Catalogue;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is told without solving, against the whole solution: every single fault of a board, power on and off. */
class ForetellingTest {
    /** Share of a reading, beside the meter's accuracy, by which what is called nothing may move it. */
    private static final double NEARLY = 0.01;

    @ParameterizedTest
    @CsvSource({"first-light, false", "fog-bell, true", "fog-bell, false"})
    void whatIsNotSolvedIsAsIfItWere(String board, boolean powered) throws Exception {
        Circuit circuit = Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits/" + board + ".yaml"))
                .circuit());
        Arrangement arrangement = powered ? Arrangement.powered(circuit) : Arrangement.unpowered();
        Meter meter = Meter.trueRms4000();
        List<Check> checks = Check.all(circuit, powered);
        Foretelling foretelling = Foretelling.of(Specimen.nominal(circuit), arrangement, meter, checks, () -> false);
        List<Supposition> untouched = Catalogue.possible(circuit).stream()
                .map(FaultForm::usual)
                .map(f -> new Supposition(List.of(f)))
                .filter(s -> foretelling
                        .under(s, () -> false)
                        .filter(Foretold::untouched)
                        .isPresent())
                .toList();
        assertThat(untouched).isNotEmpty();

        List<BatchAnswer<Readings>> solved = new BatchSolver(2)
                .readings(
                        new Batch(circuit, arrangement, meter, checks, Batch.Fuses.MELT),
                        untouched,
                        Progress.SILENT,
                        () -> false);
        for (int k = 0; k < untouched.size(); k++) {
            Supposition supposition = untouched.get(k);
            assertThat(solved.get(k)).as("%s", supposition).isInstanceOf(BatchAnswer.Found.class);
            List<Reading> whole =
                    ((BatchAnswer.Found<Readings>) solved.get(k)).kept().readings();
            List<Reading> told =
                    foretelling.under(supposition, () -> false).orElseThrow().readings();
            for (int c = 0; c < checks.size(); c++) {
                Reading one = told.get(c);
                Reading other = whole.get(c);
                boolean alike = one.overRange() == other.overRange()
                        && (one.overRange()
                                || Math.abs(one.value() - other.value())
                                        <= other.halfWidth() + NEARLY * Math.abs(other.value()));
                assertThat(alike)
                        .as("%s, %s: %s, solved %s", supposition, checks.get(c).words(), one.shows(), other.shows())
                        .isTrue();
            }
        }
    }
}
