package fusetale.explore;

import fusetale.aftermath.Stress;
import fusetale.bench.Arrangement;
import fusetale.bench.AtRest;
import fusetale.bench.Bench;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Observation;
import fusetale.bench.Observations;
import fusetale.bench.Reading;
import fusetale.bench.Seen;
import fusetale.bench.UnfitArrangement;
import fusetale.bench.Warmth;
import fusetale.circuit.Circuit;
import fusetale.circuit.Mains;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Net;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.Solved;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Tells what one machine in one arrangement would show under one supposition after another, as quickly as can be: the
 * meter's load is looked at where it takes a hundredth or more, nothing that climbs is followed, and a supposition that
 * leaves the known state of the healthy machine as it is is not solved at all. May be used by several threads at once;
 * answers depend on neither their number nor the order of questions.
 */
public final class Foretelling {
    private static final Warmth NOT_FELT = seen -> Map.of();
    /** What flows through insulation at tens of volts [A]. */
    private static final double NOTHING_AMPS = 5e-6;

    private static final double NOTHING_VOLTS = 5e-4;
    /** Through 100 MΩ this is a hundredth of a volt [A]. */
    private static final double NO_AMPS_AT_ALL = 1e-10;

    private static final double MOVES_NOTHING_VOLTS = 2e-3;
    private static final double MOVES_NOTHING_RATIO = 0.005;
    /** Of what the meter feeds in, this much is nothing: its effect on the reading goes with the square. */
    private static final double NOTHING_OF_THE_METER = 1e-3;

    /** What a voltage may differ by and drive a coil or lamp as before. */
    private static final double MOVED_RATIO = 0.03;

    private static final double MOVED_VOLTS = 0.03;

    /** What windings and contacts a tenth over their usual ohms leave of a fuse's current (judgement). */
    private static final double LEAST_LOADED = 0.95;

    private static final double LEAST_METER_AMPS = 1e-11;

    private final Circuit healthy;
    private final Circuit asArranged;
    private final Arrangement arrangement;
    private final Meter meter;
    private final List<Check> checks;
    /** Those of them that name a pin. */
    private final List<Check> onPins;

    private final @Nullable Seen near;
    private final @Nullable Foretold asBuilt;
    /** Which readings of the healthy machine the meter's load is seen in; what is not solved under load says nothing of them. */
    private final Set<Integer> loaded;
    /** Where the meter is what loads a net; null where no state is known. */
    private final @Nullable Hanging hanging;
    /** Nets that the leads are laid on. */
    private final Set<Net> measured;
    /** What the healthy machine takes past its rating. */
    private final List<Stress> overAsBuilt;

    private final Map<Check, AtRest.Touched> atRest = new HashMap<>();
    private final Map<String, Double> peakAmps = new ConcurrentHashMap<>();
    /** Of the healthy machine, against ground. */
    private final Map<Net, Extent> extents = new ConcurrentHashMap<>();

    private Foretelling(
            Specimen specimen,
            Arrangement arrangement,
            Circuit asArranged,
            Meter meter,
            List<Check> checks,
            @Nullable Seen near,
            @Nullable AsBuilt built) {
        this.healthy = specimen.circuit();
        this.arrangement = arrangement;
        this.asArranged = asArranged;
        this.meter = meter;
        this.checks = List.copyOf(checks);
        this.onPins = checks.stream()
                .filter(c -> c.from().indexOf('.') >= 0 || c.to().indexOf('.') >= 0)
                .toList();
        this.near = near;
        this.asBuilt = built == null ? null : built.shows();
        this.measured = checks.stream()
                .flatMap(c -> Stream.of(c.from(), c.to()))
                .flatMap(point -> asArranged.find(point).stream())
                .collect(Collectors.toSet());
        this.hanging = near == null || built == null ? null : hanging(near.tabled());
        this.loaded = built == null ? Set.of() : underLoad(built);
        this.overAsBuilt = near == null || !asksWhatIsLost() ? List.of() : Outcome.past(Strains.of(near, asArranged));
    }

    /** Not where a series lamp or the hand at a driver sets the load. */
    private boolean asksWhatIsLost() {
        return arrangement.seriesLampWatts() == null && arrangement.heldOn().isEmpty();
    }

