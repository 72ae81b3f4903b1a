package fusetale.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.Bridge;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.Diode;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.FuseLink;
import fusetale.circuit.FuseLink.Speed;
import fusetale.circuit.FuseLink.Standard;
import fusetale.circuit.Mounting;
import fusetale.circuit.Zener;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class SwappingTest {
    private static final Circuit NIGHT_FERRY = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/night-ferry.yaml"))
            .circuit());

    private static Circuit swapped(Swap... swaps) throws UnfitSupposition {
        return Catalogue.apply(NIGHT_FERRY, new Supposition(List.of(), List.of(swaps)));
    }

    private static Swap model(String part, String name) {
        return new Swap(part, new Fitting.Model(name));
    }

    private static Swap link(double amps, @Nullable Speed speed, @Nullable Standard standard) {
        return new Swap("F201", new Fitting.Link(new Quantity(amps, Unit.AMPERE), speed, standard));
    }

    @Test
    void anotherModelKeepsPinsAndMounting() throws UnfitSupposition {
        Bridge before = (Bridge) NIGHT_FERRY.part("BR201").orElseThrow();
        Bridge after =
                (Bridge) swapped(model("BR201", "bridge-35A")).part("BR201").orElseThrow();

        assertThat(after.model().name()).isEqualTo("bridge-35A");
        assertThat(after.pins()).isEqualTo(before.pins());
        assertThat(after.about()).isEqualTo(before.about());
    }

    @Test
    void anotherMountingKeepsTheModel() throws UnfitSupposition {
        Swap clear = new Swap("BR201", new Fitting.Mounted(Mounting.STANDING_CLEAR));
        Bridge after = (Bridge) swapped(clear).part("BR201").orElseThrow();

        assertThat(after.model().name()).isEqualTo("bridge-25A");
        assertThat(Mounting.of(after.about())).isEqualTo(Mounting.STANDING_CLEAR);
    }

    @Test
    void anotherZenerBringsItsVoltage() throws UnfitSupposition {
        Zener after = (Zener) swapped(model("D403", "1N4742A")).part("D403").orElseThrow();

        assertThat(after.volts().si()).isEqualTo(12);
    }

    /** ESR = tan δ/(2π·f·C): the same loss factor at twice the capacitance is half the ESR. */
    @Test
    void esrOfAnotherElectrolyticFollowsItsCapacitance() throws UnfitSupposition {
        Electrolytic before = (Electrolytic) NIGHT_FERRY.part("C101").orElseThrow();
        Swap twice = new Swap("C101", new Fitting.Value(new Quantity(24_000e-6, Unit.FARAD), null));
        Electrolytic after = (Electrolytic) swapped(twice).part("C101").orElseThrow();

        assertThat(after.farads().si()).isEqualTo(0.024);
        assertThat(after.seriesOhms().si()).isCloseTo(before.seriesOhms().si() / 2, within(1e-9));
        assertThat(after.ratedVolts()).isEqualTo(before.ratedVolts());
    }

    /** Cold resistances of time-delay 6.3x32 links, a maker's table: 5 A 25.6 mΩ, 8 A 13 mΩ. */
    @Test
    void anotherLinkHasTheColdResistanceOfItsTable() throws UnfitSupposition {
        Fuse after = (Fuse) swapped(link(8, null, null)).part("F201").orElseThrow();

        assertThat(after.fitted().coldOhms().si()).isEqualTo(0.013);
        assertThat(after.fitted().speed()).isEqualTo(FuseLink.Speed.SLOW);
        assertThat(after.marked().ratedAmps().si()).isEqualTo(6);
    }

    /** No table of IEC links of 6.3x32: those of UL of the same size and speed are as long. */
    @Test
    void linkWithoutATableTakesTheOneOfItsSize() throws UnfitSupposition {
        FuseLink after = ((Fuse) swapped(link(5, FuseLink.Speed.SLOW, FuseLink.Standard.IEC_60127))
                        .part("F201")
                        .orElseThrow())
                .fitted();

        assertThat(after.coldOhms().si()).isEqualTo(0.0256);
        assertThat(after.standard()).isEqualTo(FuseLink.Standard.IEC_60127);
    }

    @Test
    void swappedPartFailsAsWhatItIsNow() throws UnfitSupposition {
        Supposition both = new Supposition(
                List.of(new Fault("BR201", "leg1", FailureMode.OPEN, null)), List.of(model("BR201", "bridge-35A")));
        Circuit after = Catalogue.apply(NIGHT_FERRY, both);

        assertThat(((Diode) after.part("BR201.leg2").orElseThrow()).model().name())
                .isEqualTo("bridge-35A");
    }

    @Test
    void modelOfAnotherKindIsRefusedWithWhatFits() {
        assertThatThrownBy(() -> swapped(model("BR201", "2N3055")))
                .isInstanceOf(UnfitSupposition.class)
                .hasMessageStartingWith("2N3055 is a transistor, and BR201 is a bridge. Allowed: bridge-4A");
    }

    @Test
    void partThatCannotBeSwappedIsRefused() {
        assertThatThrownBy(() -> swapped(model("T101", "bridge-4A")))
                .isInstanceOf(UnfitSupposition.class)
                .hasMessage("nothing can be fitted in place of T101");
    }

    @Test
    void twoModelsOfOnePartAreRefused() {
        assertThatThrownBy(() -> swapped(model("BR201", "bridge-4A"), model("BR201", "bridge-6A")))
                .isInstanceOf(UnfitSupposition.class)
                .hasMessageContaining("contradict each other");
    }
}
