package fusetale.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.Armature;
import fusetale.circuit.Circuit;
import fusetale.circuit.Mosfet;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Relay;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Wire;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What supposing a failure of a MOSFET, a thyristor or a relay does to the circuit. */
class SwitchingFailuresTest {
    private static final Circuit BOARD = OneOfEach.circuit();

    private static Circuit failed(String part, String place, FailureMode mode, @Nullable Quantity amount)
            throws UnfitSupposition {
        return Catalogue.apply(BOARD, new Supposition(List.of(new Fault(part, place, mode, amount))));
    }

    private static <P extends Part> P part(Circuit circuit, String name, Class<P> kind) {
        return kind.cast(circuit.part(name).orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"ds, drive, gnd", "gs, base, gnd", "dg, drive, base"})
    void shortOfAMosfetLiesBetweenItsPins(String place, String one, String two) throws UnfitSupposition {
        Wire laid = part(failed("Q206", place, FailureMode.SHORT, null), "Q206." + place + "~short", Wire.class);

        assertThat(List.of(laid.one(), laid.two())).containsExactly(new Net(one), new Net(two));
        assertThat(laid.ohms().si()).isEqualTo(0.020);
    }

    @Test
    void leakyGateOfAMosfetLeaksToItsSource() throws UnfitSupposition {
        Wire laid = part(failed("Q206", "gs", FailureMode.LEAKY, null), "Q206.gs~leaky", Wire.class);

        assertThat(List.of(laid.one(), laid.two())).containsExactly(new Net("base"), new Net("gnd"));
        assertThat(laid.ohms().si()).isEqualTo(10e3);
    }

    /** An open gate is 100 Mohm from what drove it and ends at its source's voltage: it leaks far less than that. */
    @Test
    void openGateOfAMosfetIsDrainedByItsSurroundings() throws UnfitSupposition {
        Circuit changed = failed("Q206", "g", FailureMode.OPEN, null);

        assertThat(part(changed, "Q206", Mosfet.class).model().gateLeakageOhms())
                .isLessThan(0.1 * 100e6);
        assertThat(part(changed, "Q206.g~open", Wire.class).ohms().si()).isEqualTo(100e6);
    }

    @ParameterizedTest
    @CsvSource({"ak, raw, gnd", "gk, base, gnd", "ag, raw, base"})
    void shortOfAThyristorLiesBetweenItsPins(String place, String one, String two) throws UnfitSupposition {
        Wire laid = part(failed("Q207", place, FailureMode.SHORT, null), "Q207." + place + "~short", Wire.class);

        assertThat(List.of(laid.one(), laid.two())).containsExactly(new Net(one), new Net(two));
    }

    @Test
    void thyristorThatDoesNotLatchNeedsACurrentNothingGives() throws UnfitSupposition {
        Thyristor q = part(failed("Q207", "", FailureMode.NO_LATCH, null), "Q207", Thyristor.class);

        assertThat(q.model().latchingAmps()).isGreaterThan(1000);
        assertThat(q.model().holdingAmps()).isGreaterThan(1000);
        assertThat(q.model().triggerAmps())
                .isEqualTo(part(BOARD, "Q207", Thyristor.class).model().triggerAmps());
    }

    @ParameterizedTest
    @CsvSource({"STUCK_ON, WELDED", "STUCK_OFF, STUCK_OPEN"})
    void stuckContactOfARelayDoesNotFollowItsCoil(FailureMode mode, Armature armature) throws UnfitSupposition {
        assertThat(part(failed("K201", "contact", mode, null), "K201", Relay.class)
                        .armature())
                .isEqualTo(armature);
    }

    @Test
    void burntContactOfARelayHasItsResistance() throws UnfitSupposition {
        Circuit changed = failed("K201", "contact", FailureMode.BURNT, new Quantity(3, Unit.OHM));

        assertThat(part(changed, "K201", Relay.class).contactOhms().si()).isEqualTo(3);
    }

    /** Ampere turns: with half of the turns twice the current pulls in; resistance × ½, inductance × ¼ (closed forms). */
    @Test
    void shortedTurnsOfARelayRaiseItsPullIn() throws UnfitSupposition {
        Circuit changed = failed("K201", "coil", FailureMode.SHORTED_TURNS, new Quantity(0.5, Unit.RATIO));
        Relay.Winding winding = part(changed, "K201", Relay.class).winding();

        assertThat(winding.pullInAmps().si()).isCloseTo(0.112, within(1e-12));
        assertThat(winding.ohms().si()).isCloseTo(80, within(1e-9));
        assertThat(winding.henries().si()).isCloseTo(0.075, within(1e-12));
    }

    @Test
    void openCoilOfARelayStandsInSeriesWithIt() throws UnfitSupposition {
        Wire wire = part(failed("K201", "coil", FailureMode.OPEN, null), "K201.coil~open", Wire.class);

        assertThat(wire.ohms().si()).isEqualTo(100e6);
    }

    @Test
    void weldedAndStuckOpenContradictEachOther() {
        Supposition both = new Supposition(List.of(
                new Fault("K201", "contact", FailureMode.STUCK_ON, null),
                new Fault("K201", "contact", FailureMode.STUCK_OFF, null)));

        assertThatThrownBy(() -> Catalogue.apply(BOARD, both))
                .isInstanceOf(UnfitSupposition.class)
                .hasMessage("K201 contact is welded and K201 contact is stuck open contradict each other; keep one of"
                        + " them");
    }
}
