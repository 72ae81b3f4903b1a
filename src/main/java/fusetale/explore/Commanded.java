package fusetale.explore;

import fusetale.bench.Check;
import fusetale.bench.Observation;
import fusetale.bench.Reading;
import fusetale.bench.Seen;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.Connector;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Lamp;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Pin;
import fusetale.circuit.Transformer;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a machine shows when one of its drivers is commanded, where what is wrong with it has nothing to do with that driver.
 * To first order two small changes of a network add up (superposition); what is left out is the product of both. That product
 * is small where the command leaves the branches that the supposition changed at the voltages and currents they had, and the
 * supposition leaves the points of all that the command sets going as they were. Then every reading moves by the one or by the
 * other; where both move one, nothing is told.
 */
public final class Commanded {
    private static final double LEAST_AMPS = 1e-5;
    /** Of what the command adds at a point, less than this goes another way. */
    private static final double SHARE_RATIO = 0.05;
    /** Of the voltage or current of a branch that changed: what it does to the rest stays within about as much. */
    private static final double BRANCH_RATIO = 0.2;

    private static final double BRANCH_VOLTS = 5e-3;

    /** Currents of twins differ by no more. */
    private static final double TWIN_RATIO = 0.1;

    private final Foretelling commanded;
    private final Seen before;
    private final Seen after;
    private final Set<String> concerned = new HashSet<>();
    private final Map<Check, Reading> readingsBefore = new HashMap<>();
    private final Map<String, Observation> sightsBefore = new HashMap<>();

    private Commanded(Foretelling commanded, Seen before, Seen after) {
        this.commanded = commanded;
        this.before = before;
        this.after = after;
        spread();
    }

    /** What a part or contact lies between, and how much of its current the command adds [A]. */
    private record Stretch(String name, Set<Net> nets, double amps) {}

    /**
     * From what is driven, and from the output that commands it, along whatever carries more now: at every point those that take
     * a good share of what the point is asked for. Other windings of the transformer answer too, but only through the core:
     * there it ends.
     */
    private void spread() {
        Map<Net, List<Stretch>> around = new HashMap<>();
        Deque<Stretch> open = new ArrayDeque<>();
        Set<String> outputs = commanding();
        for (Stretch stretch : stretches()) {
            stretch.nets()
                    .forEach(n ->
                            around.computeIfAbsent(n, k -> new ArrayList<>()).add(stretch));
            if (commanded.arrangement().heldOn().contains(stretch.name()) || outputs.contains(stretch.name())) {
                open.add(stretch);
            }
        }
        Set<Net> seen = new HashSet<>();
        Set<String> reached = new HashSet<>();
        Net ground = commanded.asArranged().ground();
        while (!open.isEmpty()) {
            for (Net net : open.remove().nets()) {
                if (net.equals(ground) || !seen.add(net)) {
                    continue;
                }
                concerned.add(net.name());
                List<Stretch> here = around.getOrDefault(net, List.of());
                double most = here.stream().mapToDouble(Stretch::amps).max().orElse(0);
                here.stream()
                        .filter(s -> s.amps() >= Math.max(LEAST_AMPS, SHARE_RATIO * most))
                        .filter(s -> reached.add(s.name()))
                        .forEach(open::add);
            }
        }
    }

    private Set<String> commanding() {
        return commanded.asArranged().parts().stream()
                .filter(p -> p instanceof LogicOutput o
                        && o.commands() != null
                        && commanded.arrangement().heldOn().contains(o.commands()))
                .map(Part::name)
                .collect(Collectors.toSet());
    }

    private List<Stretch> stretches() {
        Circuit circuit = commanded.asArranged();
        List<Stretch> all = new ArrayList<>();
        for (Part part : circuit.parts()) {
            if (!(part instanceof Transformer)) {
                all.add(new Stretch(
                        part.name(),
                        part.pins().stream().map(Pin::net).collect(Collectors.toSet()),
                        added(part.name())));
            }
        }
        for (Connector connector : circuit.connectors()) {
            for (Connector.Contact pin : connector.pins()) {
                String name = connector.name() + "." + pin.label();
                all.add(new Stretch(name, Set.of(pin.board(), pin.harness()), added(name)));
            }
        }
        return all;
    }

    /** What the command adds to the currents of a part [A]. */
    private double added(String part) {
        double most = 0;
        for (String current : before.modelled().currents().keySet()) {
            if (current.equals(part) || current.startsWith(part + ".")) {
                most = Math.max(
                        most,
                        after.modelled().element(current).isEmpty()
                                ? Double.POSITIVE_INFINITY
                                : Extent.of(before.amps(current)).from(Extent.of(after.amps(current))));
            }
        }
        return most;
    }

