package fusetale.desk;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.circuit.Circuit;
import fusetale.desk.card.PartCard;
import fusetale.fault.Catalogue;
import fusetale.fault.Supposition;
import fusetale.report.drawing.DrawingPlan;
import fusetale.report.drawing.DrawnPart;
import fusetale.report.drawing.SymbolStyle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever can be pressed on a drawing has a card that says something. */
class CardTest {
    @ParameterizedTest
    @ValueSource(strings = {"first-light", "night-ferry", "fog-bell"})
    void everySymbolHasACard(String board) {
        Circuit circuit = Answers.circuit(board);

        assertThat(DrawingPlan.of(circuit, SymbolStyle.IEC_60617).symbols().map(DrawnPart::name))
                .isNotEmpty()
                .allSatisfy(name -> {
                    PartCard card = PartCard.of(circuit, name, "", Supposition.NOTHING);
                    assertThat(card.about()).as(name).isNotBlank();
                    assertThat(card.ways()).as(name).isNotEmpty().allSatisfy(w -> {
                        assertThat(w.happened()).isNotBlank();
                        assertThat(w.confirm()).isNotBlank();
                    });
                });
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell"})
    void theMostCommonFailureStandsFirst(String board) {
        Circuit circuit = Answers.circuit(board);
        for (String name : Catalogue.designators(circuit)) {
            assertThat(PartCard.of(circuit, name, "", Supposition.NOTHING).ways())
                    .extracting(w -> -w.form().priorRatio())
                    .isSorted();
        }
    }
}
