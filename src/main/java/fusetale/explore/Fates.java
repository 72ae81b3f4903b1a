package fusetale.explore;

import fusetale.bench.Arrangement;
import fusetale.circuit.Fuse;
import fusetale.circuit.FuseLink;
import fusetale.circuit.Part;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What becomes of each fuse of a question's machine. */
final class Fates {
    private Fates() {}

    /** Fuses that are pulled, blown or missing before anything happens. */
    static Set<String> openFromTheStart(Arrangement arrangement, Supposition supposition) {
        Set<String> open = new TreeSet<>(arrangement.pulledFuses());
        for (Fault fault : supposition.faults()) {
            if (fault.mode() == FailureMode.BLOWN || fault.mode() == FailureMode.MISSING) {
                open.add(fault.part());
            }
        }
        return open;
    }

    /** Fuses that are not in their clips. */
    static Set<String> absent(Arrangement arrangement, Supposition supposition) {
        Set<String> absent = new TreeSet<>(arrangement.pulledFuses());
        supposition.faults().stream()
                .filter(f -> f.mode() == FailureMode.MISSING)
                .forEach(f -> absent.add(f.part()));
        return absent;
    }

    /** Every fuse in the order of the circuit file. */
    static List<FuseFate> of(Question question, Settled settled) {
        List<FuseFate> fates = new ArrayList<>();
        for (Part part : question.healthy().parts()) {
            if (part instanceof Fuse fuse) {
                fates.add(fate(question, settled, fuse));
            }
        }
        return fates;
    }

    private static FuseFate fate(Question question, Settled settled, Fuse fuse) {
        String name = fuse.name();
        Optional<Settled.Carrying> melted = find(settled.melted(), name);
        if (melted.isPresent()) {
            return carrying(melted.get(), FuseFate.State.MELTS);
        }
        Optional<Settled.Carrying> held = find(settled.held(), name);
        if (held.isPresent()) {
            boolean sure = held.get().melting().surelyHolds();
            return carrying(held.get(), sure ? FuseFate.State.INTACT : FuseFate.State.MAY_MELT);
        }
        FuseLink link = fuse.fitted();
        if (question.arrangement().pulledFuses().contains(name)) {
            return new FuseFate(name, fuse.marked(), link, FuseFate.State.PULLED, 0, null);
        }
        boolean missing = question.supposition().faults().stream()
                .anyMatch(f -> f.part().equals(name) && f.mode() == FailureMode.MISSING);
        return new FuseFate(
                name, fuse.marked(), link, missing ? FuseFate.State.MISSING : FuseFate.State.BLOWN, 0, null);
    }

    private static FuseFate carrying(Settled.Carrying c, FuseFate.State state) {
        FuseFate.Between seconds = c.melting().surelyHolds()
                ? null
                : new FuseFate.Between(c.melting().minSeconds(), c.melting().maxSeconds());
        return new FuseFate(
                c.fuse().name(),
                c.fuse().marked(),
                c.fuse().fitted(),
                state,
                c.amps().rms(),
                seconds);
    }

    private static Optional<Settled.Carrying> find(List<Settled.Carrying> all, String name) {
        return all.stream().filter(c -> c.fuse().name().equals(name)).findFirst();
    }
}
