package fusetale;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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

    /** As packed: other jars on the class path have a file of this name too. */
    private static String notice() throws IOException {
        return Files.readString(Path.of("target/classes/META-INF/NOTICE"));
    }
}
