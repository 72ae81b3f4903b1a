package fusetale.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Fuse;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.Part;
import fusetale.circuit.Switch;
import fusetale.circuit.Wire;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** On the shipped table game: eight coils L201 to L208, of which two are dual, fuses F201 and F202. */
class ArrangementTest {
    private static final Circuit FERRY = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/night-ferry.yaml"))
            .circuit());

    private static final Arrangement ON = Arrangement.powered(FERRY);

    private static <P extends Part> P part(Circuit circuit, String name, Class<P> kind) {
        return kind.cast(circuit.part(name).orElseThrow());
    }

    private static LogicOutput driving(Circuit circuit, String coil) {
        return circuit.parts().stream()
                .filter(LogicOutput.class::isInstance)
                .map(LogicOutput.class::cast)
                .filter(o -> coil.equals(o.commands()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everySettingOfTheFileFits() throws UnfitArrangement {
        for (BenchSetting setting : FERRY.settings()) {
            assertThat(Arrangement.of(FERRY, setting).name()).isEqualTo(setting.name());
        }
    }

    @Test
    void unstatedMainsVoltageIsTheNominalOne() throws UnfitArrangement {
        assertThat(Arrangement.of(FERRY, FERRY.settings().get(0)).mainsVolts())
                .isEqualTo(FERRY.mains().volts().si());
    }

    @Test
    void signalGeneratorRunsAtItsOwnFrequency() throws UnfitArrangement {
        assertThat(ON.withMainsHertz(25e3).appliedTo(FERRY).mains().hertz().si())
                .isEqualTo(25e3);
        assertThat(ON.appliedTo(FERRY).mains().hertz()).isEqualTo(FERRY.mains().hertz());
    }

    @Test
    void frequencyBeyondReachIsRefused() {
        assertThatThrownBy(() -> ON.withMainsHertz(5e6).appliedTo(FERRY))
                .isInstanceOf(UnfitArrangement.class)
                .hasMessageContaining("5 MHz; the frequency must be from 1 Hz to 1 MHz");
    }

    @Test
    void pulledFuseOpensBetweenItsClips() throws UnfitArrangement {
        Circuit arranged = ON.withPulledFuse("F201").appliedTo(FERRY);

        assertThat(part(arranged, "F201", Fuse.class).fitted().coldOhms().si()).isGreaterThanOrEqualTo(1e8);
    }

    @Test
    void pulledFuseKeepsItsMarking() throws UnfitArrangement {
        Circuit arranged = ON.withPulledFuse("F201").appliedTo(FERRY);

        assertThat(part(arranged, "F201", Fuse.class).marked())
                .isEqualTo(part(FERRY, "F201", Fuse.class).marked());
    }

    @Test
    void unpluggedConnectorPartsEveryContact() throws UnfitArrangement {
        Circuit arranged = ON.withUnplugged("J2").appliedTo(FERRY);

        assertThat(arranged.connector("J2").orElseThrow().pins())
                .allSatisfy(p -> assertThat(p.ohms().si()).isGreaterThanOrEqualTo(1e8));
    }

    @Test
    void liftedPinLeavesItsNet() throws UnfitArrangement {
        Circuit arranged = ON.withLiftedPin("BR201.ac1").appliedTo(FERRY);

        assertThat(arranged.find("BR201.ac1")).isNotEqualTo(FERRY.find("BR201.ac1"));
    }

    @Test
    void clipLeadJoinsTwoPoints() throws UnfitArrangement {
        Circuit arranged = ON.withClip("TP4", "gnd").appliedTo(FERRY);

        Wire clip = part(arranged, "clip lead 1", Wire.class);
        assertThat(clip.one()).isEqualTo(FERRY.find("TP4").orElseThrow());
        assertThat(clip.ohms().si()).isEqualTo(0.05);
    }

    @Test
    void coilHeldOnTurnsItsOutputOver() throws UnfitArrangement {
        Circuit arranged = ON.withHeldOn("L201").appliedTo(FERRY);

        assertThat(driving(arranged, "L201").state())
                .isNotEqualTo(driving(FERRY, "L201").state());
    }

    @Test
    void outputCanBeHeldByItsOwnName() throws UnfitArrangement {
        String output = driving(FERRY, "L201").name();

        assertThat(ON.withHeldOn(output).appliedTo(FERRY))
                .isEqualTo(ON.withHeldOn("L201").appliedTo(FERRY));
    }

    @Test
    void dualCoilHeldOnIsPulledIn() throws UnfitArrangement {
        Circuit arranged = ON.withHeldOn("L203").appliedTo(FERRY);

        assertThat(part(FERRY, "L203", DualCoil.class).pulledIn()).isFalse();
        assertThat(part(arranged, "L203", DualCoil.class).pulledIn()).isTrue();
    }

    @Test
    void switchIsOperated() throws UnfitArrangement {
        Circuit arranged = ON.withSwitch("S201", false).appliedTo(FERRY);

        assertThat(part(arranged, "S201", Switch.class).closed()).isFalse();
    }

    @Test
    void changesAreNamed() {
        assertThat(ON.withPulledFuse("F201").withHeldOn("L201").name())
                .isEqualTo("power on, F201 pulled, L201 held on");
    }

    @Test
    void everythingUnknownIsToldAtOnceWithTheNearest() {
        Arrangement wrong = ON.withPulledFuse("F20I")
                .withUnplugged("J99")
                .withHeldOn("R201")
                .withClip("TP4", "gmd")
                .withLiftedPin("BR201.ac3")
                .withSwitch("S2O1", true);

        assertThatThrownBy(() -> wrong.appliedTo(FERRY))
                .isInstanceOf(UnfitArrangement.class)
                .hasMessageContaining("no fuse F20I to pull; did you mean F201?")
                .hasMessageContaining("no connector J99")
                .hasMessageContaining("nothing drives R201")
                .hasMessageContaining("no point gmd")
                .hasMessageContaining("did you mean gnd?")
                .hasMessageContaining("no pin BR201.ac3 to lift; did you mean ac1?")
                .hasMessageContaining("no switch S2O1");
    }

    @Test
    void clipLeadOntoItsOwnNetIsRefused() {
        assertThatThrownBy(() -> ON.withClip("gnd", "gnd").appliedTo(FERRY)).hasMessageContaining("with itself");
    }

    @Test
    void mainsOfNoVoltageIsRefused() {
        assertThatThrownBy(() -> ON.withMainsVolts(0).appliedTo(FERRY)).hasMessageContaining("mains of 0 V;");
    }
}
