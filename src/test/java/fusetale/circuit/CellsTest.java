package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CellsTest {
    /**
     * Lead-acid: E = 0.84 V + relative density of the acid (a rule of the battery trade, as in D. Linden, Handbook of
     * Batteries), 1.265 full, 1.225 at three quarters, 1.190 at half, 1.155 at a quarter, 1.120 empty (density table of the
     * trade; from memory).
     */
    @ParameterizedTest
    @CsvSource({"1, 1.265", "0.75, 1.225", "0.5, 1.190", "0.25, 1.155", "0, 1.120"})
    void leadAcidFollowsTheDensityOfItsAcid(double charge, double density) {
        assertThat(Cells.LEAD_ACID.volts(charge)).isCloseTo(0.84 + density, within(0.025));
    }

    /** Nominal voltages of the systems, IEC 60086-1 and IEC 61951-1: half full they are near it. */
    @ParameterizedTest
    @CsvSource({"NICKEL_CADMIUM, 1.2", "LEAD_ACID, 2.0", "ALKALINE, 1.5", "LITHIUM, 3.0"})
    void halfFullCellIsNearItsNominalVoltage(Cells cells, double volts) {
        assertThat(cells.volts(0.5)).isCloseTo(volts, within(0.13 * volts));
    }

    @ParameterizedTest
    @EnumSource(Cells.class)
    void voltageFallsWithTheCharge(Cells cells) {
        for (int k = 1; k <= 100; k++) {
            assertThat(cells.volts(k / 100.0)).isGreaterThan(cells.volts((k - 1) / 100.0));
        }
    }

    @Test
    void moreThanFullIsRefused() {
        assertThatThrownBy(() -> Cells.ALKALINE.volts(1.1)).hasMessageContaining("from 0 to 1");
    }
}
