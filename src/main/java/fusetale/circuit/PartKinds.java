package fusetale.circuit;

import java.util.List;
import java.util.stream.Stream;

/** Every kind of part there is, in the order in which messages and schema list them. */
final class PartKinds {
    static final List<PartKind<?>> ALL = Stream.of(SupplyKinds.ALL, PassiveKinds.ALL, JunctionKinds.ALL, LoadKinds.ALL)
            .flatMap(List::stream)
            .toList();

    private PartKinds() {}
}
