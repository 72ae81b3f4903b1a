package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Meters, charges and what is seen without a meter, as typed. */
class MeterJourneyTest {
    private static final String FIRST_LIGHT = "circuits/first-light.yaml";
    private static final String NIGHT_FERRY = "circuits/night-ferry.yaml";

    private static JsonNode json(String... arguments) throws IOException {
        Typed typed = Typed.in(arguments);
        assertThat(typed.err()).isEmpty();
        return new ObjectMapper().readTree(typed.out());
    }

    private static JsonNode observation(JsonNode outcome, String part, String what) {
        return StreamSupport.stream(outcome.path("observations").spliterator(), false)
                .filter(o -> o.path("part").asText().equals(part)
                        && o.path("what").asText().equals(what))
                .findFirst()
                .orElseThrow();
    }

    /** The same rail on a meter with half-wave detector and no blocking capacitor: 2.22 times its d.c. volts. */
    @Test
    void basicMeterReadsARailOnAlternatingVoltsAsTwiceItsVoltage() throws IOException {
        JsonNode readings = json("readings", FIRST_LIGHT, "--meter=basic", "--between=TP1,gnd", "--draws=2", "--json")
                .path("readings");

        double direct = readings.get(0).path("asBuilt").asDouble();
        assertThat(readings.get(1).path("asBuilt").asDouble()).isCloseTo(2.2214 * direct, within(0.02));
    }

    @ParameterizedTest
    @CsvSource({
        "--meter=nonsense, there is no meter 'nonsense'",
        "--range=30 V, no range '30 V'",
        "--range=wide, no range 'wide'",
        "--function=omhs, nearest: 'ohms'",
        "--amps=F9, no fuse and no pin 'F9'",
        "--charged=C9:5V, no capacitor C9",
        "--charged=C1, takes two names",
        "--charged=C1:much, --charged",
        "--function=continuity, not with the power on"
    })
    void whatAMeterCannotDoIsRefusedWithWhatItCan(String option, String said) {
        Typed typed = Typed.in("readings", FIRST_LIGHT, option, "--draws=2");

        assertThat(typed.code()).isEqualTo(2);
        assertThat(typed.err()).containsIgnoringCase(said);
    }

    @Test
    void meterWithANeedleHasNoDiodeTest() {
        Typed typed = Typed.in("readings", FIRST_LIGHT, "--meter=analogue", "--every-pair=BR1", "--draws=2");

        assertThat(typed.code()).isEqualTo(2);
        assertThat(typed.err()).contains("has no diode test");
    }

    /** 12 000 µF beside 470 ohm at 1 mA: τ = 12 mF·(470 ∥ 3200 ohm) is some 5 s, so it climbs for a quarter of a minute. */
    @Test
    void reservoirClimbsInTableJsonAndCsv() throws IOException {
        String[] asked = {"readings", NIGHT_FERRY, "--power=off", "--between=TP1,gnd", "--draws=2"};

        assertThat(Typed.in(asked).out()).contains(" ↑ 0.4").contains("still moving");
        JsonNode ohms = json(with(asked, "--json")).path("readings").get(0);
        assertThat(ohms.path("climbing").path("value").asDouble())
                .isLessThan(0.6 * ohms.path("asBuilt").asDouble());
        assertThat(ohms.path("climbing").path("settles").asDouble())
                .isEqualTo(ohms.path("asBuilt").asDouble());
        assertThat(Typed.in(with(asked, "--csv")).out())
                .contains("label,climbing")
                .contains(" then 0.4");
    }

    private static String[] with(String[] arguments, String more) {
        List<String> all = new java.util.ArrayList<>(List.of(arguments));
        all.add(more);
        return all.toArray(String[]::new);
    }

    /** With its bleeder of 470 ohm open the reservoir keeps its charge longer: v = 8 V·e^(−t/RC) on 470 ohm is 4.7 V at most. */
    @Test
    void chargeOfAReservoirIsReadThreeSecondsLater() throws IOException {
        JsonNode reading = json(
                        "suppose",
                        NIGHT_FERRY,
                        "R101=open",
                        "--charged=C101:8V",
                        "--between=TP1,gnd",
                        "--function=d.c. volts",
                        "--draws=2",
                        "--json")
                .path("readings")
                .get(0);

        assertThat(reading.path("asBuilt").asDouble()).isBetween(0.5, 8 * Math.exp(-3 / (470 * 12e-3)));
        assertThat(reading.path("asSupposed").asDouble())
                .isGreaterThan(1.2 * reading.path("asBuilt").asDouble());
        assertThat(reading.path("climbing").path("settles").asDouble()).isCloseTo(0, within(0.01));
    }

