package fusetale.sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fusetale.circuit.Circuit;
import fusetale.fault.AmountRange;
import fusetale.fault.Catalogue;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.FaultForm;
import fusetale.fault.OneOfEach;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SentenceTest {
    private static final Circuit BOARD = OneOfEach.circuit();
    private static final SentenceParser PARSER = new SentenceParser(BOARD);
    private static final SentencePrinter PRINTER = new SentencePrinter(BOARD);

    static Stream<Fault> everyFault() {
        return Catalogue.possible(BOARD).stream().flatMap(SentenceTest::amounts);
    }

    private static Stream<Fault> amounts(FaultForm form) {
        AmountRange range = form.amount();
        if (range == null) {
            return Stream.of(form.usual());
        }
        double middle = Math.sqrt(Math.max(range.lowSi(), 1e-3) * range.highSi());
        Stream<Fault> said = DoubleStream.of(range.lowSi(), middle, range.usualSi(), range.highSi())
                .mapToObj(si -> form.of(new Quantity(si, range.unit())));
        return Stream.concat(Stream.of(form.usual()), said);
    }

    @ParameterizedTest
    @MethodSource("everyFault")
    void everySentenceReadsBackAsItWasMeant(Fault fault) throws UnfitSupposition, SentenceException {
        Supposition supposition = new Supposition(List.of(fault));

        assertThat(PARSER.parse(PRINTER.sentence(supposition))).isEqualTo(supposition);
    }

    @ParameterizedTest
    @MethodSource("everyFault")
    void everyCompactFormReadsBackAsItWasMeant(Fault fault) throws SentenceException {
        Supposition supposition = new Supposition(List.of(fault));

        assertThat(PARSER.parse(SentencePrinter.compact(supposition))).isEqualTo(supposition);
    }

    @Test
    void amountThatIsMissingBehindItsColonIsAskedFor() {
        assertThatThrownBy(() -> PARSER.parse("C101=dried-out:"))
                .isInstanceOf(SentenceException.class)
                .hasMessageContaining("'dried-out:' ends before its amount");
    }

    @Test
    void manyFaultsReadBackInTheirOrder() throws UnfitSupposition, SentenceException {
        List<Fault> firstOfEach = Catalogue.designators(BOARD).stream()
                .map(name -> Catalogue.possible(BOARD, name).get(0).usual())
                .toList();
        Supposition many = new Supposition(firstOfEach);

        assertThat(PARSER.parse(PRINTER.sentence(many))).isEqualTo(many);
        assertThat(PARSER.parse(SentencePrinter.compact(many))).isEqualTo(many);
    }

    // the lines of the product's settled points and of its window, word for word
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "D1 is shorted | D1=short",
                "C101 is dried out to 40 % left | C101=dried-out:40%",
                "F201 holds a 25 A fuse | F201=wrong-rating:25A",
                "J3 pin 4 is burnt, 2 ohm | J3.4=burnt:2ohm",
                "Suppose BR201 leg 1 is shorted and F201 holds a 25 A fuse. | BR201.leg1=short F201=wrong-rating:25A",
                "d1 s | D1=short",
                "d1 is shorted, f201 holds a 25 A fuse | D1=short F201=wrong-rating:25A",
                "Q204 C to E shorted | Q204.ce=short",
                "Q204 base open | Q204.b=open",
                "Q204 C-E is shorted | Q204.ce=short",
                "leg 1 of BR201 is open | BR201.leg1=open",
                "winding sec of T1 has shorted turns | T1.sec=shorted-turns",
                "T1 sec open | T1.sec=open",
                "T1 primary is open | T1.primary=open",
                "R204 drifted x 1.5 | R204=drifted:x1.5",
                "R204 has drifted to × 1.5 of nominal | R204=drifted:x1.5",
                "F201 is blown | F201=blown",
                "F201 bridged | F201=short",
                "F201 loose, 0,5 ohm | F201=loose:500mohm",
                "J3-4 is burnt | J3.4=burnt",
                "J3 key is loose | J3.key=loose",
                "L208 end-of-stroke switch is stuck on | L208.switch=stuck-on",
                "L208 hold winding is open | L208.hold=open",
                "B501 is flat | B501=weak",
                "BR201 is turned by a quarter | BR201.quarter=reversed",
                "C101 high ESR 2 ohm | C101=high-esr:2ohm",
                "Q204 is leaky | Q204.ce=leaky",
                "E1 holds a 0.5 A bulb | E1=wrong-rating:500mA",
                "F201=wrong-rating: 25 A | F201=wrong-rating:25A",
                "D1=sh,F201=blo | D1=short F201=blown",
                "the mains is dead | mains=open",
                "mains=dead | mains=open",
                "D1 is shorted, the mains is low, 96 V | D1=short mains=low-line:96V",
                "mains are high | mains=high-line",
                "J3 pin 1 is swapped with pin 4 | J3.1=swapped",
                "J3.1 swapped with the next pin | J3.1=swapped",
                "L205 is partly open, 40 ohm | L205=partly-open:40ohm",
                "L208 hold winding is partly open | L208.hold=partly-open",
                "U501 check 1 has its input open | U501.check1=open",
                "U501 check 1 is open | U501.check1=open",
                "U501 is dead | U501=open",
                "U502 is stuck high | U502=stuck-on",
                "U502=stuck-low | U502=stuck-off",
                "T1 thermal cut-out is open | T1.cutout=open",
                "D3 has drifted to × 1.3 of nominal | D3=drifted:x1.3",
                "U101 gives low output, 80 % left | U101=weak:80%",
            })
    void lineMeansTheSameAsItsCompactForm(String line, String compact) throws SentenceException {
        assertThat(SentencePrinter.compact(PARSER.parse(line))).isEqualTo(compact);
    }

    @Test
    void sentenceIsWrittenAsThePagesWriteIt() throws UnfitSupposition, SentenceException {
        Supposition supposition = PARSER.parse("BR201.leg1=short F201=wrong-rating:25A");

        assertThat(PRINTER.sentence(supposition))
                .isEqualTo("Suppose BR201 leg 1 is shorted and F201 holds a 25 A fuse.");
    }

    @Test
    void mainsTakeTheirArticle() throws UnfitSupposition {
        Fault low = new Fault("mains", "", FailureMode.LOW_LINE, new Quantity(96, Unit.VOLT));

        assertThat(PRINTER.sentence(new Supposition(List.of(low)))).isEqualTo("Suppose the mains is low, 96 V.");
    }

    @Test
    void burntPinIsWrittenAsThePagesWriteIt() throws UnfitSupposition {
        Fault burnt = new Fault("J3", "4", FailureMode.BURNT, new Quantity(2, Unit.OHM));

        assertThat(PRINTER.clause(burnt)).isEqualTo("J3 pin 4 is burnt, 2 ohm");
    }

    @Test
    void linesOfACommandLineHoldTogether() throws SentenceException {
        Supposition supposition = PARSER.parse(List.of("BR201.leg1=short", "F201 holds a 25 A fuse"));

        assertThat(SentencePrinter.compact(supposition)).isEqualTo("BR201.leg1=short F201=wrong-rating:25A");
    }

    @Test
    void supposingNothingIsHealthy() throws SentenceException, UnfitSupposition {
        assertThat(PARSER.parse(PRINTER.sentence(Supposition.NOTHING))).isEqualTo(Supposition.NOTHING);
    }

    @Test
    void unknownPartIsToldWithTheNearest() {
        SentenceException refused = refused("BR210 leg 1 is shorted");

        assertThat(refused).hasMessageStartingWith("'BR210' is no part of One Of Each; nearest: 'BR201'. Allowed: T1,");
        assertThat(refused.nearest()).contains("BR201");
    }

    @Test
    void unknownPlaceIsToldWithThePlacesThereAre() {
        assertThat(refused("BR201 leg 5 is shorted"))
                .hasMessageContaining("BR201 has no 'leg 5'; nearest: 'leg 1'. Allowed: leg 1, leg 2, leg 3, leg 4");
    }

    @Test
    void unknownPlaceOfACompactFormIsTold() {
        assertThat(refused("BR201.leg5=short")).hasMessageContaining("BR201 has no 'leg5'; nearest: 'leg 1'");
    }

    @Test
    void unknownFailureIsToldWithTheNearest() {
        assertThat(refused("R204=opne"))
                .hasMessage("'opne' is nothing that R204 can be; nearest: 'open'. Allowed: open, drifted, short,"
                        + " cracked-joint, a value such as 4k7 or 4k7:5W");
    }

    @Test
    void beginningOfTwoFailuresIsNotEnough() {
        assertThat(refused("F201 b"))
                .hasMessage("'b' on F201 could be several. Allowed: F201=blown, F201=short, F201=burnt");
    }

    @Test
    void failureOfSeveralPlacesAsksWhere() {
        assertThat(refused("Q204 is shorted")).hasMessageContaining("Q204.ce=short, Q204.be=short, Q204.cb=short");
    }

    @Test
    void partAloneAsksWhatOfIt() {
        assertThat(refused("D1")).hasMessage("say what D1 does wrong. Allowed: short, open, leaky, reversed");
    }

    @Test
    void amountWithoutAUnitIsRefused() {
        assertThat(refused("J3.4=burnt:2")).hasMessageContaining("J3.4=burnt").hasMessageContaining("2 ohm");
    }

    @Test
    void amountOfAFailureWithoutOneIsRefused() {
        assertThat(refused("F201 is blown 5 A")).hasMessage("F201=blown takes no amount, not '5 A'");
    }

    @Test
    void amountOutOfBoundsIsRefusedWithTheBounds() {
        assertThat(refused("C101 is dried out to 140 % left"))
                .hasMessage("C101=dried-out says what there is now: 1 % to 99 %, not × 1.4");
    }

    @Test
    void contradictionIsRefused() {
        assertThatThrownBy(() -> PARSER.parse("D1 is shorted and D1 is open"))
                .isInstanceOf(SentenceException.class)
                .hasMessage("D1 is shorted and D1 is open contradict each other; keep one of them");
    }

    private static SentenceException refused(String line) {
        return catchThrowableOfType(SentenceException.class, () -> PARSER.parse(line));
    }
}
