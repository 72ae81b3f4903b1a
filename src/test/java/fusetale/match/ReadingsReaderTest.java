package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Observation.Aspect;
import fusetale.bench.Observation.Sight;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Problem;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingsReaderTest {
    static final Circuit FERRY = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/night-ferry.yaml"))
            .circuit());

    private static final String HEAD = "arrangement,function,from,to,value,unit,meter,note\n";

    private static ReadingsFile read(String rows) {
        return new ReadingsReader(FERRY).read("a.csv", HEAD + rows);
    }

    private static Evidence one(String row) {
        ReadingsFile file = read(row);
        assertThat(file.problems()).isEmpty();
        assertThat(file.findings().size()).isEqualTo(1);
        return file.findings().evidence().get(0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "as found,d.c. volts,TP4,gnd,45.9,V,, | TP4 | gnd | DC_VOLTS | 45.9",
                ",dc,tp4,,\"45,9\",,, | TP4 | gnd | DC_VOLTS | 45.9",
                ",ac,TP4,,610,mV,, | TP4 | gnd | AC_VOLTS | 0.61",
                ",ac,TP10,,6.5,VAC,, | TP10 | gi1r | AC_VOLTS | 6.5",
                ",ohms,TP4,gnd,3k3,,, | TP4 | gnd | OHMS | 3300",
                ",ohm,TP4,gnd,\"4,7\",kohm,, | TP4 | gnd | OHMS | 4700",
                ",ohms,gnd,TP4,0.2,Ω,, | gnd | TP4 | OHMS | 0.2",
                ",diode,gnd,solraw,\"0,523\",V,, | gnd | solraw | DIODE_TEST | 0.523",
                ",diode test,BR201 ac1,br201.plus,0.52,,, | BR201.ac1 | BR201.plus | DIODE_TEST | 0.52",
                ",continuity,TP4,TP5,beeps,,, | TP4 | TP5 | CONTINUITY | 0",
                ",continuity,TP4,TP5,0.3,,, | TP4 | TP5 | OHMS | 0.3",
                "F201 pulled,amps,F201.one,F201.two,\"1,2\",A,, | F201.one | F201.two | DC_AMPS | 1.2",
                ",dc,TP4,,-12.4,V,, | TP4 | gnd | DC_VOLTS | -12.4",
                ",dc,TP4,,-0.2,V,basic,rain | TP4 | gnd | DC_VOLTS | -0.2",
            })
    void figuresAreReadAsTheyAreTypedAtTheBench(
            String row, String red, String black, MeterFunction function, double si) {
        Evidence evidence = one(row);

        assertThat(((Ask.Metered) evidence.ask()).check()).isEqualTo(new Check(red, black, function));
        assertThat(evidence.shown()).isEqualTo(new Shown.Figure(si));
        assertThat(evidence.ask().arrangement().powerOn()).isEqualTo(function.powered());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"diode,gnd,TP4,OL", "ohms,TP4,gnd,O.L,kohm", "continuity,TP4,TP5,silent", "dc,TP4,,overload"})
    void overRangeIsNoFigure(String row) {
        assertThat(one("," + row).shown()).isEqualTo(new Shown.Over());
    }

    @ParameterizedTest
    @CsvSource({
        "fuse,F201,blown,WIRE_GONE",
        "fuse,f201,Wire gone,WIRE_GONE",
        "fuse,F201,whole,WIRE_WHOLE",
        "fuse,F202,missing,NO_FUSE",
        "lamp,E310,dark,DARK",
        "Lamp,E310,dim,DIM",
        "lamp,E310,lit,LIT",
        "lamp,E310,bright,BRIGHT",
        "coil,L201,nothing,STILL",
        "coil,L201,does nothing,STILL",
        "coil,L201,buzzes,BUZZES",
        "coil,L201,pulls in,PULLS_IN",
        "start-up,U501,dead,DEAD",
        "start up,U501,starts,STARTS",
        "start-up,U501,4 of 4 lamps,STARTS",
        "heat,T101,hot,TOO_HOT",
        "heat,J1.1,can be touched,NOT_HOT",
        "hum,C101,hums,HUMS",
        "hum,C101,quiet,QUIET",
    })
    void whatIsSeenIsReadInEverydayWords(String function, String part, String value, Sight sight) {
        Evidence evidence = one("," + function + "," + part + ",," + value);

        assertThat(evidence.shown()).isEqualTo(new Shown.Seen(sight));
        assertThat(evidence.ask()).isInstanceOfSatisfying(Ask.Noticed.class, n -> {
            assertThat(n.aspect()).isEqualTo(sight.aspect());
            assertThat(n.part()).isEqualToIgnoringCase(part);
            assertThat(n.arrangement().powerOn()).isTrue();
        });
    }

    @Test
    void everyWordOfEverySightIsRead() {
        for (Aspect aspect : Aspect.values()) {
            for (String word : SightWords.allowed(aspect)) {
                assertThat(SightWords.sight(aspect, word)).as(word).isPresent();
            }
            assertThat(Arrays.stream(Sight.values()).filter(s -> s.aspect() == aspect))
                    .allMatch(s -> SightWords.sight(aspect, s.words()).equals(Optional.of(s)));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"stops at 2", "2 of 4 lamps", "2 of 4", "2/4", "2", "stops at 2 of 4, before solenoid rail"})
    void theLampsOfTheControllerAreCounted(String value) {
        assertThat(one(",start-up,,,\"" + value + "\"").shown()).isEqualTo(new Shown.Seen(Sight.STOPS, 2));
    }

    @Test
    void aStopThatNobodyCountedIsAStop() {
        assertThat(one(",start-up,U501,,stops").shown()).isEqualTo(new Shown.Seen(Sight.STOPS, -1));
    }

    @Test
    void whatNobodyKnowsCountsForNothing() {
        ReadingsFile file = read(
                ",dc,TP4,,,,,\n,dc,TP5,,don't know,,,\n,dc,TP6,,don’t know,,,\n,fuse,F201,,?,,,\n,lamp,E310,,dark,,,\n");

        assertThat(file.problems()).isEmpty();
        assertThat(file.findings().size()).isEqualTo(1);
        assertThat(file.unmeasured()).isEqualTo(4);
        assertThat(file.lines()).containsExactly(6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"as", "as found,", ",dc,TP", ",dc,TP5,gnd"})
    void aLastLineThatIsCutBeforeItsValueIsTold(String cut) {
        ReadingsFile file = read(",dc,TP4,,46,V,,\n" + cut);

        assertThat(file.problems()).singleElement().satisfies(p -> {
            assertThat(p.line()).isEqualTo(3);
            assertThat(p.found()).contains("cut short");
        });
    }

    @Test
    void aFileThatIsCutInItsFirstLineIsTold() {
        ReadingsFile cut = new ReadingsReader(FERRY).read("a.csv", "arrangement,function,from,to,value,unit,");

        assertThat(cut.problems()).singleElement().satisfies(p -> {
            assertThat(p.line()).isEqualTo(1);
            assertThat(p.found()).contains("cut short");
        });
        assertThat(new ReadingsReader(FERRY).read("a.csv", HEAD).problems()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {",dc,TP5,gnd,", ",dc,TP5\n", ",replaced,F201", ""})
    void aLastLineThatWasLeftOpenIsNot(String last) {
        assertThat(read(",dc,TP4,,46,V,,\n" + last).problems()).isEmpty();
    }

    @Test
    void whatWasReplacedBeginsTheMachineAnew() {
        ReadingsFile file = read(",fuse,F201,,blown,,,\n,replaced,F201,,,,,\n,replaced,BR201,,,,,\n,dc,TP4,,46,V,,\n");

        assertThat(file.problems()).isEmpty();
        assertThat(file.findings().spells())
                .extracting(Findings.Spell::replaced)
                .containsExactly(List.of(), List.of("F201", "BR201"));
        assertThat(file.findings().now().evidence()).hasSize(1);
        assertThat(read(",replaced,F201 and BR201,,,,,").findings().now().replaced())
                .containsExactly("F201", "BR201");
    }

    @Test
    void theBenchIsSaidInWordsOrByName() {
        Arrangement lamp = one("Series lamp START,dc,TP4,,1,V,,").ask().arrangement();
        Arrangement pulled = one("\"power off, F201 out\",ohms,TP4,,1,,,").ask().arrangement();
        Arrangement same = one("F201 pulled,ohms,TP4,,1,,,").ask().arrangement();
        Arrangement held = one("L205 held on,dc,TP4,,1,V,,").ask().arrangement();

        assertThat(lamp.seriesLampWatts()).isNotNull();
        assertThat(pulled.pulledFuses()).containsExactly("F201");
        assertThat(pulled.powerOn()).isFalse();
        // equal deeds, equal arrangements
        assertThat(same).isEqualTo(pulled);
        assertThat(held.powerOn()).isTrue();
        assertThat(held.heldOn()).containsExactly("L205");
    }

    @Test
    void aSpreadsheetsFileIsRead() {
        String text = String.join(
                "\r\n",
                "Note;Value;From;To;Function",
                "\"before, \"\"after\"\"",
                "and in the end\";0,523;gnd;TP4;Diode Test",
                ";;;;",
                ";\"-12,4\";TP4;;dc",
                "");
        ReadingsFile file = new ReadingsReader(FERRY).read("b.csv", text);

        assertThat(file.problems()).isEmpty();
        assertThat(file.findings().evidence())
                .extracting(Evidence::shown)
                .containsExactly(new Shown.Figure(0.523), new Shown.Figure(-12.4));
        assertThat(file.findings().evidence().get(0).note()).isEqualTo("before, \"after\"\r\nand in the end");
        assertThat(file.lines()).containsExactly(2, 5);
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16", "windows-1252"})
    void aFileIsReadInTheEncodingsOfSpreadsheets(String charset, @TempDir Path folder) throws IOException {
        String text = "function\tfrom\tvalue\tnote\ndc\tTP4\t45,9 V\t40 °C ½ h\nac\tTP4\t22 mV\t\n";
        byte[] bytes = text.getBytes(Charset.forName(charset));
        Path file = Files.write(folder.resolve("a.csv"), bytes);
        if (charset.equals("UTF-8")) {
            Files.write(file, ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8));
        }

        ReadingsFile read = new ReadingsReader(FERRY).read(file);

        assertThat(read.problems()).isEmpty();
        assertThat(read.findings().evidence().get(0).note()).isEqualTo("40 °C ½ h");
        assertThat(read.findings().evidence().get(1).shown()).isEqualTo(new Shown.Figure(0.022));
    }

    @Test
    void everyErrorIsToldAtOnceWithItsPlaceAndTheNearestSpelling() {
        List<Problem> problems = read("""
                        ,d.c. vlots,TP4,,1,V,,
                        ,dc,TP44,,1,V,,
                        ,dc,TP4,gdn,1,V,,
                        ,dc,TP4,,12..4,V,,
                        ,dc,TP4,,12.4,A,,
                        pwoer orf,dc,TP4,,12.4,V,,
                        power on,ohms,TP4,,12.4,,,
                        ,fuse,F999,,blown,,,
                        ,fuse,C101,,blown,,,
                        ,fuse,F201,,blwon,,,
                        ,start-up,U501,,3 of 5,,,
                        ,dc,TP4,,1,V,guesswork,
                        ,replaced,F2O1,,,,,
                        ,dc,TP4,,3.3 kohm,,,
                        ,lamp,E310,gnd,dark,,,
                        ,dc,TP4,,1,V,,note,extra
                        """).problems();

        assertThat(problems)
                .extracting(Problem::line)
                .containsExactly(2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17);
        assertThat(problems).allMatch(p -> p.file().equals("a.csv") && !p.key().isEmpty());
        assertThat(problems)
                .extracting(Problem::key)
                .startsWith(
                        "function, cell B2",
                        "from, cell C3",
                        "to, cell D4",
                        "value, cell E5",
                        "unit, cell F6",
                        "arrangement, cell A7");
        assertThat(problems.get(0).nearest()).isEqualTo("d.c. volts");
        assertThat(problems.get(1).found()).contains("TP4");
        assertThat(problems.get(2).found()).contains("gnd");
        assertThat(problems.get(9).nearest()).isEqualTo("blown");
        assertThat(problems.get(12).nearest()).isEqualTo("F201");
        assertThat(problems.get(6).found()).contains("power on");
    }

    @Test
    void everyCellOfARowIsLookedAt() {
        List<Problem> problems = read("purple,dc,TP44,gdn,abc,V,guesswork,\npurple,lamp,E999,gnd,drak,,,\n")
                .problems();

        assertThat(problems)
                .extracting(p -> p.key().replaceFirst(",.*", ""))
                .containsExactly("arrangement", "from", "value", "meter", "arrangement", "from", "to", "value");
        assertThat(read("purple,dc,TP4,,abc,,,\n").problems()).hasSize(2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | nothing stands",
                "TP4,45 | first line",
                "function,from,valeu\\ndc,TP4,3 | valeu",
                "function,from,value,function\\ndc,TP4,3 | two columns",
                "function,from\\ndc,TP4 | 'value'",
                "function,from,value\\ndc,TP4,\"3 | quotation mark",
            })
    void aFileThatIsNoneOfReadingsSaysWhy(String text, String why) {
        ReadingsFile file = new ReadingsReader(FERRY).read("a.csv", text.replace("\\n", "\n"));

        assertThat(file.usable()).isFalse();
        assertThat(file.problems()).extracting(Problem::toString).anyMatch(p -> p.contains(why));
    }

    @Test
    void aFileThatIsNotThereNamesItsNeighbour(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("ferry.csv"), HEAD);

        Problem none = new ReadingsReader(FERRY)
                .read(folder.resolve("fery.csv"))
                .problems()
                .get(0);

        assertThat(none.nearest()).isEqualTo("ferry.csv");
        assertThat(new ReadingsReader(FERRY).read(folder).problems()).hasSize(1);
    }

    @Test
    void metersAreNamedByTheirBeginning() {
        assertThat(read(",dc,TP4,,1,V,average,\n,dc,TP5,,1,V,Average,\n").meters())
                .extracting(Meter::name)
                .hasSize(1)
                .allMatch(n -> n.startsWith("average"));
    }

    /** A unit that says otherwise than the function or the value is a slip of the sheet, and nobody can know which of both. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                ",dc,TP4,,24,V AC",
                ",ac,TP4,,24,Vdc",
                ",dc,TP4,,12.4V,mV",
                "power off,ohms,TP4,,3k98,Mohm",
            })
    void aUnitThatContradictsIsTold(String row) {
        List<Problem> problems = read(row + ",,\n").problems();

        assertThat(problems).extracting(Problem::key).containsExactly("unit, cell F2");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                ",dc,TP4,,24,V DC",
                ",ac,TP4,,24,V a.c.",
                ",dc,TP4,,240mV,mV",
                ",dc,TP4,,0.24,V",
                "power off,ohms,TP4,,3k98,Ω",
                "power off,ohms,TP4,,OL,Mohm",
            })
    void aUnitThatAgreesIsNot(String row) {
        assertThat(read(row + ",,\n").problems()).isEmpty();
    }
}
