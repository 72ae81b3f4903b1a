package fusetale.explore;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/**
 * The texts of one package, kept in its resource bundle {@code words.properties}. {@code report} and {@code cli} read theirs
 * through this too.
 */
public final class Words {
    private final ResourceBundle bundle;

    private Words(ResourceBundle bundle) {
        this.bundle = bundle;
    }

    /**
     * The texts of the package that {@code home} stands in.
     *
     * @throws MissingResourceException where the package has no {@code words.properties}
     */
    public static Words of(Class<?> home) {
        return new Words(ResourceBundle.getBundle(home.getPackageName() + ".words", Locale.ROOT));
    }

    /**
     * The text of a key with {@code %s} and its like filled in, as {@link String#format} does.
     *
     * @throws MissingResourceException where there is no such key
     */
    public String say(String key, Object... values) {
        return String.format(Locale.ROOT, bundle.getString(key), values);
    }

    /** The bundle itself, for libraries that look texts up by themselves. */
    public ResourceBundle bundle() {
        return bundle;
    }
}
