package fusetale;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The product keeps {@link HouseRules}; there are no exemptions. That each rule can fail is shown beside this. */
class ArchitectureTest {
    private static final HouseRules RULES = new HouseRules("fusetale");

    private static final JavaClasses PRODUCT = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("fusetale");

    static Stream<String> rooms() {
        return HouseRules.MAY_USE.keySet().stream();
    }

    static Stream<HouseRules.Home> homes() {
        return HouseRules.HOMES.stream();
    }

    static Stream<Arguments> librariesAndRooms() {
        return HouseRules.HOMES.stream()
                .flatMap(home -> home.rooms().stream().map(room -> Arguments.of(home.library(), room)));
    }

    @Test
    void theTableNamesExactlyThePackagesThatExist() {
        assertThat(RULES.rooms(PRODUCT)).containsExactlyInAnyOrderElementsOf(HouseRules.MAY_USE.keySet());
    }

    @Test
    void nobodyUsesAPackageBelow() {
        List<String> order = new ArrayList<>(HouseRules.MAY_USE.keySet());

        assertThat(HouseRules.MAY_USE)
                .allSatisfy((room, used) ->
                        assertThat(order.subList(0, order.indexOf(room))).containsAll(used));
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void aPackageUsesOnlyWhatTheTableAllows(String room) {
        RULES.arrows(room).check(PRODUCT);
    }

    @Test
    void packagesAreFreeOfCyclesAtAllDepths() {
        RULES.noCycles().check(PRODUCT);
    }

    @Test
    void modelsOfTheWindowKnowNoScene() {
        RULES.modelsKnowNoScene().check(PRODUCT);
    }

    @Test
    void viewsDoNotSolve() {
        RULES.viewsDoNotSolve().check(PRODUCT);
    }

    @ParameterizedTest
    @MethodSource("homes")
    void aLibraryStaysAtHome(HouseRules.Home home) {
        RULES.libraryStaysAtHome(home).check(PRODUCT);
    }

    @ParameterizedTest
    @MethodSource("librariesAndRooms")
    void eachHomeReallyUsesItsLibrary(String library, String room) {
        assertThat(RULES.somebodyIn(room, library).evaluate(PRODUCT).hasViolation())
                .as("%s uses %s", room, library)
                .isTrue();
    }

    @Test
    void oneClassTalksToTheLinearAlgebraLibrary() {
        assertThat(RULES.classesUsing("org.ejml..", PRODUCT)).hasSize(1);
    }

    @Test
    void standardStreamsBelongToTheCommands() {
        RULES.noStandardStreamsOutsideCli().check(PRODUCT);
    }

    @Test
    void onlyTheCommandsEndTheProgram() {
        RULES.onlyCliEndsTheProgram().check(PRODUCT);
    }

    @Test
    void fieldsOfCircuitsAndFaultsAreFinal() {
        RULES.fieldsOfValuesAreFinal().check(PRODUCT);
    }

    @Test
    void doublesOfCircuitsAndFaultsCarryTheirUnit() {
        RULES.doublesOfValuesCarryTheirUnit().check(PRODUCT);
    }

    @Test
    void noStaticFieldChanges() {
        RULES.noStaticState().check(PRODUCT);
    }

    @Test
    void everyPackageIsNullMarked() {
        assertThat(RULES.packagesNotNullMarked(PRODUCT)).isEmpty();
    }
}
