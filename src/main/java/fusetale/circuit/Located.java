package fusetale.circuit;

import java.util.List;

/** A value of a file together with the place it stands at: a text, a row of values, or a table of keys and values. */
sealed interface Located {
    Place place();

    /** What stands here, for a message: {@code a list}. */
    String what();

    /**
     * A single value.
     *
     * @param text what it says
     * @param written the same as written in the file, before parameters of a block were filled in
     * @param place where it stands
     */
    record Text(String text, String written, Place place) implements Located {
        static Text of(String text, Place place) {
            return new Text(text, text, place);
        }

        /** Nothing at all, or one of YAML's words for it (YAML 1.2.2, section 10.2.1.1). */
        boolean isNothing() {
            return text.isBlank() || "null".equals(text) || "~".equals(text);
        }

        @Override
        public String what() {
            return isNothing() ? "nothing" : "'" + shortened(text) + "'";
        }

        /** As written in the file, for a message. */
        String shown() {
            return shortened(written);
        }

        private static String shortened(String text) {
            String start = text.substring(0, Math.min(text.length(), 200));
            String oneLine = start.replaceAll("\\s+", " ").strip();
            return oneLine.length() <= 60 ? oneLine : oneLine.substring(0, 57) + "...";
        }
    }

    /** Values in order. */
    record Row(List<Located> items, Place place) implements Located {
        public Row {
            items = List.copyOf(items);
        }

        @Override
        public String what() {
            return "a list";
        }
    }

    /** Keys with their values, in the order of the file; no key twice. */
    record Table(List<Entry> entries, Place place) implements Located {
        public Table {
            entries = List.copyOf(entries);
        }

        @Override
        public String what() {
            return "a table of keys";
        }
    }

    /** One line of a table. */
    record Entry(Text key, Located value) {}
}
