package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Whole sentences on the command line, and what is printed typed back. */
class SentenceJourneyTest {
    private static final String FIRST_LIGHT = "circuits/first-light.yaml";
    private static final String SENTENCE =
            "Suppose BR1 leg 1 is shorted. Power off, F1 pulled, basic 3½ digit meter on diode"
                    + " test, red lead on TP3, black lead on TP1.";

    private static JsonNode json(String... arguments) throws IOException {
        String[] all = new String[arguments.length + 4];
        all[0] = "suppose";
        all[1] = FIRST_LIGHT;
        System.arraycopy(arguments, 0, all, 2, arguments.length);
        all[all.length - 2] = "--draws=2";
        all[all.length - 1] = "--json";
        Typed typed = Typed.in(all);
        assertThat(typed.code()).as(typed.err()).isZero();
        return new ObjectMapper().readTree(typed.out());
    }

    @Test
    void aSentenceSetsTheBenchAndTheMeter() throws IOException {
        JsonNode answer = json(SENTENCE);

        assertThat(answer.path("sentence").asText()).isEqualTo(SENTENCE);
        assertThat(answer.path("supposition").get(0).asText()).isEqualTo("BR1.leg1=short");
        assertThat(answer.path("bench").path("powerOn").asBoolean()).isFalse();
        assertThat(answer.path("bench").path("meter").asText()).isEqualTo("basic 3½ digit");
        assertThat(answer.path("readings")).hasSize(1);
        JsonNode reading = answer.path("readings").get(0);
        assertThat(reading.path("function").asText()).isEqualTo("diode test");
        assertThat(reading.path("from").asText()).isEqualTo("TP3");
        assertThat(reading.path("to").asText()).isEqualTo("TP1");
    }

    @Test
    void theSameSaidByOptionsIsTheSameQuestion() throws IOException {
        JsonNode said = json(SENTENCE);
        JsonNode options = json(
                "BR1.leg1=short",
                "--power=off",
                "--pull=F1",
                "--meter=basic",
                "--function=diode test",
                "--between=TP3,TP1");

        assertThat(options.path("readings")).isEqualTo(said.path("readings"));
        assertThat(options.path("supposition")).isEqualTo(said.path("supposition"));
    }

    @Test
    void optionsWinOverTheSentence() throws IOException {
        JsonNode answer = json(
                "Suppose R2 is open. Power on, mains 110 V, meter on d.c. volts.",
                "--mains=126",
                "--function=a.c. volts");

        assertThat(answer.path("sentence").asText())
                .isEqualTo("Suppose R2 is open. Power on, mains 126 V, meter on a.c. volts.");
        assertThat(answer.path("bench").path("mainsVolts").asDouble()).isEqualTo(126);
    }

    @Test
    void severalFunctionsLeaveTheMeterUnsaid() {
        Typed typed = Typed.in("suppose", FIRST_LIGHT, "R2=open", "--draws=2");

        assertThat(typed.out()).startsWith("Suppose R2 is open. Power on.\nFirst Light, mains 120 V. Meter: true rms");
    }

    @Test
    void readingsTakeTheBenchInWords() {
        Typed typed = Typed.in("readings", FIRST_LIGHT, "F1 pulled, tp1, ohms", "--draws=2");

        assertThat(typed.code()).as(typed.err()).isZero();
        assertThat(typed.out())
                .startsWith("First Light. Power off, plug out, F1 pulled. Meter: true rms 4000-count.")
                .contains("TP1    ohms")
                .doesNotContain("TP2 ");
    }

    @Test
    void readingsSupposeNothing() {
        assertThat(Typed.in("readings", FIRST_LIGHT, "R2 is open"))
                .satisfies(t -> assertThat(t.code()).isEqualTo(2))
                .extracting(Typed::err)
                .asString()
                .startsWith("readings tells of a healthy machine.");
    }

    @Test
    void aSentenceThatContradictsItselfIsAnswered() {
        assertThat(Typed.in("suppose", FIRST_LIGHT, "Suppose R2 is open. Power on, meter on ohms."))
                .satisfies(t -> assertThat(t.code()).isEqualTo(2))
                .extracting(Typed::err)
                .asString()
                .startsWith("ohms only with the power off");
    }
}
