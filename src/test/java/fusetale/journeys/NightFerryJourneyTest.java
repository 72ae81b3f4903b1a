package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole commands on the table game of the examples: what a repairer would ask first. */
class NightFerryJourneyTest {
    private static final String NIGHT_FERRY = "circuits/night-ferry.yaml";
    private static final Map<String, Pair> SHORTED_IN_CIRCUIT = pairs();
    private static final Map<String, Pair> SHORTED_AND_LIFTED = pairs("--lift=BR201.ac1");

    /** Bank B hangs on F202: the rail behind it, the end of its chain, its four coils at their drivers. */
    @Test
    void blownF202TakesItsBankAndNothingElse() {
        String csv = Typed.in("suppose", NIGHT_FERRY, "F202=blown", "--draws=2", "--csv")
                .out();

        assertThat(moved(csv)).containsOnly("TP6", "TP8", "TP25", "TP26", "TP27", "TP28");
    }

    /** UL/CSA 248-14: at 200 % of its rating and more a link up to 30 A has melted within two minutes. */
    @Test
    void shortedLegMeltsTheMarkedFuse() {
        Typed typed = Typed.in("suppose", NIGHT_FERRY, "BR201.leg1=short", "--draws=2", "--between=TP4,gnd");

        assertThat(typed.code()).isZero();
        assertThat(typed.out())
                .containsPattern("F201 +6 A slow +as marked +\\d+ A +melts in [0-9.]+ to (?:[1-9]?\\d|1[01]\\d) s");
        assertThat(typed.out()).doesNotContain("DO NOT POWER UP");
    }

    @Test
    void shortedLegBehindA25AmpereLinkIsADangerToldFirst() {
        Typed typed = Typed.in(
                "suppose", NIGHT_FERRY, "BR201.leg1=short", "F201=wrong-rating:25A", "--draws=2", "--between=TP4,gnd");

        String first = typed.out().lines().takeWhile(line -> !line.isBlank()).collect(Collectors.joining(" "));
        assertThat(first.replaceAll("\\s+", " "))
                .startsWith("DO NOT POWER UP: F201 holds a 25 A link where 6 A is marked and may hold for minutes")
                .containsPattern("J1 pin [34], pin [34]: burnt, a resistance from now on, in \\d+ to \\d+ s");
    }

    @Test
    void openDropperLeavesTheDisplayRailOnOneSideOnly() {
        String csv = Typed.in(
                        "suppose",
                        NIGHT_FERRY,
                        "R403=open",
                        "--draws=2",
                        "--between=TP12,gnd",
                        "--between=TP13,gnd",
                        "--csv")
                .out();

        assertThat(supposed(csv, "d.c. volts", "TP12", "gnd")).isGreaterThan(200);
        assertThat(supposed(csv, "d.c. volts", "TP13", "gnd")).isLessThan(1);
    }

    /**
     * The table of a bridge in circuit: pairs that the winding bridges read near zero on a good board too, a shorted leg
     * reads zero both ways between its a.c. pin and plus, and through the winding from the other a.c. pin as well. Worked
     * from the junction law, 0.48 V at 1 mA for a single leg of a 25 A to 35 A bridge, N·VT·ln 2 = 36 mV less for two in
     * parallel; ± 0.05 V for real parts.
     */
    @ParameterizedTest
    @CsvSource({
        "ac1, plus, 0.444, 0.000",
        "ac2, plus, 0.444, 0.000",
        "plus, ac1, OL, 0.000",
        "plus, ac2, OL, 0.000",
        "ac1, ac2, 0.000, 0.000",
        "ac2, ac1, 0.000, 0.000",
        "ac1, minus, OL, OL",
        "plus, minus, OL, OL"
    })
    void bridgeInCircuitReadsAsTheJunctionLawSays(String red, String black, String good, String shorted) {
        assertReads(SHORTED_IN_CIRCUIT.get(red + " " + black), good, shorted);
    }

    /** Lifting the a.c. lead tells which leg: the other one reads as a single good junction again. */
    @ParameterizedTest
    @CsvSource({
        "ac1, plus, 0.480, 0.000",
        "ac2, plus, 0.480, 0.480",
        "plus, ac1, OL, 0.000",
        "plus, ac2, OL, OL",
        "ac1, ac2, OL, OL"
    })
    void liftedLeadPartsTheCases(String red, String black, String good, String shorted) {
        assertReads(SHORTED_AND_LIFTED.get(red + " " + black), good, shorted);
    }

    /** Two alike junctions that share the meter's current N·VT·ln 2 = 36 mV less than one: what the winding's lead was good for. */
    @Test
    void liftedLeadTakesOneOfTwoLegsOut() {
        double inCircuit = Double.parseDouble(SHORTED_IN_CIRCUIT.get("ac1 plus").built());
        double lifted = Double.parseDouble(SHORTED_AND_LIFTED.get("ac1 plus").built());

        assertThat(lifted - inCircuit).isCloseTo(0.036, within(0.005));
    }

    private record Pair(String built, String supposed) {}

    private static Map<String, Pair> pairs(String... options) {
        List<String> arguments = new ArrayList<>(
                List.of("suppose", NIGHT_FERRY, "BR201.leg1=short", "--every-pair=BR201", "--draws=2", "--csv"));
        arguments.addAll(List.of(options));
        Map<String, Pair> pairs = new LinkedHashMap<>();
        for (String[] fields : rows(Typed.in(arguments.toArray(new String[0])).out())) {
            pairs.put(fields[2].substring(6) + " " + fields[3].substring(6), new Pair(fields[4], fields[5]));
        }
        return pairs;
    }

    private static void assertReads(Pair pair, String good, String shorted) {
        assertReads(pair.built(), good);
        assertReads(pair.supposed(), shorted);
    }

    private static void assertReads(String value, String expected) {
        if (expected.equals("OL")) {
            assertThat(value).as("a figure instead of OL").isEmpty();
        } else {
            assertThat(Double.parseDouble(value)).isCloseTo(Double.parseDouble(expected), within(0.05));
        }
    }

    private static List<String> moved(String csv) {
        return rows(csv).stream()
                .filter(f -> Double.parseDouble(f[10]) >= 1)
                .map(f -> f[2])
                .distinct()
                .toList();
    }

    private static double supposed(String csv, String function, String from, String to) {
        return rows(csv).stream()
                .filter(f -> f[1].equals(function) && f[2].equals(from) && f[3].equals(to))
                .mapToDouble(f -> Double.parseDouble(f[5]))
                .findFirst()
                .orElseThrow();
    }

    private static List<String[]> rows(String csv) {
        // commas between an even number of quotes
        return csv.lines()
                .skip(1)
                .map(line -> line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1))
                .toList();
    }
}
