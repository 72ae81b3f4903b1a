package fusetale.fault;

import fusetale.circuit.Battery;
import fusetale.circuit.Bridge;
import fusetale.circuit.Capacitor;
import fusetale.circuit.Coil;
import fusetale.circuit.Controller;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.Lamp;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.Mosfet;
import fusetale.circuit.OpAmp;
import fusetale.circuit.Part;
import fusetale.circuit.Regulator;
import fusetale.circuit.Relay;
import fusetale.circuit.Resistor;
import fusetale.circuit.Switch;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transformer;
import fusetale.circuit.Transistor;
import fusetale.circuit.Wire;
import fusetale.circuit.Zener;
import java.util.List;

/** Which failures belong to which kind of part; a test holds this table against the kinds {@link Part} permits. */
final class Kinds {
    private static final List<Entry<? extends Part>> TABLE = List.of(
            new Entry<>(Battery.class, new BatteryFailures()),
            new Entry<>(Bridge.class, new BridgeFailures()),
            new Entry<>(Capacitor.class, new CapacitorFailures()),
            new Entry<>(Coil.class, new CoilFailures()),
            new Entry<>(Controller.class, new ControllerFailures()),
            new Entry<>(Darlington.class, new DarlingtonFailures()),
            new Entry<>(Diode.class, new DiodeFailures()),
            new Entry<>(DualCoil.class, new DualCoilFailures()),
            new Entry<>(Electrolytic.class, new ElectrolyticFailures()),
            new Entry<>(Fuse.class, new FuseFailures()),
            new Entry<>(Lamp.class, new LampFailures()),
            new Entry<>(LogicOutput.class, new LogicOutputFailures()),
            new Entry<>(Mosfet.class, new MosfetFailures()),
            new Entry<>(OpAmp.class, new OpAmpFailures()),
            new Entry<>(Regulator.class, new RegulatorFailures()),
            new Entry<>(Relay.class, new RelayFailures()),
            new Entry<>(Resistor.class, new ResistorFailures()),
            new Entry<>(Switch.class, new SwitchFailures()),
            new Entry<>(Thyristor.class, new ThyristorFailures()),
            new Entry<>(Transformer.class, new TransformerFailures()),
            new Entry<>(Transistor.class, new TransistorFailures()),
            new Entry<>(Wire.class, new WireFailures()),
            new Entry<>(Zener.class, new ZenerFailures()));

    private Kinds() {}

    /** The kinds in the table. */
    static List<Class<?>> known() {
        return TABLE.stream().<Class<?>>map(Entry::kind).toList();
    }

    /** A part with the failures of its kind. */
    static Subject<? extends Part> subject(Part part) {
        for (Entry<? extends Part> entry : TABLE) {
            if (entry.kind().isInstance(part)) {
                return entry.subject(part);
            }
        }
        throw new IllegalStateException("no failures are listed for " + part.getClass());
    }

    private record Entry<P extends Part>(Class<P> kind, Failures<P> failures) {
        Subject<P> subject(Part part) {
            return new Subject<>(kind.cast(part), part.name(), kind, failures);
        }
    }
}
