package fusetale.desk.sheet;

import java.util.List;

/** Something that puts pages on paper. */
public interface Printing {
    /** What became of it. */
    enum Result {
        /** The pages are on their way to the printer. */
        SENT,
        /** There is no printer. */
        NO_PRINTER,
        /** Somebody chose not to. */
        GIVEN_UP,
        /** The printer refused. */
        REFUSED
    }

    /** Prints pages, in their order. */
    Result print(List<SheetPage> pages, String title);
}
