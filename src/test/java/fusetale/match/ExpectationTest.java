package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Drawn;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.MeterFunction;
import fusetale.explore.Foretelling;
import fusetale.explore.Specimen;
import fusetale.fault.FailureMode;
import fusetale.fault.Supposition;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * What is expected of a machine is kept by machines whose parts stray within their tolerances. A doubler with one of its diodes
 * reversed charges its halves against each other: what is left of 240 V is what their tolerances differ by.
 */
class ExpectationTest {
    private static final Circuit FERRY = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/night-ferry.yaml"))
            .circuit());

    private static final Check DISPLAY_SUPPLY = new Check("TP12", "gnd", MeterFunction.DC_VOLTS);

    @Test
    void voltagesThatCancelAreExpectedAsFarAsTolerancesLetThem() throws Exception {
        Meter meter = Meter.trueRms4000();
        List<Hypothesis> some = Hypotheses.of(FERRY).stream()
                .filter(h -> h.usual().isNothing() || isReversed("D401", h.usual()))
                .toList();
        Workbench bench = new Workbench(FERRY, meter, 1, 2, 1, some);
        Arrangement found = Arrangement.powered(FERRY);
        bench.dictionary().prepare(found, List.of(DISPLAY_SUPPLY), () -> false);
        Case nothing = Case.of(Findings.of(List.of()));
        bench.work(bench.boards().list(), List.of(found), nothing, () -> false);
        Boards.Board reversed = bench.boards().list().get(1);
        Expectation expected =
                bench.expect(reversed, Wanted.of(new Ask.Metered(found, DISPLAY_SUPPLY)), Renewed.NOTHING);
        double sigma = Math.sqrt(expected.ownVariance());

        for (int seed = 1; seed <= 8; seed++) {
            Specimen drawn = new Specimen(new Drawn(new Random(seed)).circuit(FERRY), 1);
            double shown = Foretelling.of(drawn, found, meter, List.of(DISPLAY_SUPPLY), () -> false)
                    .under(reversed.supposition(), () -> false)
                    .orElseThrow()
                    .readings()
                    .get(0)
                    .value();

            assertThat(Math.abs(shown)).isLessThan(0.5);
            assertThat((Axis.at(MeterFunction.DC_VOLTS, shown) - expected.middle()) / sigma)
                    .as("machine %d shows %.4f V, %.4f expected", seed, shown, expected.middle())
                    .isBetween(-3.0, 3.0);
        }
    }

    private static boolean isReversed(String part, Supposition usual) {
        return usual.faults().size() == 1
                && usual.faults().get(0).part().equals(part)
                && usual.faults().get(0).mode() == FailureMode.REVERSED;
    }
}
