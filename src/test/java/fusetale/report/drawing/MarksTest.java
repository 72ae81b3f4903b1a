package fusetale.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.Part;
import fusetale.explore.Answer;
import fusetale.explore.Explorer;
import fusetale.explore.Outcome;
import fusetale.explore.Progress;
import fusetale.explore.Question;
import fusetale.fault.Catalogue;
import fusetale.fault.Fault;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import fusetale.sentence.SentenceException;
import fusetale.sentence.SentenceParser;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a supposition leaves on the drawing. */
class MarksTest {
    private static final Circuit FERRY = Shipped.circuit("night-ferry");
    private static final DrawingPlan FERRY_PLAN = DrawingPlan.of(FERRY, SymbolStyle.IEEE_315);
    private static final Circuit LIGHT = Shipped.circuit("first-light");
    private static final DrawingPlan LIGHT_PLAN = DrawingPlan.of(LIGHT, SymbolStyle.IEEE_315);

    private static Question question(Circuit circuit, Arrangement arrangement, String... faults) {
        try {
            return new Question(
                    circuit,
                    faults.length == 0 ? Supposition.NOTHING : new SentenceParser(circuit).parse(List.of(faults)),
                    arrangement,
                    Meter.trueRms4000(),
                    List.of(),
                    new Question.Options(2, 1, 0));
        } catch (SentenceException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static Outcome outcome(Circuit circuit, String... faults) {
        Answer answer = new Explorer(1)
                .answer(question(circuit, Arrangement.powered(circuit), faults), Progress.SILENT, () -> false);
        assertThat(answer).isInstanceOf(Answer.Answered.class);
        return ((Answer.Answered) answer).outcome();
    }

    private static List<String> path(Outcome outcome, DrawingPlan plan) {
        return new FaultPath(plan, outcome)
                .names(outcome.question().supposition().faults().get(0));
    }

    /** By hand: the winding is shorted through leg 1 in every half wave in which leg 2 conducts. */
    @Test
    void pathOfAShortedLegLeadsThroughTheWindingAndTheLegBesideIt() {
        Outcome outcome = outcome(FERRY, "BR201.leg1=short", "F201=wrong-rating:25A");

        assertThat(path(outcome, FERRY_PLAN))
                .containsExactlyInAnyOrder("F201", "J1.3", "T101.sol", "J1.4", "BR201.leg2");
    }

    /** By hand: rail to coil to driver to ground and back; through the bridge either pair of legs, as either half wave has it. */
    @Test
    void pathOfAShortedDriverLeadsThroughItsCoilAndEveryFuseBeforeIt() {
        Outcome outcome = outcome(FERRY, "Q205.ce=short");

        assertThat(path(outcome, FERRY_PLAN))
                .contains("L205", "J2.5", "J4.2", "F202", "S201", "T101.sol", "J1.3", "J1.4", "F201", "W203")
                .noneMatch(name -> name.startsWith("L20") && !name.equals("L205"));
    }

    @Test
    void pathIsTakenBeforeTheFuseMelts() {
        Outcome outcome = outcome(LIGHT, "C1=short");

        assertThat(path(outcome, LIGHT_PLAN)).contains("F1", "J1.1", "T1.sec", "J1.2");
    }

    @Test
    void openHasNoPath() {
        assertThat(path(outcome(LIGHT, "R2=open"), LIGHT_PLAN)).isEmpty();
    }

    @Test
    void fuseThatMeltsIsDrawnBlownAndSaysWhen() {
        Marks marks = Marks.of(LIGHT_PLAN, outcome(LIGHT, "BR1.leg1=short"));

        assertThat(marks.said().get("F1")).anyMatch(line -> line.startsWith("melts in "));
        assertThat(marks.strokes()).anyMatch(s -> s.tone() == Tone.SHADE);
        assertThat(marks.swipes()).anyMatch(s -> s.weight() == Weight.SWIPE);
    }

    @Test
    void figureAboveItsRatingHasAHatchedBox() {
        Marks marks = Marks.of(LIGHT_PLAN, outcome(LIGHT, "BR1.leg1=short", "F1=wrong-rating:10A"));

        assertThat(marks.said().get("F1")).contains("10 A fitted", "drawing says 2 A");
        assertThat(marks.said().get("T1")).anyMatch(line -> line.endsWith(" A"));
        assertThat(marks.strokes()).anyMatch(s -> s.tone() == Tone.HATCH);
    }

    @ParameterizedTest
    @CsvSource({
        "R1=short, 1, MARKER_LINE, MARK, shorted",
        "R1=open, 4, PAPER, MARK, open",
        "BR1.leg2=leaky, 10, MARKER_LINE, FILLED, leg 2 leaky",
        "F1=blown, 4, SHADE, FILLED, blown",
        "F1=missing, 9, RULE, RING, missing",
        "R2=drifted:x1.5, 0, INK, MARK, drifted to × 1.5 of nominal",
        "C1=dried-out:40%, 0, INK, MARK, dried out to 40 % left",
    })
    void signOfAFailure(String fault, int strokes, Tone tone, Weight weight, String words) {
        Marks marks = Marks.of(LIGHT_PLAN, question(LIGHT, Arrangement.powered(LIGHT), fault));

        assertThat(marks.strokes()).hasSize(strokes);
        assertThat(marks.strokes().isEmpty()
                        || marks.strokes().stream().anyMatch(s -> s.tone() == tone && s.weight() == weight))
                .isTrue();
        assertThat(marks.said().values()).containsExactly(List.of(words));
    }

    @Test
    void benchIsMarkedToo() {
        Arrangement arrangement = Arrangement.unpowered()
                .withPulledFuse("F201")
                .withUnplugged("J6")
                .withLiftedPin("BR201.ac1")
                .withSwitch("S201", false)
                .withHeldOn("L205")
                .withCharged("C101", 8)
                .withClip("TP4", "TP5");
        Marks marks = Marks.of(FERRY_PLAN, question(FERRY, arrangement));

        assertThat(marks.said())
                .containsEntry("F201", List.of("pulled"))
                .containsEntry("J6.1", List.of("unplugged"))
                .containsEntry("J6.2", List.of("unplugged"))
                .containsEntry("BR201", List.of("ac1 lifted"))
                .containsEntry("S201", List.of("open"))
                .containsEntry("L205", List.of("held on"))
                .containsEntry("C101", List.of("charged to 8 V"))
                .containsEntry("mains", List.of("plug out", "clip lead from TP4 to TP5"));
    }

    /** Every failure of every part of the small machines, and every ninth of the large one. */
    @ParameterizedTest
    @CsvSource({"first-light, 1", "fog-bell, 1", "night-ferry, 9"})
    void everyFailureIsMarkedWhereItTouchesNothing(String name, int every) {
        Circuit circuit = Shipped.circuit(name);
        DrawingPlan plan = DrawingPlan.of(circuit, SymbolStyle.IEEE_315);
        List<FaultForm> forms = Catalogue.possible(circuit);
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < forms.size(); i += every) {
            Fault fault = forms.get(i).usual();
            Question question = new Question(
                    circuit,
                    new Supposition(List.of(fault)),
                    Arrangement.powered(circuit),
                    Meter.trueRms4000(),
                    List.of(),
                    new Question.Options(2, 1, 0));
            Marks marks = Marks.of(plan, question);
            if (marks.said().isEmpty()) {
                wrong.add(fault.target() + " " + fault.mode() + " is not marked");
            }
            for (Label label : marks.labels()) {
                Box box = label.bounds();
                boolean touches = plan.symbols()
                                .anyMatch(p -> p.solids().stream().anyMatch(box::meets)
                                        || p.labels().stream()
                                                .anyMatch(l -> l.bounds().meets(box)))
                        || plan.nets().stream()
                                .flatMap(n -> n.wires().stream())
                                .anyMatch(w -> w.bounds().meets(box));
                if (touches) {
                    wrong.add(fault.target() + " " + fault.mode() + ": " + label.text());
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void everyPlaceOfAFailureHasALegOfItsOwn() {
        Set<String> without = new LinkedHashSet<>();
        for (Circuit circuit : Stream.concat(Stream.of(FERRY, Shipped.circuit("fog-bell")), Shipped.benchmarks())
                .toList()) {
            DrawingPlan plan = DrawingPlan.of(circuit, SymbolStyle.IEC_60617);
            for (FaultForm form : Catalogue.possible(circuit)) {
                Fault fault = form.usual();
                plan.symbol(fault.part())
                        .filter(p -> !p.legs().containsKey(fault.place()))
                        .ifPresent(p -> without.add(p.kind() + " " + fault.place()));
            }
        }
        // a bridge turned on its pad is marked as a whole
        assertThat(without).containsExactly("bridge quarter");
    }

    @Test
    void shippedCircuitsHaveEveryKindOfPartSoThatEveryKindIsDrawn() {
        Set<Class<?>> kinds = new LinkedHashSet<>();
        Stream.concat(Stream.of("first-light", "fog-bell", "night-ferry").map(Shipped::circuit), Shipped.benchmarks())
                .flatMap(circuit -> circuit.parts().stream())
                .forEach(part -> kinds.add(part.getClass()));

        assertThat(kinds).containsExactlyInAnyOrderElementsOf(Arrays.asList(Part.class.getPermittedSubclasses()));
    }

    @Test
    void drawingIsToldInWordsWhatIsMarkedFirst() {
        Marks marks = Marks.of(LIGHT_PLAN, question(LIGHT, Arrangement.powered(LIGHT), "F1=wrong-rating:10A"));

        assertThat(new DrawingText(LIGHT_PLAN, marks).lines())
                .startsWith("F1, fuse, 2 A slow, between J1.1 and BR1: 10 A fitted, drawing says 2 A")
                .contains(
                        "C1, electrolytic, 4700 μF, between BR1, R1, R2 and ground gnd",
                        "BR1, bridge, 4 A; ac1 at F1; ac2 at J1.2; plus at C1, R1, R2; minus at ground gnd");
    }
}
