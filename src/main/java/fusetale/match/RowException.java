package fusetale.match;

/** A cell that cannot be understood. */
final class RowException extends Exception {
    private static final long serialVersionUID = 1;

    private final Column column;
    private final String allowed;
    private final String nearest;

    RowException(Column column, String found, String allowed, String nearest) {
        super(found);
        this.column = column;
        this.allowed = allowed;
        this.nearest = nearest;
    }

    RowException(Column column, String found) {
        this(column, found, "", "");
    }

    Column column() {
        return column;
    }

    /** What stands there, as a clause. */
    String found() {
        return String.valueOf(getMessage());
    }

    String allowed() {
        return allowed;
    }

    String nearest() {
        return nearest;
    }
}
