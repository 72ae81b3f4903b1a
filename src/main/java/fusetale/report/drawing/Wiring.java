package fusetale.report.drawing;

import fusetale.circuit.Net;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Some terminals of one net that are joined by wires. Belongs to one draughtsman. */
final class Wiring {
    private final int id;
    private final Net net;
    private final Kind kind;
    private List<Terminal> terminals;
    private final Set<Integer> nodes = new TreeSet<>();
    private final List<Flag> flags = new ArrayList<>();
    private boolean flagged;
    private boolean named;

    /** How the terminals of a net are joined. */
    enum Kind {
        /** By wires all. */
        WIRE,
        /** By wires where they are near, by flags otherwise. */
        RAIL,
        /** Each by a ground sign. */
        GROUND
    }

    Wiring(int id, Net net, Kind kind, List<Terminal> terminals) {
        this.id = id;
        this.net = net;
        this.kind = kind;
        this.terminals = List.copyOf(terminals);
        terminals.forEach(t -> nodes.add(t.node()));
        this.flagged = kind != Kind.WIRE;
    }

    /** What it is called in the maze. */
    int id() {
        return id;
    }

    Net net() {
        return net;
    }

    Kind kind() {
        return kind;
    }

    List<Terminal> terminals() {
        return terminals;
    }

    /** Leaves only these. */
    void keepOnly(List<Terminal> some) {
        terminals.stream().filter(t -> !some.contains(t)).forEach(t -> nodes.remove(t.node()));
        terminals = List.copyOf(some);
    }

    /** Nodes of its terminals and wires. Modified as wires are laid. */
    Set<Integer> nodes() {
        return nodes;
    }

    /** Whether it is to end in a flag. */
    boolean flagged() {
        return flagged;
    }

    void flag() {
        flagged = true;
    }

    /** Whether its ground sign shows its name. */
    boolean named() {
        return named;
    }

    Wiring withName() {
        named = true;
        return this;
    }

    /** The flags it ends in. */
    List<Flag> flags() {
        return flags;
    }
}
