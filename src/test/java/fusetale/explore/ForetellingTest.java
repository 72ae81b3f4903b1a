package fusetale.explore;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Observation;
import fusetale.bench.Reading;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.fault.Catalogue;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
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

    /**
     * A coil that its driver's short keeps on takes 4.2 A, and 8.5 A flow while another is commanded beside it. A slow 5 A fuse
     * carries 1.7 times its rating for minutes (84 s to 8.2 min), so that the command shows the coil going in. Currents and times
     * are the program's own; the ten seconds of a command are judgement.
     */
    @Test
    void fuseThatTakesMinutesIsWholeWhileACoilIsCommanded() throws Exception {
        Circuit circuit = Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits/night-ferry.yaml"))
                .circuit());
        Arrangement commanded = Arrangement.powered(circuit).withHeldOn("L206");
        Supposition stuck =
                new Supposition(List.of(new Fault("Q207", "ce", FailureMode.SHORT, new Quantity(0.02, Unit.OHM))));
        Meter meter = Meter.trueRms4000();

        Foretold told = Foretelling.of(Specimen.nominal(circuit), commanded, meter, List.of(), () -> false)
                .under(stuck, () -> false)
                .orElseThrow();

        assertThat(told.melted()).isEmpty();
        assertThat(told.observations()).contains(new Observation("L206", Observation.Sight.PULLS_IN, ""));
        // and after the ten minutes that suppose answers for
        Machine machine = Machine.of(circuit, commanded, stuck);
        Settled after = Objects.requireNonNull(
                Settled.of(machine, meter, null, Set.of(), () -> false).orElse(reason -> null));
        assertThat(after.melted()).extracting(c -> c.fuse().name()).containsExactly("F202");
    }
}
