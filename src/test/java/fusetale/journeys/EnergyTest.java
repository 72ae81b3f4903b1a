package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.fault.Catalogue;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.Network;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.PeriodicState;
import fusetale.mna.Run;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import fusetale.model.Conditions;
import fusetale.model.NetworkBuilder;
import fusetale.sentence.SentenceException;
import fusetale.sentence.SentenceParser;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Conservation of energy to a thousandth of what the mains delivers, at the lowest, the usual and the highest mains: over a
 * cycle that repeats all is taken, and from switching on whatever is not taken is stored as ½CV² and ½LI². The network is
 * asked, not the solver's equations.
 */
class EnergyTest {
    private static final double BOUND = 1e-3;
    /** Three cycles [s]. */
    private static final double SWITCHED_ON_SECONDS = 0.05;

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "healthy", textBlock = """
            first-light | healthy | ends
            first-light | BR1.leg1=short | ends
            first-light | C1=open | ends
            first-light | T1.sec=shorted-turns:60% | ends
            first-light | C1=high-esr:3ohm | ends and usual
            night-ferry | healthy | ends
            night-ferry | BR201.leg1=short | ends and usual
            night-ferry | C101=dried-out:20% | ends
            night-ferry | Q201.ce=short | ends
            night-ferry | U203=stuck-on | ends
            """)
    void overACycleAllThatIsGivenIsTaken(String machine, @Nullable String supposed, String where)
            throws SentenceException, UnfitSupposition {
        Circuit circuit = read(machine, supposed);
        for (double volts : where.equals("ends") ? ends(circuit) : mains(circuit)) {
            Network network =
                    NetworkBuilder.build(circuit, Conditions.mains(volts)).network();
            PeriodicState state = found(new Solver(network).periodicState(settings(circuit), null, () -> false));
            Balance balance = Balance.of(network, state);

            assertThat(balance.takenJoules() + balance.idealJoules())
                    .as("at %s V", volts)
                    .isCloseTo(balance.deliveredJoules(), balance.partOfDelivered(BOUND));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "healthy", textBlock = """
            first-light | healthy
            first-light | BR1.leg1=short
            first-light | C1=open
            first-light | C1=leaky:100ohm
            night-ferry | healthy
            night-ferry | BR201.leg1=short
            night-ferry | U203=stuck-on
            """)
    void fromSwitchingOnWhatIsNotTakenIsStored(String machine, @Nullable String supposed)
            throws SentenceException, UnfitSupposition {
        Circuit circuit = read(machine, supposed);
        for (double volts : mains(circuit)) {
            Network network =
                    NetworkBuilder.build(circuit, Conditions.mains(volts)).network();
            Run run = found(new Solver(network).run(settings(circuit), SWITCHED_ON_SECONDS));
            Balance balance = Balance.of(network, run);

            assertThat(balance.takenJoules() + balance.idealJoules() + balance.storedJoules())
                    .as("at %s V", volts)
                    .isCloseTo(balance.deliveredJoules(), balance.partOfDelivered(BOUND));
        }
    }

    /** Without the usual mains, at which {@link BalanceTest} asks the same. */
    private static double[] ends(Circuit circuit) {
        return new double[] {
            circuit.mains().lowestVolts().si(), circuit.mains().highestVolts().si()
        };
    }

    private static double[] mains(Circuit circuit) {
        return new double[] {
            circuit.mains().lowestVolts().si(),
            circuit.mains().volts().si(),
            circuit.mains().highestVolts().si()
        };
    }

    private static PeriodicSettings settings(Circuit circuit) {
        return PeriodicSettings.mains(circuit.mains().hertz().si());
    }

    private static Circuit read(String machine, @Nullable String supposed) throws SentenceException, UnfitSupposition {
        Circuit healthy = Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits", machine + ".yaml"))
                .circuit());
        return supposed == null ? healthy : Catalogue.apply(healthy, new SentenceParser(healthy).parse(supposed));
    }

    private static <T> T found(Solved<T> solved) {
        return solved.orElse(reason -> {
            throw new AssertionError(reason);
        });
    }
}
