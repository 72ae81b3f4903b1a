package fusetale.model;

import fusetale.circuit.Armature;
import fusetale.circuit.Relay;
import fusetale.mna.RelayLaw;
import java.util.List;

/** A relay is the inductance of its coil and one law for resistance and contact; with a stuck contact two resistors. */
final class RelayBuilder {
    private RelayBuilder() {}

    static void build(Relay part, Sketch sketch) {
        String name = part.name();
        String one = part.coil().one().name();
        String two = part.coil().two().name();
        String from = part.contacts().one().name();
        String to = part.contacts().two().name();
        String inside = name + ":inside";
        Relay.Winding winding = part.winding();
        double ohms = Math.max(winding.ohms().si(), Sketch.BOND_OHMS);
        double contactOhms = Math.max(part.contactOhms().si(), Sketch.BOND_OHMS);
        sketch.inductor(name + ":turns", inside, two, winding.henries().si());
        if (part.armature() == Armature.FOLLOWS) {
            RelayLaw.Coil coil = new RelayLaw.Coil(
                    ohms,
                    winding.pullInAmps().si(),
                    winding.dropOutAmps().si(),
                    winding.operateSeconds().si());
            RelayLaw.Contact contact = new RelayLaw.Contact(contactOhms, Sketch.OPEN_OHMS, part.closedAtRest());
            sketch.twoPorts(name + ":armature", List.of(one, inside, from, to), new RelayLaw(coil, contact));
            sketch.current(name + ".contact", name + ":armature.1");
        } else {
            boolean welded = part.armature() == Armature.WELDED;
            sketch.resistor(name + ":copper", one, inside, ohms);
            sketch.carrying(name + ".contact", from, to, welded ? contactOhms : Sketch.OPEN_OHMS);
        }
        sketch.current(name, name + ":turns");
    }
}
