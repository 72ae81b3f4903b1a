package fusetale.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
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

    /** 20 ohm of a winding whose wire has all but parted, and 5 ohm of its switch: 25 ohm, whichever is said first. */
    @Test
    void aBurntSwitchComesOnTopOfItsWinding() throws UnfitSupposition {
        Fault winding = new Fault("L208", "power", FailureMode.PARTLY_OPEN, new Quantity(20, Unit.OHM));
        Fault contact = new Fault("L208", "switch", FailureMode.BURNT, new Quantity(5, Unit.OHM));

        DualCoil one = (DualCoil) apply(winding, contact).part("L208").orElseThrow();
        DualCoil other = (DualCoil) apply(contact, winding).part("L208").orElseThrow();

        assertThat(one.powerOhms().si()).isCloseTo(25, within(1e-9));
        assertThat(other).isEqualTo(one);
    }

    /**
     * No currents are stated: 30 W in 4 ohm are 2.739 A, 4 W are 1 A. A plunger's force follows the ampere turns: with half the
     * turns it takes twice the amperes, with all of them behind a bad joint the same.
     */
    @ParameterizedTest
    @CsvSource({"SHORTED_TURNS, 0.5, RATIO, 2", "PARTLY_OPEN, 20, OHM, 1"})
    void aPlungerAsksForItsAmpereTurns(FailureMode mode, double amount, Unit unit, double times)
            throws UnfitSupposition {
        Coil after = (Coil) apply(new Fault("L205", "", mode, new Quantity(amount, unit)))
                .part("L205")
                .orElseThrow();

        assertThat(after.pullsInFromAmps()).isCloseTo(times * Math.sqrt(30 / 4.0), within(1e-9));
        assertThat(after.holdsFromAmps()).isCloseTo(times * 1, within(1e-9));
    }
}
