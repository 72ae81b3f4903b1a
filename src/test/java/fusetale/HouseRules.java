package fusetale;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.toCollection;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.jspecify.annotations.NullMarked;

/**
 * The rules of the house as data, for packages under any root: the product's own, and one with a seeded violation of each
 * rule.
 */
final class HouseRules {
    private static final Pattern ROOM = Pattern.compile("[a-z]+");

    /**
     * Which package may use which, in the order of the table in {@code DEVELOPERS.md}; nobody uses a package below. Only
     * what is named: {@code mna} knows no parts, {@code model} no faults, and {@code report} and {@code cli} reach the
     * solver through {@code explore} alone.
     */
    static final Map<String, Set<String>> MAY_USE = table(
            "quantity  <-",
            "store     <-",
            "signal    <- quantity",
            "circuit   <- quantity store",
            "fault     <- quantity circuit",
            "mna       <- signal",
            "model     <- quantity signal circuit mna",
            "bench     <- quantity signal circuit fault mna model",
            "sentence  <- quantity circuit fault bench",
            "aftermath <- quantity signal circuit fault mna model bench",
            "explore   <- quantity signal circuit fault mna model bench sentence aftermath",
            "match     <- quantity store circuit fault bench sentence explore",
            "report    <- quantity store signal circuit fault bench sentence aftermath explore match",
            "cli       <- quantity store signal circuit fault bench sentence aftermath explore match report",
            "desk      <- quantity store signal circuit fault bench sentence aftermath explore match report",
            "start     <- cli desk");

    /** A library, and the only packages that may use it; each of them does. */
    record Home(String library, List<String> rooms) {}

    static final List<Home> HOMES = List.of(
            new Home("org.ejml..", List.of("mna")),
            new Home("org.snakeyaml..", List.of("store", "circuit")),
            // circuit writes the schema of its files, cli its answers
            new Home("com.fasterxml.jackson..", List.of("circuit", "cli")),
            new Home("org.hipparchus..", List.of("match")),
            new Home("org.jfree..", List.of("report")),
            new Home("org.apache.batik..", List.of("report")),
            new Home("org.apache.pdfbox..", List.of("report")),
            new Home("de.rototor..", List.of("report")),
            new Home("java.awt..", List.of("report")),
            new Home("javafx..", List.of("desk")),
            new Home("picocli..", List.of("cli")));

    /** Packages of values: public types have final fields only, and every double has its unit in its name. */
    private static final List<String> VALUES = List.of("circuit", "fault");

    private static final String UNIT_AT_THE_END =
            // si: in the SI unit of the Unit beside it
            "(?i).*(ohms|volts|amps|watts?|farads|henries|hertz|seconds|hours|celsius|kelvin|decibels|joules|grams|metres?|centimetre|millimetres?|ratio|count|si)";

    private static final Set<String> FLOATING = Set.of("double", "java.lang.Double", "[D");

    private final String root;

    HouseRules(String root) {
        this.root = root;
    }

    /** A package uses only what the table allows it. */
    ArchRule arrows(String room) {
        String[] forbidden = MAY_USE.keySet().stream()
                .filter(other -> !other.equals(room) && !MAY_USE.get(room).contains(other))
                .map(this::all)
                .toArray(String[]::new);
        return noClasses()
                .that()
                .resideInAPackage(all(room))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(forbidden)
                .because("the table of packages has no such arrow; data goes one way");
    }

