package fusetale.desk.state;

import fusetale.match.Evidence;
import fusetale.match.Findings;
import fusetale.sentence.Measured;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** One thing found on the machine or done to it, in the order of the bench. */
public sealed interface Found {
    /** As a line that reads back to it, the bench left out: {@code TP2 32.4 V d.c. volts}, {@code replaced R2}. */
    String text();

    /** What it tells of the machine; empty where it tells nothing. */
    Optional<Evidence> told();

    /** The reading; null for what is none. */
    @Nullable
    Measured measured();

    /**
     * Something read off a meter, seen, heard or felt.
     *
     * @param text as a line that reads back to it, the bench left out: {@code TP2 32.4 V d.c. volts}, {@code F201 wire gone}
     * @param evidence as the matcher takes it, with the bench it was found on
     * @param measured the reading; null for what was seen, heard or felt
     */
    record Noted(String text, Evidence evidence, @Nullable Measured measured) implements Found {
        /** The same with a remark. */
        Noted remarked(String note) {
            return new Noted(text, new Evidence(evidence.ask(), evidence.shown(), note), measured);
        }

        @Override
        public Optional<Evidence> told() {
            return Optional.of(evidence);
        }
    }

    /**
     * Parts that were replaced by good ones: what stands before it is true of the machine as it was, what stands behind it of
     * the machine with the new parts.
     *
     * @param text as a line that reads back to it: {@code replaced R2, F1}
     * @param parts their designators; at least one
     */
    record Replaced(String text, List<String> parts) implements Found {
        /** Copies the list. */
        public Replaced {
            parts = List.copyOf(parts);
        }

        @Override
        public Optional<Evidence> told() {
            return Optional.empty();
        }

        @Override
        public @Nullable Measured measured() {
            return null;
        }
    }

    /** All of it as the matcher takes it; parts replaced one after the other are replaced together. */
    static Findings findings(List<Found> all) {
        List<Findings.Spell> spells = new ArrayList<>();
        Set<String> replaced = new LinkedHashSet<>();
        List<Evidence> evidence = new ArrayList<>();
        for (Found found : all) {
            if (found instanceof Replaced now) {
                if (replaced.isEmpty() || !evidence.isEmpty()) {
                    spells.add(new Findings.Spell(List.copyOf(replaced), evidence));
                    replaced.clear();
                    evidence.clear();
                }
                replaced.addAll(now.parts());
            } else {
                found.told().ifPresent(evidence::add);
            }
        }
        spells.add(new Findings.Spell(List.copyOf(replaced), evidence));
        return new Findings(spells);
    }

    /** What was found on the machine as it is now: all behind the last part that was replaced. */
    static List<Found> now(List<Found> all) {
        int from = 0;
        for (int k = 0; k < all.size(); k++) {
            from = all.get(k) instanceof Replaced ? k + 1 : from;
        }
        return all.subList(from, all.size());
    }
}