    /** 45.9 V mean on 4.7 ohm, the driver and the meter's 0.23 ohm: less than 45.9/4.7 A, and above half of it. */
    @Test
    void ampsAreReadInThePlaceOfAFuse() throws IOException {
        JsonNode reading = json("readings", NIGHT_FERRY, "--amps=F202", "--hold-on=L205", "--draws=2", "--json")
                .path("readings")
                .get(0);

        assertThat(reading.path("function").asText()).isEqualTo("d.c. amps");
        assertThat(reading.path("from").asText()).isEqualTo("F202.one");
        assertThat(reading.path("asBuilt").asDouble()).isBetween(45.9 / 4.7 / 2, 45.9 / 4.7);
    }

    /** R1 of 1 kohm across 16.8 V: a pin that is lifted lets the meter in, 16.8 mA. */
    @Test
    void ampsAreReadAtALiftedPin() throws IOException {
        JsonNode reading = json("readings", FIRST_LIGHT, "--amps=R1.one", "--draws=2", "--json")
                .path("readings")
                .get(0);

        assertThat(reading.path("asBuilt").asDouble()).isCloseTo(16.84e-3, within(0.3e-3));
    }

    @Test
    void openDropperPutsTheLampOut() throws IOException {
        JsonNode outcome = json("suppose", FIRST_LIGHT, "R2=open", "--draws=2", "--json");

        assertThat(observation(outcome, "E1", "lamp").path("asBuilt").asText()).isEqualTo("lit");
        assertThat(observation(outcome, "E1", "lamp").path("asSupposed").asText())
                .isEqualTo("dark");
    }

    /** The story of the machine: the row of lamps stops where the lamp rail's sense line is open. */
    @Test
    void controllerStopsWhereItsCheckFails() {
        Typed typed = Typed.in("suppose", NIGHT_FERRY, "R502=open", "--draws=2");

        assertThat(typed.out()).contains("starts (4 of 4)").contains("stops at 1 of 4, before lamp rail");
    }

    @Test
    void shortedDriverPullsItsCoilIn() throws IOException {
        JsonNode outcome = json("suppose", NIGHT_FERRY, "Q205.ce=short", "--draws=2", "--json");

        assertThat(observation(outcome, "L205", "coil").path("asBuilt").asText())
                .isEqualTo("does nothing");
        assertThat(observation(outcome, "L205", "coil").path("asSupposed").asText())
                .isEqualTo("pulls in");
    }

    /** A clip of half an ohm: every reading that differs is told as built and as supposed. */
    @Test
    void looseClipMakesReadingsComeAndGo() throws IOException {
        JsonNode outcome = json("suppose", FIRST_LIGHT, "F1=loose", "--draws=2", "--json");

        JsonNode first = outcome.path("comesAndGoes").get(0);
        assertThat(first.path("good").asDouble())
                .isGreaterThan(first.path("bad").asDouble());
        assertThat(Typed.in("suppose", FIRST_LIGHT, "F1=loose", "--draws=2").out())
                .contains("Comes and goes with the contact")
                .contains(first.path("goodShows").asText() + " to "
                        + first.path("badShows").asText());
    }

    /** Beside a fault that stays, the contact comes and goes between that fault and both. */
    @Test
    void otherFaultsStayWhileAContactComesAndGoes() throws IOException {
        JsonNode outcome = json("suppose", FIRST_LIGHT, "F1=loose", "BR1.leg1=open", "--draws=2", "--json");
        JsonNode alone = json("suppose", FIRST_LIGHT, "BR1.leg1=open", "--draws=2", "--json");

        JsonNode moving = outcome.path("comesAndGoes").get(0);
        double good = StreamSupport.stream(alone.path("readings").spliterator(), false)
                .filter(r -> r.path("from").asText().equals(moving.path("from").asText())
                        && r.path("function")
                                .asText()
                                .equals(moving.path("function").asText()))
                .findFirst()
                .orElseThrow()
                .path("asSupposed")
                .asDouble();
        assertThat(moving.path("good").asDouble()).isCloseTo(good, within(1e-4 * good));
    }

    @Test
    void allObservationsAreToldWhereAsked() {
        String all = Typed.in("readings", FIRST_LIGHT, "--observations=all", "--draws=2")
                .out();

        assertThat(all).contains("wire whole").contains("quiet").contains("can be touched");
        assertThat(all.lines()).allMatch(line -> line.length() <= 100);
        assertThat(Typed.in("readings", FIRST_LIGHT, "--draws=2").out()).doesNotContain("wire whole");
    }
}
