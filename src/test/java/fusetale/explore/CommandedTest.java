package fusetale.explore;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Observation;
import fusetale.bench.Reading;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.Coil;
import fusetale.fault.Catalogue;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * What a command shows, put together from two states (superposition: any textbook of network theory), against the whole
 * solution with both at once.
 */
class CommandedTest {
    /** Share of a reading, beside the meter's accuracy, by which the product of two small changes may move it. */
    private static final double SECOND_ORDER = 0.02;

    private static final int EVERY = 31;

    @Test
    void whatIsPutTogetherIsAsIfItWereSolved() throws Exception {
        Circuit circuit = Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits/night-ferry.yaml"))
                .circuit());
        Meter meter = Meter.trueRms4000();
        List<Check> checks = Check.all(circuit, true);
        Arrangement plain = Arrangement.powered(circuit);
        Foretelling asFound = Foretelling.of(Specimen.nominal(circuit), plain, meter, checks, () -> false);
        Foretold built = asFound.under(Supposition.NOTHING, () -> false).orElseThrow();
        List<FaultForm> all = Catalogue.possible(circuit);
        List<Foretelling> commands = new ArrayList<>();
        for (String driven : List.of("L201", "E501")) {
            commands.add(
                    Foretelling.of(Specimen.nominal(circuit), plain.withHeldOn(driven), meter, checks, () -> false));
        }
        int told = 0;
        for (int k = 0; k < all.size(); k += EVERY) {
            Supposition supposition = new Supposition(List.of(all.get(k).usual()));
            Foretold found = asFound.under(supposition, () -> false).orElse(null);
            if (found == null || found.untouched() || !found.melted().isEmpty()) {
                continue;
            }
            for (Foretelling command : commands) {
                Commanded commanded = Commanded.of(asFound, built, command).orElseThrow();
                Optional<Foretold> together = commanded.under(supposition, found);
                if (together.isEmpty()) {
                    continue;
                }
                told++;
                Foretold whole = command.under(supposition, () -> false).orElseThrow();
                alike(command.arrangement().heldOn() + " and " + supposition, together.get(), whole);
            }
        }
        assertThat(told).isGreaterThan(15);
    }

    /**
     * Two coils of 10 ohm on one rail are twins, and what one does under a fault elsewhere the other does. One whose plunger asks
     * for 3 A where its twin asks for 2 A is no twin.
     */
    @Test
    void plungersThatAskForOtherCurrentsAreNoTwins() throws Exception {
        Circuit drawn = Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits/night-ferry.yaml"))
                .circuit());
        Coil coil = (Coil) drawn.part("L208").orElseThrow();
        Coil heavier = new Coil(
                coil.name(),
                coil.one(),
                coil.two(),
                coil.ohms(),
                coil.henries(),
                new Quantity(3, Unit.AMPERE),
                coil.holdAmps(),
                coil.about());

        assertThat(twinTells(drawn)).isPresent();
        assertThat(twinTells(drawn.with(heavier))).isEmpty();
    }

    /** What L208 does under a fault elsewhere, by what L207 does. */
    private static Optional<Foretold> twinTells(Circuit circuit) throws Exception {
        Supposition elsewhere = new Supposition(List.of(new Fault("C401", "", FailureMode.DRIED_OUT, null)));
        Arrangement plain = Arrangement.powered(circuit);
        Meter meter = Meter.trueRms4000();
        Specimen nominal = Specimen.nominal(circuit);
        Foretelling asFound = Foretelling.of(nominal, plain, meter, List.of(), () -> false);
        Foretold built = asFound.under(Supposition.NOTHING, () -> false).orElseThrow();
        Foretold found = asFound.under(elsewhere, () -> false).orElseThrow();
        Foretelling one = Foretelling.of(nominal, plain.withHeldOn("L207"), meter, List.of(), () -> false);
        Foretelling other = Foretelling.of(nominal, plain.withHeldOn("L208"), meter, List.of(), () -> false);
        Commanded own = Commanded.of(asFound, built, other).orElseThrow();
        Commanded twin = Commanded.of(asFound, built, one).orElseThrow();
        Optional<Foretold> told = own.like(
                elsewhere, found, twin, one.under(elsewhere, () -> false).orElseThrow());
        if (told.isPresent()) {
            alike(
                    "L208 by L207",
                    told.get(),
                    other.under(elsewhere, () -> false).orElseThrow());
        }
        return told;
    }

    private static void alike(String what, Foretold together, Foretold whole) {
        assertThat(sights(together)).as(what).isEqualTo(sights(whole));
        assertThat(together.melted()).as(what).isEqualTo(whole.melted());
        assertThat(together.mayMelt()).as(what).isEqualTo(whole.mayMelt());
        assertThat(together.lost()).as(what).isEqualTo(whole.lost());
        for (int c = 0; c < whole.readings().size(); c++) {
            Reading one = together.readings().get(c);
            Reading other = whole.readings().get(c);
            boolean alike = one.overRange() == other.overRange()
                    && (one.overRange()
                            || Math.abs(one.value() - other.value())
                                    <= 2 * other.halfWidth() + SECOND_ORDER * Math.abs(other.value()));
            assertThat(alike)
                    .as("%s, %s: %s, solved %s", what, other.check().words(), one.shows(), other.shows())
                    .isTrue();
        }
    }

    private static Map<String, Observation.Sight> sights(Foretold foretold) {
        return foretold.observations().stream()
                .collect(Collectors.toMap(
                        o -> o.part() + " " + o.sight().aspect(), Observation::sight, (a, b) -> a, TreeMap::new));
    }
}
