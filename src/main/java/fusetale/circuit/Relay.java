package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import java.util.List;

/**
 * A relay with one contact.
 *
 * @param name reference designator
 * @param coil nets of both ends of its coil
 * @param contacts nets of both sides of its contact
 * @param winding its coil
 * @param contactOhms contact resistance when closed
 * @param closedAtRest whether the contact is closed while the coil is not energised
 * @param armature how the contact behaves
 * @param about notes
 */
public record Relay(
        String name,
        Ends coil,
        Ends contacts,
        Winding winding,
        Quantity contactOhms,
        boolean closedAtRest,
        Armature armature,
        About about)
        implements Part {
    /**
     * Two nets.
     *
     * @param one first pin's net
     * @param two second pin's net
     */
    public record Ends(Net one, Net two) {}

    /**
     * What the coil is and needs.
     *
     * @param ohms winding resistance at its temperature
     * @param henries inductance
     * @param pullInAmps current that pulls the armature in
     * @param dropOutAmps current below which it lets go
     * @param operateSeconds time until the contact moves
     */
    public record Winding(
            Toleranced ohms, Toleranced henries, Quantity pullInAmps, Quantity dropOutAmps, Quantity operateSeconds) {}

    /** What its coil is made of. */
    public Wound wound() {
        return about.wound(Make.Windings.ALONE, Wound.ofRelay());
    }

    /** The same with another coil. */
    public Relay with(Winding other) {
        return new Relay(name, coil, contacts, other, contactOhms, closedAtRest, armature, about);
    }

    /** The same with a contact that behaves otherwise. */
    public Relay with(Armature other) {
        return new Relay(name, coil, contacts, winding, contactOhms, closedAtRest, other, about);
    }

    /** The same with another contact resistance. */
    public Relay withContact(Quantity ohms) {
        return new Relay(name, coil, contacts, winding, ohms, closedAtRest, armature, about);
    }

    @Override
    public List<Pin> pins() {
        return List.of(
                new Pin("coil1", coil.one()),
                new Pin("coil2", coil.two()),
                new Pin("contact1", contacts.one()),
                new Pin("contact2", contacts.two()));
    }

    @Override
    public Relay rewired(String pin, Net net) {
        return switch (pin) {
            case "coil1" -> rewired(new Ends(net, coil.two()), contacts);
            case "coil2" -> rewired(new Ends(coil.one(), net), contacts);
            case "contact1" -> rewired(coil, new Ends(net, contacts.two()));
            case "contact2" -> rewired(coil, new Ends(contacts.one(), net));
            default -> throw noPin(pin);
        };
    }

    private Relay rewired(Ends newCoil, Ends newContacts) {
        return new Relay(name, newCoil, newContacts, winding, contactOhms, closedAtRest, armature, about);
    }
}