    /**
     * For one command.
     *
     * @param asFound the machine as found
     * @param built what the healthy machine shows as found
     * @param commanded the same with a driver commanded
     * @return empty where the healthy machine has no steady state, or a fuse melts in one
     */
    public static Optional<Commanded> of(Foretelling asFound, Foretold built, Foretelling commanded) {
        Optional<Seen> before = asFound.near();
        Optional<Seen> after = commanded.near();
        Optional<Foretold> other = commanded.asBuilt();
        boolean whole = built.melted().isEmpty()
                && other.isPresent()
                && other.get().melted().isEmpty();
        if (before.isEmpty() || after.isEmpty() || !whole) {
            return Optional.empty();
        }
        Commanded of = new Commanded(commanded, before.get(), after.get());
        built.readings().forEach(r -> of.readingsBefore.put(r.check(), r));
        built.observations().forEach(o -> of.sightsBefore.put(key(o), o));
        return Optional.of(of);
    }

    /**
     * What shows under a supposition; empty where it has to be solved.
     *
     * @param supposition with the fuses that have melted
     * @param found what it shows as found
     */
    public Optional<Foretold> under(Supposition supposition, Foretold found) {
        if (found.moved().stream().anyMatch(concerned::contains)) {
            return Optional.empty();
        }
        if (changes(supposition).filter(this::leftAlone).isEmpty()) {
            return Optional.empty();
        }
        Optional<List<Reading>> readings = readings(found);
        Optional<List<Observation>> sights = sights(found);
        if (sights.isEmpty()) {
            return Optional.empty();
        }
        return readings.map(r -> new Foretold(
                r,
                sights.get(),
                List.of(),
                List.of(),
                found.mayMelt(),
                List.of(),
                /* untouched= */ false,
                found.moved()));
    }

    /**
     * What shows under a supposition where it is known what the same supposition lets a twin driver do: one whose coil or lamp
     * takes as much, while all that is wrong lies outside what the two do not share. Empty where that is not so.
     *
     * @param supposition with the fuses that have melted
     * @param found what it shows as found
     * @param twin another command on the same machine
     * @param shown what that one shows
     */
    public Optional<Foretold> like(Supposition supposition, Foretold found, Commanded twin, Foretold shown) {
        Part own = driven();
        Part other = twin.driven();
        if (!alikeBuilt(own, twin, other) || !shown.melted().isEmpty()) {
            return Optional.empty();
        }
        Set<String> here = new HashSet<>(concerned);
        here.removeAll(twin.concerned);
        Set<String> there = new HashSet<>(twin.concerned);
        there.removeAll(concerned);
        boolean movedHere = found.moved().stream().anyMatch(here::contains);
        boolean movedThere = found.moved().stream().anyMatch(there::contains);
        if (movedHere != movedThere) {
            return Optional.empty();
        }
        boolean outside = changes(supposition)
                .filter(c -> c.touched().stream().noneMatch(n -> here.contains(n) || there.contains(n)))
                .isPresent();
        if (!outside) {
            return Optional.empty();
        }
        List<Observation> sights = new ArrayList<>();
        Map<String, Observation> atRest = new HashMap<>();
        found.observations().forEach(o -> atRest.put(key(o), o));
        for (Observation o : shown.observations()) {
            if (o.part().equals(other.name())) {
                sights.add(new Observation(own.name(), o.sight(), o.detail()));
                sights.add(atRest.getOrDefault(key(o), o));
            } else if (!o.part().equals(own.name())) {
                sights.add(o);
            }
        }
        return Optional.of(new Foretold(
                List.of(),
                sights,
                List.of(),
                List.of(),
                found.mayMelt(),
                List.of(),
                /* untouched= */ false,
                found.moved()));
    }

    /** What is driven. */
    private Part driven() {
        String name = commanded.arrangement().heldOn().get(0);
        return commanded.asArranged().part(name).orElseThrow();
    }

    private boolean alikeBuilt(Part own, Commanded twin, Part other) {
        // a coil with a switch of its own comes in, or in and out again, by a hair
        return own.getClass() == other.getClass()
                && !(own instanceof DualCoil)
                && sameLaw(own, other)
                && commanded.checks().isEmpty()
                && twin.commanded.checks().isEmpty()
                && commanded.arrangement().heldOn().size() == 1
                && !Extent.of(after.amps(own.name()))
                        .differs(Extent.of(twin.after.amps(other.name())), TWIN_RATIO, LEAST_AMPS);
    }