    /** What is shown is settled where nothing is painted, so that it can be tested, and worked out, without a screen. */
    ArchRule modelsKnowNoScene() {
        return noClasses()
                .that()
                .resideInAnyPackage(all("desk.state"), all("desk.work"))
                .or()
                .haveSimpleNameEndingWith("Model")
                .and()
                .resideInAPackage(all("desk"))
                .or()
                .haveSimpleNameEndingWith("Rows")
                .and()
                .resideInAPackage(all("desk"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javafx.scene..", "javafx.stage..")
                .because("a model of the window is tested without one");
    }

    /** A view asks the model; the model asks away from the window's thread. */
    ArchRule viewsDoNotSolve() {
        return noClasses()
                .that(DescribedPredicate.describe("know a scene", HouseRules::knowsAScene))
                .should()
                .dependOnClassesThat()
                .haveNameMatching(".*\\.explore\\.(Explorer|Prepared|Preparation|Glances|BatchSolver|Staging)")
                .because("the solver never runs on the window's thread");
    }

    ArchRule noCycles() {
        return slices().matching(root + ".(**)").should().beFreeOfCycles();
    }

    ArchRule libraryStaysAtHome(Home home) {
        return noClasses()
                .that()
                .resideOutsideOfPackages(homes(home))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(home.library())
                .because("only " + home.rooms() + " know " + home.library());
    }

    /** That the rule above is not an empty one: the room does use the library. */
    ArchRule somebodyIn(String room, String library) {
        return noClasses()
                .that()
                .resideInAPackage(all(room))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library);
    }

    /** Outermost classes that touch the linear algebra library. */
    Set<String> classesUsing(String library, JavaClasses classes) {
        DescribedPredicate<JavaClass> ofTheLibrary = JavaClass.Predicates.resideInAPackage(library);
        return classes.stream()
                .filter(c -> c.getDirectDependenciesFromSelf().stream()
                        .anyMatch(dependency -> ofTheLibrary.test(dependency.getTargetClass())))
                .map(HouseRules::outermost)
                .collect(toCollection(TreeSet::new));
    }

    ArchRule noStandardStreamsOutsideCli() {
        return noClasses()
                .that()
                .resideOutsideOfPackage(all("cli"))
                .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS)
                .because("what is said to a person is said by the commands");
    }

    ArchRule onlyCliEndsTheProgram() {
        return noClasses()
                .that()
                .resideOutsideOfPackage(all("cli"))
                .should()
                .callMethod(System.class, "exit", int.class)
                .because("exit codes are settled in one place");
    }

    /** Public types are values; what a reader works with is package-private and lives no longer than its file. */
    ArchRule fieldsOfValuesAreFinal() {
        return fields().that(ofValues())
                .and()
                .areDeclaredInClassesThat()
                .arePublic()
                .should()
                .beFinal();
    }

    ArchRule doublesOfValuesCarryTheirUnit() {
        return fields().that(ofValues())
                .and(DescribedPredicate.describe(
                        "hold a double",
                        (JavaField field) ->
                                FLOATING.contains(field.getRawType().getName())))
                .should()
                .haveNameMatching(UNIT_AT_THE_END);
    }

    ArchRule noStaticState() {
        return fields().that()
                .areDeclaredInClassesThat()
                .resideInAPackage(root + "..")
                .and()
                .areStatic()
                .should()
                .beFinal();
    }

    /** Packages with classes that NullAway would silently pass over. */
    Set<String> packagesNotNullMarked(JavaClasses classes) {
        return classes.stream()
                .map(JavaClass::getPackage)
                .filter(p -> !p.isAnnotatedWith(NullMarked.class))
                .map(p -> p.getName())
                .collect(toCollection(TreeSet::new));
    }

    /** First package level below the root, of every class; {@code .} for a class in the root itself. */
    Set<String> rooms(JavaClasses classes) {
        return classes.stream()
                .map(c -> c.getPackageName().equals(root)
                        ? "."
                        : c.getPackageName().substring(root.length() + 1).replaceFirst("\\..*", ""))
                .collect(toCollection(TreeSet::new));
    }

    private static boolean knowsAScene(JavaClass one) {
        return one.getDirectDependenciesFromSelf().stream()
                .anyMatch(d -> d.getTargetClass().getPackageName().startsWith("javafx.scene"));
    }

    private DescribedPredicate<JavaField> ofValues() {
        DescribedPredicate<JavaClass> inValues = JavaClass.Predicates.resideInAnyPackage(
                VALUES.stream().map(this::all).toArray(String[]::new));
        return DescribedPredicate.describe(
                "of classes in " + VALUES,
                field ->
                        inValues.test(field.getOwner()) && !field.getModifiers().contains(JavaModifier.SYNTHETIC));
    }

    private static String outermost(JavaClass inner) {
        return inner.getName().replaceFirst("\\$.*", "");
    }

    private String[] homes(Home home) {
        return home.rooms().stream().map(this::all).toArray(String[]::new);
    }

    private String all(String room) {
        return root + "." + room + "..";
    }

    private static Map<String, Set<String>> table(String... rows) {
        Map<String, Set<String>> table = new LinkedHashMap<>();
        for (String row : rows) {
            List<String> words =
                    ROOM.matcher(row).results().map(MatchResult::group).toList();
            table.put(words.get(0), Set.copyOf(words.subList(1, words.size())));
        }
        return table;
    }
}