    /**
     * For one machine in one arrangement.
     *
     * @param checks what to measure, none that {@link Bench#refusal} refuses
     * @param stopped asked now and then; true ends the work
     * @throws UnfitArrangement where the arrangement does not fit the machine
     */
    public static Foretelling of(
            Specimen specimen, Arrangement bench, Meter meter, List<Check> checks, BooleanSupplier stopped)
            throws UnfitArrangement {
        return of(specimen, bench, meter, checks, null, stopped);
    }

    /**
     * The same beside what is known of the machine in another arrangement, from where it is sooner found.
     *
     * @throws UnfitArrangement where the arrangement does not fit the machine
     */
    public static Foretelling of(
            Specimen specimen,
            Arrangement bench,
            Meter meter,
            List<Check> checks,
            @Nullable Foretelling beside,
            BooleanSupplier stopped)
            throws UnfitArrangement {
        Arrangement arrangement = specimen.fed(bench);
        Circuit asArranged = arrangement.appliedTo(specimen.circuit());
        if (!arrangement.powerOn()) {
            Foretelling f = new Foretelling(specimen, arrangement, asArranged, meter, checks, null, null);
            f.takeAtRest();
            return f;
        }
        Bench plain = Bench.of(specimen.circuit(), arrangement, meter);
        Seen start = beside == null ? null : beside.near;
        Seen first = plain.look(List.of(), start, stopped).orElse(reason -> null);
        if (first == null) {
            return new Foretelling(specimen, arrangement, asArranged, meter, checks, null, null);
        }
        // once more beside itself, so that its lamps are linearised where every supposition will linearise them: less
        // than a digit of a reading, and nothing to who only looks
        Bench again = Bench.of(specimen.circuit(), arrangement, meter);
        Seen second =
                checks.isEmpty() ? null : again.look(List.of(), first, stopped).orElse(reason -> null);
        Seen near = second == null ? first : second;
        Foretelling bare = new Foretelling(specimen, arrangement, asArranged, meter, checks, near, null);
        Foretold shows = bare.solved(Supposition.NOTHING, stopped).orElse(null);
        if (shows == null) {
            return bare;
        }
        Bench ofNear = second == null ? plain : again;
        List<Reading> unloaded = ofNear.glance(near.tabled(), checks, stopped) instanceof Solved.Found<Seen> glanced
                ? glanced.value().readings()
                : List.of();
        AsBuilt built = new AsBuilt(shows, unloaded);
        return new Foretelling(specimen, arrangement, asArranged, meter, checks, near, built);
    }

    /**
     * The healthy machine.
     *
     * @param unloaded the same readings without the meter's load; none where they are not known
     */
    private record AsBuilt(Foretold shows, List<Reading> unloaded) {}

    private Hanging hanging(Seen tabled) {
        return Hanging.of(asArranged, part -> peakAmps.computeIfAbsent(part, p -> peakOf(tabled, p)), NOTHING_AMPS);
    }

    /** Which readings the meter's load is seen in, or may be under a supposition. */
    private Set<Integer> underLoad(AsBuilt built) {
        Set<Integer> under = new HashSet<>();
        for (int k = 0; k < checks.size(); k++) {
            boolean seen = built.unloaded().isEmpty()
                    || !built.unloaded().get(k).alike(built.shows().readings().get(k));
            if (seen || hangs(checks.get(k).from()) || hangs(checks.get(k).to())) {
                under.add(k);
            }
        }
        return under;
    }

    private boolean hangs(String point) {
        return hanging != null && asArranged.find(point).filter(hanging::has).isPresent();
    }

    /**
     * What another healthy machine of the kind shows on a bench with the power on, from the state of this one on the same bench,
     * where it is soonest found. The meter takes no current: how far machines lie apart does not hang on that. Empty where one
     * of the two has no steady state.
     *
     * @param bench as it is set; its mains are the other machine's
     * @param checks what to measure, none that {@link Bench#refusal} refuses
     * @param stopped asked now and then; true ends the work
     * @throws UnfitArrangement where the arrangement does not fit the machine
     */
    public Optional<List<Reading>> ofAnother(
            Specimen other, Arrangement bench, List<Check> checks, BooleanSupplier stopped) throws UnfitArrangement {
        Seen start = near;
        if (start == null) {
            return Optional.empty();
        }
        Bench plain = Bench.of(other.circuit(), other.fed(bench), meter);
        if (!(plain.look(List.of(), start, stopped) instanceof Solved.Found<Seen> found)) {
            return Optional.empty();
        }
        return plain.glance(found.value().tabled(), checks, stopped) instanceof Solved.Found<Seen> glanced
                ? Optional.of(glanced.value().readings())
                : Optional.empty();
    }

