package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExplanationTest {
    private static Set<String> parts(String text) {
        return new TreeSet<>(Arrays.asList(text.split(" ", -1)));
    }

    @ParameterizedTest
    @CsvSource({
        "T1, T1, T1 would go past what it stands.",
        "T1, T1 BR1, T1 would take BR1 past what it stands.",
        "BR1, T1 R2 BR1, 'BR1 would take R2, T1 past what they stand.'",
        "BR1 T1, T1 BR1, BR1 and T1 would go past what they stand.",
        "BR1, A B C D E, 'BR1 would take A, B, C, D past what they stand.'",
    })
    void whatBurnsIsNamedOnce(String leader, String victims, String told) {
        Repair repair = new Repair(List.of(leader.split(" ", -1)));

        assertThat(Explanation.danger(0.5, repair, parts(victims)))
                .startsWith("It is 50 of 100 likely that the fuses as fitted")
                .endsWith(": " + told);
    }
}
