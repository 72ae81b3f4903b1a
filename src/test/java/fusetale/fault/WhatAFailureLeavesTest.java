package fusetale.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.Circuit;
import fusetale.circuit.DualCoil;
import fusetale.circuit.OpAmp;
import fusetale.circuit.Transformer;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a failure leaves of the rest of its part, and how two of one part lie to each other. */
class WhatAFailureLeavesTest {
    private static final Circuit BOARD = OneOfEach.circuit();

    private static Circuit apply(Fault... faults) throws UnfitSupposition {
        return Catalogue.apply(BOARD, new Supposition(List.of(faults)));
    }

    private static Fault fault(String part, String place, FailureMode mode) {
        return new Fault(part, place, mode, null);
    }

    /** A short across a coil takes R to R' and leaves no field: L/R falls as well, here by R'/R (L as turns squared, R as turns). */
    @Test
    void aShortedHoldWindingHasNoInductanceLeft() throws UnfitSupposition {
        DualCoil before = (DualCoil) BOARD.part("L208").orElseThrow();
        DualCoil after = (DualCoil)
                apply(fault("L208", "hold", FailureMode.SHORT)).part("L208").orElseThrow();
        double k = after.holdOhms().si() / before.holdOhms().si();

        assertThat(k).isLessThan(1e-3);
        assertThat(after.holdHenries().si())
                .isCloseTo(k * k * before.holdHenries().si(), within(1e-12));
        assertThat(after.powerHenries()).isEqualTo(before.powerHenries());
    }

    /** What windings are rated for follows from the ohms they were wound with, not from a break. */
    @ParameterizedTest
    @CsvSource({"sec", "lamps", "primary"})
    void aBreakChangesNoRating(String winding) throws UnfitSupposition {
        Transformer before = (Transformer) BOARD.part("T1").orElseThrow();
        Transformer after = (Transformer)
                apply(fault("T1", winding, FailureMode.OPEN)).part("T1").orElseThrow();

        for (int k = 0; k < before.windings().size(); k++) {
            assertThat(after.ratedAmps(after.windings().get(k)))
                    .isCloseTo(before.ratedAmps(before.windings().get(k)), within(1e-12));
        }
    }

    /** A cut-out lies before the winding, a cracked joint before the part: a short behind them is behind them, whichever is said first. */
    @Test
    void whatLiesInSeriesLiesBeforeAShort() throws UnfitSupposition {
        Fault cutOut = fault("T1", "cutout", FailureMode.OPEN);
        Fault winding = fault("T1", "primary", FailureMode.SHORT);
        Fault joint = new Fault("R204", "", FailureMode.CRACKED_JOINT, new Quantity(1000, Unit.OHM));
        Fault shorted = fault("R204", "", FailureMode.SHORT);

        assertThat(apply(winding, cutOut)).isEqualTo(apply(cutOut, winding));
        assertThat(apply(shorted, joint)).isEqualTo(apply(joint, shorted));
    }

    @Test
    void anAmplifierWithoutRoomBetweenItsRailsIsRefused() {
        OpAmp amplifier = (OpAmp) BOARD.part("U301").orElseThrow();
        Circuit low = BOARD.with(new OpAmp(
                amplifier.name(),
                amplifier.plus(),
                amplifier.minus(),
                amplifier.out(),
                new Quantity(0, Unit.VOLT),
                new Quantity(3, Unit.VOLT),
                amplifier.state(),
                amplifier.model(),
                amplifier.about()));
        Supposition swapped =
                new Supposition(List.of(), List.of(new Swap("U301", new Fitting.Model("op-amp-bipolar"))));

        assertThatThrownBy(() -> Catalogue.apply(low, swapped))
                .isInstanceOf(UnfitSupposition.class)
                .hasMessageContaining("no room");
    }
}
