package fusetale.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/** Where answers leave the program; remembers what went wrong, which a print writer swallows. */
final class Outlet extends OutputStream {
    private final OutputStream to;
    private String failure = "";

    Outlet(OutputStream to) {
        this.to = to;
    }

    @Override
    public void write(int one) throws IOException {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int start, int count) throws IOException {
        try {
            to.write(bytes, start, count);
        } catch (IOException e) {
            failure = String.valueOf(e.getMessage());
            throw e;
        }
    }

    @Override
    public void flush() throws IOException {
        to.flush();
    }

    /** Why an answer is lost, in the system's words; nothing where a reader has gone away, as {@code head} does. */
    Optional<String> loss() {
        boolean gone = failure.toLowerCase(Locale.ROOT).contains("pipe");
        return failure.isEmpty() || gone ? Optional.empty() : Optional.of(failure);
    }
}