    /** The machine with nothing wrong. */
    Circuit healthy() {
        return healthy;
    }

    /** How the bench is set. */
    Arrangement arrangement() {
        return arrangement;
    }

    /** The healthy machine as arranged. */
    Circuit asArranged() {
        return asArranged;
    }

    /** The state of the healthy machine; empty with the power off, or where it has none. */
    Optional<Seen> near() {
        return Optional.ofNullable(near);
    }

    /** What the healthy machine shows with the power on; empty where it has no steady state. */
    Optional<Foretold> asBuilt() {
        return Optional.ofNullable(asBuilt);
    }

    /** What is measured, in order. */
    public List<Check> checks() {
        return checks;
    }

    /**
     * What the machine shows under a supposition; empty where it has no steady state, or the supposition does not fit it.
     *
     * @param stopped asked now and then; true ends the work
     */
    public Optional<Foretold> under(Supposition supposition, BooleanSupplier stopped) {
        try {
            if (supposition.isNothing() && asBuilt != null) {
                return Optional.of(asBuilt);
            }
            return arrangement.powerOn() ? powered(supposition, stopped) : atRest(supposition);
        } catch (UnfitSupposition | UnfitArrangement e) {
            return Optional.empty();
        }
    }

    private Optional<Foretold> powered(Supposition supposition, BooleanSupplier stopped)
            throws UnfitArrangement, UnfitSupposition {
        Foretold built = asBuilt;
        Seen known = near;
        if (built != null && known != null && built.melted().isEmpty()) {
            Machine machine = Machine.of(healthy, arrangement, supposition);
            Changes changes = Changes.between(asArranged, machine.arranged());
            Untouched untouched = new Untouched(cycle(known), NOTHING_AMPS, NOTHING_VOLTS);
            if (pointsStay(machine)
                    && untouched.by(supposition, changes)
                    && staysPut(untouched.branches(changes), machine.arranged())) {
                return Optional.of(new Foretold(
                        built.readings(),
                        noticed(known, machine.arranged(), supposition),
                        List.of(),
                        List.of(),
                        built.mayMelt(),
                        List.of(),
                        true,
                        Set.of()));
            }
        }
        return solved(supposition, stopped);
    }

    /** Whether every point is where it was: behind a cracked joint a pin is not. */
    private boolean pointsStay(Machine machine) {
        List<Check> here = machine.checksHere(onPins, asArranged);
        return machine.staying(onPins, here, asArranged).cardinality() == onPins.size();
    }

    /**
     * Whether the branches that changed move nothing. What little flows in them: its current times the resistance between their
     * ends at rest, with semiconductors off, so that it is rather too high than too low. What a meter draws through them where
     * it is laid on what hangs on one: the same resistance beside the meter's.
     */
    private boolean staysPut(List<Untouched.Branch> branches, Circuit supposed) {
        AtRest rest = null;
        for (Untouched.Branch branch : branches) {
            boolean measured = isMeasuredBehind(branch, supposed);
            if (branch.amps() <= NO_AMPS_AT_ALL && !measured) {
                continue;
            }
            if (rest == null) {
                rest = AtRest.of(supposed, Arrangement.unpowered(), meter).orElse(reason -> null);
                if (rest == null) {
                    return false;
                }
            }
            Check between = new Check(branch.one().name(), branch.two().name(), MeterFunction.OHMS);
            if (!(rest.take(between) instanceof Solved.Found<AtRest.Touched> found)
                    || found.value().reading().overRange()) {
                return false;
            }
            double ohms = Math.abs(found.value().reading().value());
            boolean moves = branch.amps() * ohms > Math.max(MOVES_NOTHING_VOLTS, MOVES_NOTHING_RATIO * branch.volts());
            if (moves || (measured && ohms > MOVES_NOTHING_RATIO * meter.leastInputOhms())) {
                return false;
            }
        }
        return true;
    }

