package fusetale.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is told of each failure, on the board with one part of every kind. */
class TellingTest {
    static Stream<FaultForm> everyFailure() {
        return Catalogue.possible(OneOfEach.circuit()).stream();
    }

    private static Properties texts() throws IOException {
        Properties texts = new Properties();
        try (InputStream in = Catalogue.class.getResourceAsStream("/fusetale/fault/words.properties")) {
            texts.load(new InputStreamReader(Objects.requireNonNull(in), StandardCharsets.UTF_8));
        }
        return texts;
    }

    @ParameterizedTest
    @MethodSource("everyFailure")
    void everyFailureSaysWhatHappenedHowToMakeSureAndWhereItsPriorIsFrom(FaultForm form) {
        assertThat(List.of(
                        form.telling().happened(),
                        form.telling().confirmation(),
                        form.prior().source()))
                .allSatisfy(text -> assertThat(text).isNotBlank());
    }

    /** A text that no failure uses is one that somebody looks for in vain, or a misspelt key. */
    @Test
    void everyTextIsToldBySomeFailure() throws IOException {
        Set<String> used = new HashSet<>(Set.of("prior", Prior.JUDGEMENT));
        everyFailure().forEach(form -> {
            used.add(form.telling().key() + ".happened");
            used.add(form.telling().key() + ".confirm");
            used.add(form.prior().rateKey());
            used.add(form.prior().shareKey());
        });

        assertThat(new TreeSet<>(texts().stringPropertyNames())).isEqualTo(new TreeSet<>(used));
    }

    /** A shorted electrolytic is confirmed otherwise than a shorted transistor. */
    @Test
    void noTwoFailuresShareAText() throws IOException {
        Map<String, String> keyOf = new HashMap<>();
        Properties texts = texts();
        for (String key : new TreeSet<>(texts.stringPropertyNames())) {
            if (key.endsWith(".happened") || key.endsWith(".confirm")) {
                assertThat(keyOf.put(texts.getProperty(key), key)).as(key).isNull();
            }
        }

        assertThat(keyOf).hasSizeGreaterThan(200);
    }

    /** Ohms and diode test want the power off: who is told to use them is told so. */
    @Test
    void ohmsAndDiodeTestAreAskedForWithThePlugOut() throws IOException {
        Properties texts = texts();
        List<String> confirmations = texts.stringPropertyNames().stream()
                .filter(key -> key.endsWith(".confirm"))
                .map(texts::getProperty)
                .filter(text -> text.toLowerCase(java.util.Locale.ROOT)
                        .matches(".*\\b(ohms (across|over|at|from|along|beside|the)|diode test)\\b.*"))
                .toList();

        assertThat(confirmations)
                .hasSizeGreaterThan(60)
                .allSatisfy(text -> assertThat(text).containsPattern("(?i)plug out|taken? (it )?out|battery out"));
    }

    @Test
    void handbookShareSaysItsHandbook() {
        FaultForm shorted = Catalogue.possible(OneOfEach.circuit(), "D1").get(0);

        // MIL-HDBK-217F Notice 2, power rectifier 0.022 times 8 for commercial quality; the row's share is FMD-91's
        // 0.51
        assertThat(shorted.prior().source())
                .startsWith("0.18 failures in a million hours (MIL-HDBK-217F N2, power rectifier")
                .contains("× 0.51 (FMD-91");
    }

    @Test
    void whatHandsDoIsJudgementThroughout() {
        FaultForm reversed = Catalogue.possible(OneOfEach.circuit(), "D1").get(3);

        assertThat(reversed.prior().source()).contains("(judgement: what hands do wrong) × 1 (judgement)");
    }
}
