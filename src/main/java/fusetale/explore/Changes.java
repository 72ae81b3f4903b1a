package fusetale.explore;

import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Pin;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a supposition changed of a machine as arranged.
 *
 * @param parts that are no longer what they were
 * @param contacts the same of contacts
 * @param nets nets of the machine before
 * @param otherMains whether the mains are others
 */
record Changes(List<OfPart> parts, List<OfContact> contacts, Set<Net> nets, boolean otherMains) {
    /**
     * A part.
     *
     * @param was as it was; null where it was laid in
     * @param is as it is now; null where it is gone
     */
    record OfPart(@Nullable Part was, @Nullable Part is) {}

    /**
     * A contact.
     *
     * @param name {@code J3.4}
     */
    record OfContact(String name, Connector.Contact was, Connector.Contact is) {}

    /** Compares part by part, contact by contact. */
    static Changes between(Circuit before, Circuit after) {
        Map<String, Part> old = new HashMap<>();
        before.parts().forEach(p -> old.put(p.name(), p));
        List<OfPart> parts = new ArrayList<>();
        for (Part part : after.parts()) {
            Part was = old.remove(part.name());
            if (!part.equals(was)) {
                parts.add(new OfPart(was, part));
            }
        }
        old.values().forEach(gone -> parts.add(new OfPart(gone, null)));
        List<OfContact> contacts = new ArrayList<>();
        for (int k = 0; k < before.connectors().size(); k++) {
            Connector was = before.connectors().get(k);
            List<Connector.Contact> now = after.connectors().get(k).pins();
            for (int p = 0; p < now.size(); p++) {
                Connector.Contact one = was.pins().get(p);
                if (!one.equals(now.get(p))) {
                    contacts.add(new OfContact(was.name() + "." + one.label(), one, now.get(p)));
                }
            }
        }
        return new Changes(parts, contacts, before.nets(), !before.mains().equals(after.mains()));
    }

    /** Names of all nets that a changed part or contact lies on or lay on. */
    Set<String> touched() {
        Set<String> touched = new HashSet<>();
        for (OfPart part : parts) {
            for (Part one : new Part[] {part.was(), part.is()}) {
                if (one != null) {
                    one.pins().stream().map(Pin::net).map(Net::name).forEach(touched::add);
                }
            }
        }
        for (OfContact contact : contacts) {
            touched.add(contact.was().board().name());
            touched.add(contact.was().harness().name());
        }
        return touched;
    }
}
