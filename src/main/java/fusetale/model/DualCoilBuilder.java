package fusetale.model;

import fusetale.circuit.DualCoil;
import fusetale.circuit.EndOfStroke;

/** A dual coil is two coils in series, the holding one bridged by the end-of-stroke switch. */
final class DualCoilBuilder {
    /** A clean switch contact [ohm], common practice. */
    private static final double CONTACT_OHMS = 0.02;

    private DualCoilBuilder() {}

    static void build(DualCoil part, Sketch sketch) {
        String name = part.name();
        String middle = name + ":middle";
        String two = part.two().name();
        String inPower = name + ":in power";
        String inHold = name + ":in hold";
        sketch.carrying(name, part.one().name(), inPower, part.powerOhms().si());
        sketch.inductor(
                name + ":power turns", inPower, middle, part.powerHenries().si());
        sketch.carrying(name + ".hold", middle, inHold, part.holdOhms().si());
        sketch.inductor(name + ":hold turns", inHold, two, part.holdHenries().si());
        sketch.carrying(name + ".switch", middle, two, closed(part) ? CONTACT_OHMS : Sketch.OPEN_OHMS);
    }

    private static boolean closed(DualCoil part) {
        return part.endOfStroke() == EndOfStroke.STUCK_CLOSED
                || (part.endOfStroke() == EndOfStroke.FOLLOWS && !part.pulledIn());
    }
}