    private boolean isMeasuredBehind(Untouched.Branch branch, Circuit supposed) {
        return hanging != null
                && (hanging.has(branch.one()) || hanging.has(branch.two()))
                && hanging.with(List.of(branch.one(), branch.two()), supposed).stream()
                        .anyMatch(measured::contains);
    }

    private Optional<Foretold> solved(Supposition supposition, BooleanSupplier stopped) {
        try {
            Machine machine = Machine.of(healthy, arrangement, supposition);
            Set<String> open = Fates.openFromTheStart(arrangement, supposition);
            double seconds = Settled.secondsIn(arrangement);
            if (!(Settled.of(machine, meter, near, open, seconds, leastShare(), stopped)
                    instanceof Solved.Found<Settled> found)) {
                return Optional.empty();
            }
            Settled settled = found.value();
            List<Check> here = settled.machine().checksHere(checks, asArranged);
            // nearly every voltage and current is asked for below
            Seen tabled = settled.seen().tabled();
            Optional<List<Reading>> readings = readings(settled, tabled, here, stopped);
            return readings.map(r -> new Foretold(
                    r,
                    noticed(tabled, settled.machine().arranged(), supposition),
                    settled.melted().stream().map(c -> c.fuse().name()).toList(),
                    settled.held().stream()
                            .map(c -> c.fuse().name())
                            .filter(settled.race()::contains)
                            .sorted()
                            .toList(),
                    settled.held().stream()
                            .filter(c -> !c.melting().surelyHolds())
                            .map(c -> c.fuse().name())
                            .toList(),
                    lost(tabled),
                    false,
                    moved(tabled)));
        } catch (UnfitArrangement | UnfitSupposition e) {
            return Optional.empty();
        }
    }

    /** What a fuse carries at least in the machines that this one stands for, to what it carries in this one. */
    private double leastShare() {
        Mains mains = healthy.mains();
        return LEAST_LOADED * mains.lowestVolts().si() / mains.volts().si();
    }

    /** Nets at which a state is another one than the healthy machine's. */
    private Set<String> moved(Seen seen) {
        Seen built = near;
        if (built == null) {
            return Set.of();
        }
        Set<String> moved = new HashSet<>();
        Set<Net> here = seen.circuit().nets();
        Net ground = asArranged.ground();
        for (Net net : asArranged.nets()) {
            boolean stays = here.contains(net)
                    && here.contains(ground)
                    && !ofHealthy(built, net).differs(Extent.of(seen.volts(net, ground)), MOVED_RATIO, MOVED_VOLTS);
            if (!stays) {
                moved.add(net.name());
            }
        }
        return moved;
    }

    private Extent ofHealthy(Seen built, Net net) {
        return extents.computeIfAbsent(net, n -> Extent.of(built.volts(n, asArranged.ground())));
    }

    /** Parts that are lost. */
    private List<String> lost(Seen seen) {
        if (near == null || !asksWhatIsLost()) {
            return List.of();
        }
        return Outcome.past(Strains.of(seen, asArranged)).stream()
                .filter(s -> Strains.isLost(s, overAsBuilt))
                .map(Stress::part)
                .distinct()
                .toList();
    }

    private Optional<List<Reading>> readings(Settled settled, Seen tabled, List<Check> here, BooleanSupplier stopped) {
        Bench bench = settled.bench();
        if (!(bench.glance(tabled, here, stopped) instanceof Solved.Found<Seen> glanced)) {
            return Optional.empty();
        }
        List<Reading> all = new ArrayList<>(glanced.value().readings());
        Foretold built = asBuilt;
        List<Integer> moved = new ArrayList<>();
        for (int k = 0; k < all.size(); k++) {
            // a fault may move a reading by just what the meter's load does
            if (built == null
                    || loaded.contains(k)
                    || !all.get(k).alike(built.readings().get(k))) {
                moved.add(k);
            }
        }
        List<Check> again = moved.stream().map(here::get).toList();
        if (!(bench.readNearly(settled.seen(), again, stopped) instanceof Solved.Found<Seen> read)) {
            return Optional.empty();
        }
        for (int k = 0; k < moved.size(); k++) {
            all.set(moved.get(k), read.value().readings().get(k));
        }
        for (int k = 0; k < all.size(); k++) {
            all.set(k, all.get(k).of(checks.get(k)));
        }
        return Optional.of(all);
    }

