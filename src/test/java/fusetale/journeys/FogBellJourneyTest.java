package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole commands on the board with thyristor, MOSFET, relay and battery: what the trade expects of each failure. */
class FogBellJourneyTest {
    private static final String FOG_BELL = "circuits/fog-bell.yaml";

    /** D.c. volts of a test point against ground, as supposed. */
    private static double reading(String point, String... asked) {
        List<String> words = new ArrayList<>(List.of("suppose", FOG_BELL));
        words.addAll(List.of(asked));
        words.addAll(List.of("--draws=2", "--csv", "--between=" + point + ",gnd"));
        return Typed.in(words.toArray(String[]::new))
                .out()
                .lines()
                // commas between an even number of quotes
                .map(line -> line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1))
                .filter(f -> f[1].equals("d.c. volts") && f[2].equals(point))
                .mapToDouble(f -> Double.parseDouble(f[5]))
                .findFirst()
                .orElseThrow();
    }

    /** A contact that rests closed, and 12.65 V of a full battery less 1 % at 90 %: lamp and fuse drop some tenths. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "K1.contact=stuck-on",
                "K1.coil=open",
                "Q2.d=open",
                "Q2.gs=short",
                "R4=open",
                "T1.primary=open",
                "D1=open"
            })
    void wreckLampBurnsWhereTheRelayDoesNotHoldItDark(String fault) {
        assertThat(reading("TP8", fault)).isBetween(12.0, 12.6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Q1.ak=short", "Q2.ds=short", "E1=open", "S1=stuck-off"})
    void wreckLampStaysDarkWhereTheRelayIsHeld(String fault) {
        assertThat(reading("TP8", fault)).isCloseTo(0, within(0.01));
    }

    /** A thyristor that conducts has about a volt left, one that does not has the whole of the pulses. */
    @ParameterizedTest
    @ValueSource(strings = {"Q1.g=open", "Q1.gk=short", "R2=open", "S1=stuck-off"})
    void bellLampIsDarkWhereTheGateGetsNothing(String fault) {
        assertThat(reading("TP4", fault)).isGreaterThan(10);
    }

    @Test
    void shortedThyristorCannotBePutOut() {
        assertThat(reading("TP4", "Q1.ak=short", "--switch=S1=open")).isLessThan(0.05);
    }
}
