package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.explore.Batch;
import fusetale.explore.BatchAnswer;
import fusetale.explore.BatchSolver;
import fusetale.explore.Progress;
import fusetale.fault.Catalogue;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.OperatingPoint;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.PeriodicState;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import fusetale.model.Conditions;
import fusetale.model.NetworkBuilder;
import fusetale.sentence.SentenceException;
import fusetale.sentence.SentenceParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Kirchhoff's current law and Tellegen's theorem (B. D. H. Tellegen, Philips Research Reports 7, 259-269, 1952) on every
 * machine shipped, healthy and under twenty suppositions. Neither looks at the equations that were solved.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BalanceTest {
    private static final Map<String, List<String>> SUPPOSED = Map.of(
            "first-light",
            List.of(
                    "BR1 leg 1 is shorted",
                    "BR1.leg2=short F1=wrong-rating:10A",
                    "BR1.leg3=open",
                    "BR1.leg1=open BR1.leg4=open",
                    "BR1.leg4=leaky:47ohm",
                    "BR1=reversed",
                    "C1=short",
                    "C1=open",
                    "C1=dried-out:10%",
                    "C1=high-esr:3ohm R1=drifted:200%",
                    "C1=leaky:100ohm",
                    "C1=reversed",
                    "R2=short E1=short",
                    "R2=cracked-joint:220ohm",
                    "E1=wrong-rating:1A",
                    "T1.primary=open",
                    "T1.sec=short",
                    "T1.sec=shorted-turns:60%",
                    "F1=blown",
                    "J1.1=burnt:5ohm E1=missing"),
            "fog-bell",
            List.of(
                    "Q1.ak=short",
                    "Q1.gk=short",
                    "Q1.g=open",
                    "Q1=no-latch",
                    "Q1.ag=short",
                    "Q2.ds=short",
                    "Q2.gs=leaky:10kohm",
                    "Q2.g=open",
                    "Q2.dg=short D2=open",
                    "K1.coil=open",
                    "K1 contact is welded",
                    "K1.contact=stuck-off B1=weak:30%",
                    "K1.contact=burnt:5ohm K1.coil=open",
                    "K1.coil=shorted-turns:60%",
                    "BR1.leg1=short F1=wrong-rating:10A",
                    "C1=dried-out:2%",
                    "D1=short",
                    "J1.2=swapped B1=reversed",
                    "R1=open E1=short",
                    "T1.primary=open"),
            "night-ferry",
            List.of(
                    "F202=blown",
                    "BR201 leg 1 is shorted and F201 holds a 25 A fuse",
                    "BR101.leg3=short",
                    "BR201.leg2=open",
                    "C101=dried-out:20%",
                    "C101=leaky:10ohm U101=weak",
                    "U101=short",
                    "U101=open",
                    "C401=short D403=open",
                    "C402=dried-out:5% R403=drifted:200%",
                    "D401=reversed",
                    "D301=short",
                    "Q201.ce=short",
                    "U203=stuck-on",
                    "U206=stuck-on D206=open",
                    "E310=short",
                    "T101.sol=shorted-turns:80%",
                    "T101.primary=open",
                    "W203=burnt:1ohm U302=stuck-on",
                    "J3=reversed B501=reversed"));

    private final Map<String, List<Tried>> powered = new HashMap<>();

    /** A machine under one supposition, solved. */
    private record Tried(String supposed, Balance balance) {}

    @BeforeAll
    void solveAll() throws SentenceException, UnfitSupposition {
        for (String machine : SUPPOSED.keySet()) {
            Circuit healthy = read(machine);
            List<Tried> tries = new ArrayList<>();
            PeriodicState near = solve("nothing", healthy, null, tries);
            for (String line : SUPPOSED.getOrDefault(machine, List.of())) {
                solve(line, supposed(healthy, line), near, tries);
            }
            powered.put(machine, tries);
        }
    }

    @Test
    void everyMachineShippedIsTriedUnderTwentySuppositions() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("circuits"))) {
            List<String> machines = files.map(p -> String.valueOf(p.getFileName()))
                    .filter(name -> name.endsWith(".yaml"))
                    .map(name -> name.replace(".yaml", ""))
                    .toList();

            assertThat(SUPPOSED).containsOnlyKeys(machines);
        }
        assertThat(SUPPOSED.values())
                .allSatisfy(lines -> assertThat(lines).hasSize(20).doesNotHaveDuplicates());
    }

    /**
     * A millionth of the largest current at the node, a nanoampere, and what double precision leaves: while a bridge is off, a
     * winding hangs on junction capacitance alone, and a stage sees γh/C = 38 μs/100 pF = 0.4 MΩ there, ahead of a series
     * conductance of up to 82 S (bridge-6A). Currents that cancel there are told with an error of 2⁻⁵³ · 0.4 MΩ · 82 S =
     * 3.6e-9 of themselves.
     */
    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell", "night-ferry"})
    void currentsAddUpToZeroAtEveryNodeAtEveryMoment(String machine) {
        SoftAssertions softly = new SoftAssertions();
        for (Tried t : tries(machine)) {
            softly.assertThat(t.balance().unbalanced(1e-6, 1e-9, 3.6e-9))
                    .as(t.supposed())
                    .isEmpty();
        }
        softly.assertAll();
    }

    /**
     * With its ground through gigohms a board is lifted by gigavolts an ampere by each of its parts alone, and all of them together leave it
     * where it was: what is left of them in double precision would be 0.3 μA here, and is refined away. A thyristor's anode that hangs
     * on leakage is lifted by a quarter of a megohm, and so is what hangs on a leaky winding. Bounds as above.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "night-ferry | lamps held on | 120 | W203=open:10Gohm",
                "night-ferry | lamps held on | 120 | R334=open:10Gohm",
                "night-ferry | lamps held on | 120 | J5.1=open:859Mohm BR201.quarter=reversed",
                "night-ferry | lamps held on | 110 | Q303.e=open:10Gohm",
                "fog-bell | bell lamp off | 120 | R1=open:301Mohm mains=high-line:142V",
                "fog-bell | bell lamp off | 126 | D2=short:1.27ohm R1=open:19.8Mohm",
                "first-light | power on | 126 | T1.sec=leaky:99.1ohm R1=drifted:x21.6",
            })
    void currentsAddUpToZeroWhereANetHangsOnLittle(String machine, String setting, double mainsVolts, String line)
            throws Exception {
        Circuit healthy = read(machine);
        BenchSetting named = healthy.settings().stream()
                .filter(s -> s.name().equals(setting))
                .findFirst()
                .orElseThrow();

        List<BatchAnswer<List<String>>> answers = new BatchSolver(1)
                .solve(
                        Batch.of(healthy, Arrangement.of(healthy, named).withMainsVolts(mainsVolts)),
                        List.of(new SentenceParser(healthy).parse(line)),
                        seen -> Balance.of(seen.modelled().network(), Objects.requireNonNull(seen.state()))
                                .unbalanced(1e-6, 1e-9, 3.6e-9),
                        Progress.SILENT,
                        () -> false);

        assertThat(answers)
                .singleElement()
                .isInstanceOfSatisfying(
                        BatchAnswer.Found.class,
                        found -> assertThat((List<?>) found.kept()).isEmpty());
    }

    /** What capacitors and windings hold is the same after a cycle. */
    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell", "night-ferry"})
    void overACycleAllEnergyGivenIsTaken(String machine) {
        SoftAssertions softly = new SoftAssertions();
        for (Tried t : tries(machine)) {
            Balance balance = t.balance();
            softly.assertThat(balance.takenJoules())
                    .as(t.supposed())
                    .isCloseTo(balance.deliveredJoules(), balance.partOfDelivered(1e-3));
        }
        softly.assertAll();
    }

    /** An ideal transformer takes no power. Rounding as above. */
    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell", "night-ferry"})
    void turnsOfTransformersTakeNoPower(String machine) {
        SoftAssertions softly = new SoftAssertions();
        for (Tried t : tries(machine)) {
            Balance balance = t.balance();
            softly.assertThat(balance.idealJoules()).as(t.supposed()).isCloseTo(0, balance.partOfDelivered(1e-8));
        }
        softly.assertAll();
    }

    /** Over a cycle that repeats, the mean current into a capacitor and the mean voltage across an inductance are zero: any textbook. */
    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell", "night-ferry"})
    void theStateRepeats(String machine) {
        assertThat(tries(machine))
                .allSatisfy(t ->
                        assertThat(t.balance().drifting(1e-6)).as(t.supposed()).isEmpty());
    }

    /**
     * Balance holds for any current in a junction; this asks whether it is the one that goes with its voltage: within a
     * millivolt, a tenth of the last digit of a meter on its 20 V range. Junctions that are off are followed to 3 μV: 20 nA
     * in the 150 ohm across a Darlington's base, and a millionth of what flows in a short beside them.
     */
    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell", "night-ferry"})
    void junctionsCarryWhatTheirVoltageAsksFor(String machine) {
        SoftAssertions softly = new SoftAssertions();
        for (Tried t : tries(machine)) {
            softly.assertThat(t.balance().disobedient(1e-3, 1e-6, 2e-8))
                    .as(t.supposed())
                    .isEmpty();
        }
        softly.assertAll();
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell", "night-ferry"})
    void currentsAddUpToZeroWithThePowerOff(String machine) throws SentenceException, UnfitSupposition {
        Circuit healthy = read(machine);
        SoftAssertions softly = new SoftAssertions();
        for (String line : SUPPOSED.getOrDefault(machine, List.of())) {
            Solver solver = new Solver(NetworkBuilder.build(supposed(healthy, line), Conditions.unplugged())
                    .network());
            OperatingPoint rest = found(solver.operatingPoint(null));
            softly.assertThat(Balance.of(solver.network(), rest).unbalanced(1e-9, 1e-12, 0))
                    .as(line)
                    .isEmpty();
        }
        softly.assertAll();
    }

    private List<Tried> tries(String machine) {
        return powered.getOrDefault(machine, List.of());
    }

    private static PeriodicState solve(String line, Circuit circuit, @Nullable PeriodicState near, List<Tried> tries) {
        var network = NetworkBuilder.build(circuit, Conditions.mains(120)).network();
        Solver solver = near == null ? new Solver(network) : Solver.near(network, near);
        PeriodicState state = found(solver.periodicState(
                PeriodicSettings.mains(circuit.mains().hertz().si()), near, () -> false));
        tries.add(new Tried(line, Balance.of(solver.network(), state)));
        return state;
    }

    private static Circuit supposed(Circuit healthy, String line) throws SentenceException, UnfitSupposition {
        return Catalogue.apply(healthy, new SentenceParser(healthy).parse(line));
    }

    private static <T> T found(Solved<T> solved) {
        return solved.orElse(reason -> {
            throw new AssertionError(reason);
        });
    }

    private static Circuit read(String machine) {
        return Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits", machine + ".yaml"))
                .circuit());
    }
}
