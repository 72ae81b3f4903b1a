package fusetale;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Whoever gets the jar finds in it under which licences its libraries and typefaces stand. */
class NoticeTest {
    /** A dependency of the program itself, one a line in the pom. */
    private static final Pattern SHIPPED =
            Pattern.compile("(?m)^    <dependency>.*?<artifactId>([^<]+)</artifactId>(?!.*<scope>test).*$");

    @Test
    void everyLibraryAndTypefaceIsNamed() throws IOException {
        String pom = Files.readString(Path.of("pom.xml"));
        List<String> libraries = SHIPPED.matcher(pom)
                .results()
                .map((MatchResult m) -> m.group(1))
                .toList();

        assertThat(libraries).hasSizeGreaterThan(8).contains("pdfbox", "jfreechart", "javafx-controls");
        assertThat(notice()).contains(libraries).contains("Atkinson Hyperlegible Next", "Barlow Semi Condensed");
    }

    private static String notice() {
        try (InputStream in = NoticeTest.class.getResourceAsStream("/META-INF/NOTICE")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
