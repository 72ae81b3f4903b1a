package fusetale.desk.state;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Meter;
import fusetale.bench.Observation;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.desk.Answers;
import fusetale.explore.Foretelling;
import fusetale.explore.Specimen;
import fusetale.fault.Supposition;
import fusetale.match.Ask;
import fusetale.match.Shown;
import fusetale.sentence.Sentences;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is noticed without a meter. */
class SightsTest {
    private static Sights sights(Circuit board) {
        return new FoundReader(new Sentences(board)).sights();
    }

    /** "As they should" is what the healthy machine does: that of the solver, on every ask of the small boards and some of the large. */
    @ParameterizedTest
    @CsvSource({"first-light, 1", "fog-bell, 1", "night-ferry, 9"})
    void asItShouldIsWhatTheHealthyMachineDoes(String name, int every) {
        Circuit board = Answers.circuit(name);
        Sights sights = sights(board);
        Map<List<String>, List<Observation>> seen = new HashMap<>();
        List<Ask.Noticed> asks = sights.intake();
        int compared = 0;
        for (int k = 0; k < asks.size(); k += every) {
            Ask.Noticed ask = asks.get(k);
            Optional<Shown.Seen> sound = sights.sound(ask);
            if (sound.isPresent()) {
                List<Observation> all =
                        seen.computeIfAbsent(List.copyOf(ask.arrangement().heldOn()), held -> healthy(board, held));
                assertThat(all.stream()
                                .filter(o ->
                                        o.part().equals(ask.part()) && o.sight().aspect() == ask.aspect())
                                .map(Observation::sight))
                        .as(
                                "%s %s, held on: %s",
                                ask.part(), ask.aspect(), ask.arrangement().heldOn())
                        .containsExactly(sound.get().sight());
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(2);
    }

    private static List<Observation> healthy(Circuit board, List<String> held) {
        Arrangement on = Arrangement.powered(board);
        for (String driven : held) {
            on = on.withHeldOn(driven);
        }
        try {
            return Foretelling.of(Specimen.nominal(board), on, Meter.trueRms4000(), List.of(), () -> false)
                    .under(Supposition.NOTHING, () -> false)
                    .orElseThrow()
                    .observations();
        } catch (UnfitArrangement e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void groupsAreByWhenSomethingIsSeen() {
        Sights sights = sights(Answers.circuit("night-ferry"));

        assertThat(sights.intake()).extracting(sights::occasion).contains(Sights.Occasion.values());
        assertThat(sights.intake())
                .filteredOn(a -> sights.occasion(a) == Sights.Occasion.CALLED)
                .allMatch(a -> a.arrangement().heldOn().contains(a.part()))
                .hasSizeGreaterThan(10);
    }
}
