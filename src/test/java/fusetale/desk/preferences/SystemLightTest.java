package fusetale.desk.preferences;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the commands of three systems write where windows are dark, and where they are not: from memory of running them. */
class SystemLightTest {
    private static final String REGISTRY =
            "\r\nHKEY_CURRENT_USER\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize\r\n"
                    + "    AppsUseLightTheme    REG_DWORD    ";

    private static boolean dark(String system, String program, String written) {
        return SystemLight.isDark(
                system, command -> command.get(0).equals(program) ? Optional.of(written) : Optional.empty());
    }

    @Test
    void eachSystemIsAskedByItsOwnCommand() {
        assertThat(dark("Windows 11", "reg", REGISTRY + "0x0\r\n\r\n")).isTrue();
        assertThat(dark("Windows 11", "reg", REGISTRY + "0x1\r\n\r\n")).isFalse();
        assertThat(dark("Mac OS X", "defaults", "Dark\n")).isTrue();
        assertThat(dark("Mac OS X", "defaults", "Light\n")).isFalse();
        assertThat(dark("Linux", "gsettings", "'prefer-dark'\n")).isTrue();
        assertThat(dark("Linux", "gsettings", "'default'\n")).isFalse();
    }

    @Test
    void whereThereIsNoAnswerItIsLight() {
        assertThat(SystemLight.isDark("Linux", command -> Optional.empty())).isFalse();
    }

    @Test
    void whatACommandWritesIsRead() {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        assertThat(SystemLight.answer(List.of(java, "--version")))
                .hasValueSatisfying(v -> assertThat(v).isNotBlank());
        assertThat(SystemLight.answer(List.of(java, "--no-such-option"))).isEmpty();
        assertThat(SystemLight.answer(List.of("no-such-program-anywhere"))).isEmpty();
    }
}
