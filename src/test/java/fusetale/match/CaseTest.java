package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Observation;
import fusetale.circuit.MeterFunction;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which two readings of one thing are the same. A meter's sheet says 1 % and 3 mV of the diode test, 0.8 % and 0.2 Ω with its leads
 * of ohms, 0.5 % and 20 mV of d.c. volts (common practice): either reading may be off by that.
 */
class CaseTest {
    private static boolean same(MeterFunction function, double first, double again) {
        Ask ask = new Ask.Metered(Arrangement.unpowered(), new Check("one", "two", function));
        Case of = Case.of(Findings.of(
                List.of(new Evidence(ask, new Shown.Figure(first)), new Evidence(ask, new Shown.Figure(again)))));
        assertThat(of.size()).isEqualTo(1);
        assertThat(of.evidence().get(0).shown()).isEqualTo(new Shown.Figure(again));
        return of.repeated()[0];
    }

    @ParameterizedTest
    @CsvSource({
        "DIODE_TEST, 0.475, 0.488",
        "DIODE_TEST, -0.0023, 0.0019",
        "OHMS, 0.1, 0.4",
        "OHMS, 39500, 39940",
        "DC_VOLTS, 0.0, 0.035",
        "DC_VOLTS, 28.2, 28.4",
    })
    void whatTheMeterLeavesOpenIsTheSame(MeterFunction function, double first, double again) {
        assertThat(same(function, first, again)).isTrue();
    }

    /** A digit turned round, a point of the decimal, the wrong range, the leads changed over. */
    @ParameterizedTest
    @CsvSource({
        "DIODE_TEST, 0.475, 0.745",
        "DIODE_TEST, 0.0654, 0.654",
        "DC_VOLTS, 2.82, 28.2",
        "DC_VOLTS, -28.2, 28.2",
        "OHMS, 395, 39500",
        "OHMS, 0.1, 1.0",
    })
    void aSlipIsNot(MeterFunction function, double first, double again) {
        assertThat(same(function, first, again)).isFalse();
    }

    private static Evidence look(boolean plugIn, Observation.Sight sight) {
        Arrangement off = Arrangement.unpowered();
        return new Evidence(
                new Ask.Noticed(off.withPower(plugIn), "F1", Observation.Aspect.FUSE), new Shown.Seen(sight));
    }

    @Test
    void aFuseLooksTheSameWithThePlugInAndOut() {
        Case twice = Case.of(Findings.of(
                List.of(look(true, Observation.Sight.WIRE_GONE), look(false, Observation.Sight.WIRE_GONE))));

        assertThat(twice.size()).isEqualTo(1);
        assertThat(twice.repeated()[0]).isTrue();
    }

    /** A new fuse is whole until the power comes on; what is seen then is of another machine. */
    @Test
    void whatWasReplacedRestsUntilThePowerComesOn() {
        Findings findings = Findings.of(List.of(look(true, Observation.Sight.WIRE_GONE)))
                .replaced(List.of("F1"))
                .with(look(false, Observation.Sight.WIRE_WHOLE))
                .with(look(true, Observation.Sight.WIRE_GONE));

        assertThat(Case.of(findings).renewed())
                .containsExactly(Renewed.NOTHING, new Renewed(Set.of("F1"), false), new Renewed(Set.of("F1"), true));
        assertThat(Case.of(findings.replaced(List.of("BR1"))).now()).isEqualTo(new Renewed(Set.of("F1", "BR1"), false));
    }

    /** A new fuse that is gone has had power, wherever it was looked at; one that is whole tells nothing, nor does an old one. */
    @Test
    void onlyANewFuseThatIsGoneTellsOfPower() {
        Findings fresh =
                Findings.of(List.of(look(true, Observation.Sight.WIRE_GONE))).replaced(List.of("F1"));

        assertThat(Case.of(fresh.with(look(false, Observation.Sight.WIRE_GONE)))
                        .now()
                        .switchedOn())
                .isTrue();
        assertThat(Case.of(fresh.with(look(true, Observation.Sight.WIRE_WHOLE)))
                        .now()
                        .switchedOn())
                .isFalse();
        Findings other = Findings.of(List.of()).replaced(List.of("BR1"));
        assertThat(Case.of(other.with(look(true, Observation.Sight.WIRE_GONE)))
                        .now()
                        .switchedOn())
                .isFalse();
    }

    /** A lamp in the mains lead takes what would melt it (common practice), and good fuses stand in for those that were found. */
    @Test
    void aSeriesLampLeavesANewFuseUntried() {
        Arrangement lamp = Arrangement.unpowered().withPower(true).withSeriesLamp(100.0);
        Check check = new Check("TP1", "gnd", MeterFunction.DC_VOLTS);
        Findings fresh = Findings.of(List.of()).replaced(List.of("F1"));
        Evidence behind = new Evidence(new Ask.Metered(lamp, check), new Shown.Figure(3));

        assertThat(Case.of(fresh.with(behind)).now().switchedOn()).isFalse();
        assertThat(Case.of(fresh.with(
                                new Evidence(new Ask.Metered(lamp.withSeriesLamp(null), check), new Shown.Figure(3))))
                        .now()
                        .switchedOn())
                .isTrue();
        Evidence asFound = look(true, Observation.Sight.WIRE_GONE);
        Evidence standIn = new Evidence(
                new Ask.Noticed(lamp, "F1", Observation.Aspect.FUSE), new Shown.Seen(Observation.Sight.WIRE_WHOLE));
        assertThat(Case.of(Findings.of(List.of(asFound, standIn))).evidence()).containsExactly(asFound, standIn);
    }
}
