package fusetale;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each rule fails on the violation seeded for it in {@code fusetale.seeded}, and on that only. */
class HouseRulesFireTest {
    private static final HouseRules RULES = new HouseRules("fusetale.seeded");

    private static final JavaClasses SEEDED = new ClassFileImporter().importPackages("fusetale.seeded");

    @Test
    void anArrowUpwardIsSeen() {
        assertThat(violations(RULES.arrows("circuit"))).contains("Upward").doesNotContain("Kept");
    }

    @Test
    void aReportThatAsksTheSolverIsSeen() {
        assertThat(violations(RULES.arrows("report"))).contains("GoesAround");
    }

    @ParameterizedTest
    @ValueSource(strings = {"signal", "fault", "cli"})
    void anAllowedArrowPasses(String room) {
        assertThat(violations(RULES.arrows(room))).isEmpty();
    }

    @Test
    void aCycleBetweenInnerPackagesIsSeen() {
        assertThat(violations(RULES.noCycles())).contains("mna.deep", "mna.deeper");
    }

    @Test
    void aModelThatKnowsASceneIsSeen() {
        assertThat(violations(RULES.modelsKnowNoScene())).contains("TiedModel").doesNotContain("FreeModel");
    }

    @Test
    void aViewThatSolvesIsSeen() {
        assertThat(violations(RULES.viewsDoNotSolve())).contains("ThinksItself").doesNotContain("FreeModel");
    }

    static Stream<HouseRules.Home> homes() {
        return HouseRules.HOMES.stream();
    }

    @ParameterizedTest
    @MethodSource("homes")
    void aLibraryAwayFromHomeIsSeen(HouseRules.Home home) {
        assertThat(violations(RULES.libraryStaysAtHome(home)))
                .contains("Everything")
                .doesNotContain("mna.Solver", "cli.Says");
    }

    @Test
    void aHomeThatDoesNotUseItsLibraryIsSeen() {
        assertThat(violations(RULES.somebodyIn("report", "org.jfree.."))).isEmpty();
    }

    @Test
    void aHomeThatUsesItsLibraryIsSeen() {
        assertThat(violations(RULES.somebodyIn("mna", "org.ejml.."))).contains("Solver");
    }

    @Test
    void aSecondClassThatTalksToTheLibraryIsSeen() {
        assertThat(RULES.classesUsing("org.ejml..", SEEDED))
                .contains("fusetale.seeded.mna.Solver", "fusetale.seeded.mna.SecondHand");
    }

    @Test
    void aStandardStreamOutsideTheCommandsIsSeen() {
        assertThat(violations(RULES.noStandardStreamsOutsideCli()))
                .contains("Talks")
                .doesNotContain("Says");
    }

    @Test
    void anExitOutsideTheCommandsIsSeen() {
        assertThat(violations(RULES.onlyCliEndsTheProgram())).contains("Talks").doesNotContain("Says");
    }

    @Test
    void aValueThatChangesIsSeen() {
        assertThat(violations(RULES.fieldsOfValuesAreFinal()))
                .contains("Loose.mutable")
                .doesNotContain("Kept");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Loose.length", "Loose.boxed", "Loose.several"})
    void aDoubleWithoutItsUnitIsSeen(String field) {
        assertThat(violations(RULES.doublesOfValuesCarryTheirUnit()))
                .contains(field)
                .doesNotContain("Kept");
    }

    @Test
    void aStaticFieldThatChangesIsSeen() {
        assertThat(violations(RULES.noStaticState())).contains("Loose.madeSoFar");
    }

    @Test
    void aPackageThatIsNotNullMarkedIsSeen() {
        assertThat(RULES.packagesNotNullMarked(SEEDED)).containsExactly("fusetale.seeded.unmarked");
    }

    @Test
    void aPackageThatIsNotInTheTableIsSeen() {
        assertThat(RULES.rooms(SEEDED)).contains("cellar").isNotEqualTo(HouseRules.MAY_USE.keySet());
    }

    /** What the rule has to say of the seeded packages; empty where it finds nothing. */
    private static String violations(ArchRule rule) {
        return String.join("\n", rule.evaluate(SEEDED).getFailureReport().getDetails());
    }
}