    /** What is noticed; the fuses are those of the machine as supposed, where the state is one that stays as it is. */
    private List<Observation> noticed(Seen known, Circuit supposed, Supposition supposition) {
        List<Observation> all =
                new ArrayList<>(Observations.of(healthy, known, Fates.absent(arrangement, supposition), NOT_FELT));
        all.removeIf(o -> o.sight().aspect() == Observation.Aspect.FUSE);
        all.addAll(fuses(supposed, Fates.absent(arrangement, supposition)));
        return all;
    }

    /** What fuses look like, and what their caps say. */
    private List<Observation> fuses(Circuit supposed, Set<String> absent) {
        List<Observation> all = new ArrayList<>(Observations.fuses(supposed, healthy, absent));
        all.addAll(Observations.ratings(supposed, healthy, absent));
        return all;
    }

    private Untouched.State cycle(Seen seen) {
        return new Untouched.State() {
            @Override
            public double amps(String part) {
                return peakAmps.computeIfAbsent(part, p -> peakOf(seen, p));
            }

            @Override
            public double volts(Net one, Net two) {
                return Extent.of(seen.volts(one, two)).peak();
            }
        };
    }

    private static double peakOf(Seen seen, String part) {
        double most = -1;
        for (String current : seen.modelled().currents().keySet()) {
            if (current.equals(part) || current.startsWith(part + ".")) {
                most = Math.max(most, Extent.of(seen.amps(current)).peak());
            }
        }
        return most < 0 ? Double.POSITIVE_INFINITY : most;
    }

    // ---- power off
    // ------------------------------------------------------------------------------------------------------

    private void takeAtRest() {
        if (!(AtRest.of(asArranged, arrangement, meter) instanceof Solved.Found<AtRest> found)) {
            return;
        }
        for (Check check : checks) {
            if (found.value().take(check) instanceof Solved.Found<AtRest.Touched> touched) {
                atRest.put(check, touched.value());
            }
        }
    }

    private Optional<Foretold> atRest(Supposition supposition) throws UnfitArrangement, UnfitSupposition {
        Machine machine = Machine.of(healthy, arrangement, supposition);
        List<Check> here = machine.checksHere(checks, asArranged);
        List<Reading> readings = new ArrayList<>();
        AtRest supposed = null;
        Changes changes = Changes.between(asArranged, machine.arranged());
        BitSet staying = machine.staying(checks, here, asArranged);
        boolean untouchedAll = true;
        for (int k = 0; k < checks.size(); k++) {
            Check check = checks.get(k);
            AtRest.Touched known = atRest.get(check);
            boolean same = known != null
                    && (supposition.isNothing()
                            || (staying.get(k) && under(known).by(supposition, changes)));
            if (same) {
                readings.add(Objects.requireNonNull(known).reading());
                continue;
            }
            untouchedAll = false;
            if (supposed == null) {
                supposed = AtRest.of(machine.arranged(), machine.bare(), meter).orElse(reason -> null);
                if (supposed == null) {
                    return Optional.empty();
                }
            }
            if (!(supposed.take(here.get(k)) instanceof Solved.Found<AtRest.Touched> touched)) {
                return Optional.empty();
            }
            readings.add(touched.value().reading().of(check));
        }
        Set<String> absent = Fates.absent(arrangement, supposition);
        return Optional.of(new Foretold(
                readings,
                fuses(machine.arranged(), absent),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                untouchedAll,
                Set.of()));
    }

    private Untouched under(AtRest.Touched touched) {
        double amps = Math.max(LEAST_METER_AMPS, NOTHING_OF_THE_METER * Math.abs(touched.meterAmps()));
        double volts = NOTHING_OF_THE_METER * Math.abs(touched.meterVolts());
        Untouched.State state = new Untouched.State() {
            @Override
            public double amps(String part) {
                return touched.partAmps(part);
            }

            @Override
            public double volts(Net one, Net two) {
                return touched.volts(one, two).map(Math::abs).orElse(Double.POSITIVE_INFINITY);
            }
        };
        return new Untouched(state, amps, volts);
    }
}
