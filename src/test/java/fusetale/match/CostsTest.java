package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Observation;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** What is done to the bench between two readings: nothing goes in or out under power, and what is not wanted out goes back (common practice). */
class CostsTest {
    private static final Circuit BOARD = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/first-light.yaml"))
            .circuit());

    private static final Arrangement OFF = Arrangement.unpowered();
    private static final Arrangement ON = Arrangement.powered(BOARD);

    @Test
    void theLampGoesInWithThePlugOut() {
        assertThat(new Costs(BOARD, ON).deeds(ON.withSeriesLamp(100.0)))
                .containsExactly(
                        "power off, plug out; let the capacitors discharge",
                        "series lamp of 100 W into the mains lead, good fuses as marked into their clips",
                        "power on");
    }

    @Test
    void aMinuteIsOne() {
        assertThat(Costs.said(0.2)).isEqualTo("1 minute");
        assertThat(Costs.said(1.4)).isEqualTo("1 minute");
        assertThat(Costs.said(3.6)).isEqualTo("4 minutes");
    }

    @Test
    void theLampComesOutAgain() {
        assertThat(new Costs(BOARD, OFF.withSeriesLamp(100.0)).deeds(ON))
                .containsExactly("take the series lamp out of the mains lead", "power on");
        assertThat(new Costs(BOARD, OFF.withSeriesLamp(100.0)).deeds(OFF)).isEmpty();
    }

    @Test
    void whatWasTakenOutGoesBackWithThePlugOut() {
        assertThat(new Costs(BOARD, ON.withPulledFuse("F1")).deeds(ON))
                .containsExactly("power off, plug out; let the capacitors discharge", "put F1 back", "power on");
        assertThat(new Costs(BOARD, OFF.withUnplugged("J1").withLiftedPin("R2.1")).deeds(OFF.withPulledFuse("F1")))
                .containsExactly("solder R2.1 back", "plug J1 in again", "take out F1");
    }

    @Test
    void aCommandIsShortAndEnds() {
        assertThat(new Costs(BOARD, ON).deeds(ON.withHeldOn("L1")))
                .containsExactly("command L1 on, ten seconds at most, and let go after the reading");
    }

    @Test
    void goingOffAndOnAgainTakesItsTime() {
        Ask plain = new Ask.Noticed(ON, "E1", Observation.Aspect.LAMP);
        Ask pulled = new Ask.Noticed(ON.withPulledFuse("F1"), "E1", Observation.Aspect.LAMP);

        assertThat(new Costs(BOARD, ON).minutes(pulled)).isGreaterThan(new Costs(BOARD, ON).minutes(plain) + 2);
    }

    /** The good fuses that went in for the lamp do not stay: what is read next is expected of the machine as found. */
    @Test
    void theFusesThatWereFoundGoBackAfterTheLamp() {
        Arrangement lamp = ON.withSeriesLamp(100.0);
        String own = "the fuses that were found back into their clips, blown or not";

        assertThat(new Costs(BOARD, lamp).deeds(OFF))
                .containsExactly("power off, plug out; let the capacitors discharge", own);
        assertThat(new Costs(BOARD, lamp).deeds(ON))
                .containsExactly(
                        "power off, plug out; let the capacitors discharge",
                        "take the series lamp out of the mains lead",
                        own,
                        "power on");
        assertThat(new Costs(BOARD, OFF.withSeriesLamp(100.0)).deeds(lamp))
                .containsExactly("good fuses as marked into their clips again", "power on");
        assertThat(new Costs(BOARD, lamp).deeds(lamp)).isEmpty();
    }
}