    /** Whether the same current does the same to both: a plunger that asks for more stays where its twin moves. */
    private static boolean sameLaw(Part own, Part other) {
        if (own instanceof Coil a && other instanceof Coil b) {
            return Objects.equals(a.pullInAmps(), b.pullInAmps()) && Objects.equals(a.holdAmps(), b.holdAmps());
        }
        if (own instanceof Lamp a && other instanceof Lamp b) {
            double amps = a.amps().si();
            boolean alike = Math.abs(b.amps().si() - amps) <= TWIN_RATIO * amps; // each has drawn its own
            return alike && a.volts().equals(b.volts()) && a.count() == b.count();
        }
        return true;
    }

    /** What a supposition changes; empty where it does not fit, or where what is fitted is another part altogether. */
    private Optional<Changes> changes(Supposition supposition) {
        if (!supposition.swaps().isEmpty()) {
            return Optional.empty();
        }
        try {
            Circuit supposed = Machine.of(commanded.healthy(), commanded.arrangement(), supposition)
                    .arranged();
            return Optional.of(Changes.between(commanded.asArranged(), supposed))
                    .filter(c -> !c.otherMains());
        } catch (UnfitArrangement | UnfitSupposition e) {
            return Optional.empty();
        }
    }

    /** Whether the command leaves all that the supposition changed as it was. */
    private boolean leftAlone(Changes changes) {
        for (Changes.OfPart part : changes.parts()) {
            Part was = part.was();
            Part one = was == null ? part.is() : was;
            if (one != null && !leftAlone(one, changes.nets(), was != null)) {
                return false;
            }
        }
        return changes.contacts().stream()
                .filter(c -> concerned.contains(c.was().board().name())
                        || concerned.contains(c.was().harness().name()))
                .noneMatch(c -> currentsMove(c.name()));
    }

    private boolean leftAlone(Part part, Set<Net> nets, boolean carried) {
        if (part.pins().stream().noneMatch(p -> concerned.contains(p.net().name()))) {
            return true;
        }
        if (carried && currentsMove(part.name())) {
            return false;
        }
        List<Net> ends =
                part.pins().stream().map(Pin::net).filter(nets::contains).toList();
        for (int k = 1; k < ends.size(); k++) {
            if (voltsMove(ends.get(0), ends.get(k))) {
                return false;
            }
        }
        return true;
    }

    private boolean currentsMove(String part) {
        for (String current : before.modelled().currents().keySet()) {
            boolean of = current.equals(part) || current.startsWith(part + ".");
            if (of
                    && (after.modelled().element(current).isEmpty()
                            || Extent.of(before.amps(current))
                                    .differs(Extent.of(after.amps(current)), BRANCH_RATIO, LEAST_AMPS))) {
                return true;
            }
        }
        return false;
    }

    private boolean voltsMove(Net one, Net two) {
        return Extent.of(before.volts(one, two)).differs(Extent.of(after.volts(one, two)), BRANCH_RATIO, BRANCH_VOLTS);
    }

    private Optional<List<Reading>> readings(Foretold found) {
        Map<Check, Reading> here = new HashMap<>();
        found.readings().forEach(r -> here.put(r.check(), r));
        List<Reading> all = new ArrayList<>();
        for (Reading told : commanded.asBuilt().orElseThrow().readings()) {
            Reading was = readingsBefore.get(told.check());
            Reading is = here.get(told.check());
            if (was == null || is == null) {
                return Optional.empty();
            }
            if (is.alike(was)) {
                all.add(told);
            } else if (told.alike(was)) {
                all.add(is);
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(all);
    }

    /** Empty where both the supposition and the command change what shows. */
    private Optional<List<Observation>> sights(Foretold found) {
        Map<String, Observation> here = new HashMap<>();
        found.observations().forEach(o -> here.put(key(o), o));
        List<Observation> all = new ArrayList<>();
        for (Observation told : commanded.asBuilt().orElseThrow().observations()) {
            Observation was = sightsBefore.get(key(told));
            Observation is = here.get(key(told));
            if (is == null || is.equals(was)) {
                all.add(told);
            } else if (told.equals(was)) {
                all.add(is);
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(all);
    }

    private static String key(Observation seen) {
        return seen.part() + "|" + seen.sight().aspect();
    }
}
