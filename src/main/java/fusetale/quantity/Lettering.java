package fusetale.quantity;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** One form for the many ways in which signs, spaces, ohms and prefixes are typed. */
final class Lettering {
    private static final String PREFIX_LETTERS = "fpnumkMGT";
    private static final int[] PREFIX_EXPONENTS = {-15, -12, -9, -6, -3, 3, 6, 9, 12};

    private Lettering() {}

    /**
     * The text with plain spaces, {@code -} for the minus sign, {@code u} for micro (U+00B5 and U+03BC), {@code ohm} for
     * the omega (U+03A9 and U+2126), {@code ..} for an ellipsis, and neither leading nor trailing space.
     */
    static String plain(String text) {
        StringBuilder plain = new StringBuilder(text.length() + 8);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
                plain.append(' ');
            } else {
                switch (c) {
                    case '\u2212' -> plain.append('-');
                    case '\u00b5', '\u03bc' -> plain.append('u');
                    case '\u03a9', '\u2126' -> plain.append("ohm");
                    case '\u2026' -> plain.append("..");
                    default -> plain.append(c);
                }
            }
        }
        return plain.toString().strip();
    }

    /** A prefix or code letter in the case it is known by: schematics lettered in capitals have {@code K} and {@code U}. */
    static String letter(String typed) {
        return typed.equals("K") || typed.equals("U") ? typed.toLowerCase(Locale.ROOT) : typed;
    }

    /**
     * The power of ten of a prefix: 3 for {@code k}.
     *
     * @param prefix as typed; empty for none
     * @param allowed the letters that are taken
     * @return null where it is no prefix or not among {@code allowed}
     */
    static @Nullable Integer prefixExponent(String prefix, String allowed) {
        if (prefix.isEmpty()) {
            return 0;
        }
        String letter = letter(prefix);
        return letter.length() == 1 && allowed.contains(letter) ? Integer.valueOf(exponent(letter)) : null;
    }

    /** The power of ten of a prefix letter; 0 for none and for a letter that is none, as the R of 4R7. */
    static int exponent(String letter) {
        int index = letter.isEmpty() ? -1 : PREFIX_LETTERS.indexOf(letter);
        return index < 0 ? 0 : PREFIX_EXPONENTS[index];
    }

    /** Whether the text is one prefix letter of any unit. */
    static boolean isPrefix(String text) {
        return text.length() == 1 && PREFIX_LETTERS.contains(letter(text));
    }

    /** The letter in place of the decimal point: 4.7 and R give 4R7. */
    static String coded(String digits, char letter) {
        return digits.contains(".") ? digits.replace('.', letter) : digits + letter;
    }
}
