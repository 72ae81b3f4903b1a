package fusetale.match;

import java.util.ArrayList;
import java.util.List;

/**
 * All that was found on one machine, in the order it was found. What was read before a part was replaced tells of the
 * machine as it was then: it is kept, and stays true of that machine.
 *
 * @param spells first the machine as found, then one after each round of replaced parts; at least one
 */
public record Findings(List<Spell> spells) {
    /** Nothing was read yet. */
    public static final Findings NONE = of(List.of());

    /** Copies the list. */
    public Findings {
        spells = List.copyOf(spells);
        if (spells.isEmpty()) {
            throw new IllegalArgumentException("the machine as found is the first spell");
        }
    }

    /**
     * The time between two rounds of replacing.
     *
     * @param replaced designators of parts that were replaced before it by good ones; empty for the machine as found
     * @param evidence what was read and seen; a repeated reading stands behind the first
     */
    public record Spell(List<String> replaced, List<Evidence> evidence) {
        /** Copies the lists. */
        public Spell {
            replaced = List.copyOf(replaced);
            evidence = List.copyOf(evidence);
        }
    }

    /** Of a machine as found. */
    public static Findings of(List<Evidence> evidence) {
        return new Findings(List.of(new Spell(List.of(), evidence)));
    }

    /** The same with one more reading on the machine as it is now. */
    public Findings with(Evidence more) {
        List<Spell> all = new ArrayList<>(spells);
        Spell last = all.remove(all.size() - 1);
        List<Evidence> evidence = new ArrayList<>(last.evidence());
        evidence.add(more);
        all.add(new Spell(last.replaced(), evidence));
        return new Findings(all);
    }

    /** The same with parts replaced now. */
    public Findings replaced(List<String> parts) {
        List<Spell> all = new ArrayList<>(spells);
        all.add(new Spell(parts, List.of()));
        return new Findings(all);
    }

    /** Everything read and seen, in order. */
    public List<Evidence> evidence() {
        return spells.stream().flatMap(s -> s.evidence().stream()).toList();
    }

    /** The machine as it is now. */
    public Spell now() {
        return spells.get(spells.size() - 1);
    }

    /** How many readings and observations there are. */
    public int size() {
        return evidence().size();
    }
}
