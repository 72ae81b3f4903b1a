package fusetale.fault;

import java.util.Locale;
import java.util.ResourceBundle;

/** The texts of this package, kept in its resource bundle {@code words.properties}. */
final class Texts {
    private static final ResourceBundle BUNDLE =
            ResourceBundle.getBundle(Texts.class.getPackageName() + ".words", Locale.ROOT);

    private Texts() {}

    /**
     * The text of a key, {@code %s} filled in where there are values.
     *
     * @throws java.util.MissingResourceException where there is no such key
     */
    static String say(String key, Object... values) {
        String text = BUNDLE.getString(key);
        return values.length == 0 ? text : String.format(Locale.ROOT, text, values);
    }

    /** The first of some keys that has a text with this ending; the last where none has. */
    static String first(String ending, String... keys) {
        for (String key : keys) {
            if (BUNDLE.containsKey(key + ending)) {
                return key;
            }
        }
        return keys[keys.length - 1];
    }

    /** A kind as keys write it: {@code dual-coil}. */
    static String key(String kind) {
        return kind.replace(' ', '-');
    }
}
