package fusetale.desk.preferences;

import java.io.IOException;
import java.nio.charset.Charset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Whether the system is set to dark windows. JavaFX asks that from version 22 on; until then the command is asked that each system
 * brings for it: the registry's value {@code AppsUseLightTheme}, the user default {@code AppleInterfaceStyle}, and the key
 * {@code color-scheme} of desktops that follow the freedesktop.org appearance setting. Where there is no answer it is light.
 */
public final class SystemLight {
    private static final long PATIENCE_SECONDS = 3;

    /**
     * How one system is asked.
     *
     * @param command what is run
     * @param dark what its answer holds where windows are dark
     */
    private record Ask(List<String> command, Pattern dark) {}

    private static final Ask WINDOWS = new Ask(
            List.of(
                    "reg",
                    "query",
                    "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize",
                    "/v",
                    "AppsUseLightTheme"),
            Pattern.compile("AppsUseLightTheme\\s+REG_DWORD\\s+0x0\\b"));
    private static final Ask MAC =
            new Ask(List.of("defaults", "read", "-g", "AppleInterfaceStyle"), Pattern.compile("\\bDark\\b"));
    private static final Ask FREEDESKTOP = new Ask(
            List.of("gsettings", "get", "org.gnome.desktop.interface", "color-scheme"),
            Pattern.compile("'prefer-dark'"));

    private SystemLight() {}

    /** Whether it is dark; may take as long as another program takes to start. */
    public static boolean isDark() {
        return isDark(System.getProperty("os.name", ""), SystemLight::answer);
    }

    /**
     * The same of a system by its name.
     *
     * @param system as Java's {@code os.name} has it
     * @param answer what a command writes; empty where it cannot be run
     */
    static boolean isDark(String system, Function<List<String>, Optional<String>> answer) {
        String name = system.toLowerCase(Locale.ROOT);
        Ask ask = name.startsWith("windows") ? WINDOWS : name.startsWith("mac") ? MAC : FREEDESKTOP;
        return answer.apply(ask.command())
                .filter(a -> ask.dark().matcher(a).find())
                .isPresent();
    }

    /** What a command writes; empty where there is none of that name, where it fails, and where it does not end in time. */
    static Optional<String> answer(List<String> command) {
        try {
            Process asked = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            asked.getOutputStream().close();
            if (!asked.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                asked.destroyForcibly();
                return Optional.empty();
            }
            String written = new String(asked.getInputStream().readAllBytes(), Charset.defaultCharset());
            return asked.exitValue() == 0 ? Optional.of(written) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }
}
