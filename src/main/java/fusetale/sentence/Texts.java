package fusetale.sentence;

import java.util.Locale;
import java.util.ResourceBundle;

/** The texts of this package, kept in its resource bundle {@code words.properties}. */
final class Texts {
    private static final ResourceBundle BUNDLE =
            ResourceBundle.getBundle(Texts.class.getPackageName() + ".words", Locale.ROOT);

    private Texts() {}

    /**
     * The text of a key, {@code %s} filled in.
     *
     * @throws java.util.MissingResourceException where there is no such key
     */
    static String say(String key, Object... values) {
        return String.format(Locale.ROOT, BUNDLE.getString(key), values);
    }
}
