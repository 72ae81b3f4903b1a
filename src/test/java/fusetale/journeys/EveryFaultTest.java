package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.fault.Catalogue;
import fusetale.fault.Fault;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.Solver;
import fusetale.model.Conditions;
import fusetale.model.NetworkBuilder;
import fusetale.quantity.Quantity;
import fusetale.sentence.SentenceException;
import fusetale.sentence.SentenceParser;
import fusetale.sentence.SentencePrinter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every single fault of every machine shipped. */
class EveryFaultTest {
    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell", "night-ferry"})
    void noFaultLeavesANetworkWithAFlaw(String machine) throws UnfitSupposition {
        Circuit healthy = read(machine);
        List<String> flawed = new ArrayList<>();
        for (Fault fault : extremes(healthy)) {
            Circuit supposed = Catalogue.apply(healthy, new Supposition(List.of(fault)));
            Solver solver = new Solver(
                    NetworkBuilder.build(supposed, Conditions.mains(120)).network());
            solver.flaws().forEach(flaw -> flawed.add(SentencePrinter.compact(fault) + ": " + flaw));
        }

        assertThat(flawed).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell", "night-ferry"})
    void everyFaultCanBeSaidAndReadBack(String machine) throws UnfitSupposition, SentenceException {
        Circuit healthy = read(machine);
        SentenceParser parser = new SentenceParser(healthy);
        SentencePrinter printer = new SentencePrinter(healthy);
        List<Supposition> misread = new ArrayList<>();
        for (Fault fault : extremes(healthy)) {
            Supposition supposition = new Supposition(List.of(fault));
            boolean said = parser.parse(printer.sentence(supposition)).equals(supposition);
            boolean written = parser.parse(SentencePrinter.compact(supposition)).equals(supposition);
            if (!said || !written) {
                misread.add(supposition);
            }
        }

        assertThat(misread).isEmpty();
    }

    private static List<Fault> extremes(Circuit circuit) {
        List<Fault> faults = new ArrayList<>();
        for (FaultForm form : Catalogue.possible(circuit)) {
            faults.add(form.usual());
            if (form.amount() != null) {
                faults.add(form.of(
                        new Quantity(form.amount().lowSi(), form.amount().unit())));
                faults.add(form.of(
                        new Quantity(form.amount().highSi(), form.amount().unit())));
            }
        }
        return faults;
    }

    private static Circuit read(String machine) {
        return Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits", machine + ".yaml"))
                .circuit());
    }
}
