package fusetale.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class OutletTest {
    /** What Linux says on writing to /dev/full: errno(3), ENOSPC. */
    @Test
    void answerLostOnAFullDiskIsTold() {
        Outlet outlet = failing("No space left on device");

        print(outlet);

        assertThat(outlet.loss()).contains("No space left on device");
    }

    /** A reader such as head, which has seen enough: errno(3), EPIPE. */
    @Test
    void readerThatHasGoneAwayIsNoLoss() {
        Outlet outlet = failing("Broken pipe");

        print(outlet);

        assertThat(outlet.loss()).isEmpty();
    }

    @Test
    void writtenAnswerArrivesWhole() {
        ByteArrayOutputStream end = new ByteArrayOutputStream();
        Outlet outlet = new Outlet(end);

        print(outlet);

        assertThat(end.toString(StandardCharsets.UTF_8)).isEqualTo("47 \u03A9");
        assertThat(outlet.loss()).isEmpty();
    }

    private static void print(Outlet outlet) {
        PrintWriter out = new PrintWriter(outlet, false, StandardCharsets.UTF_8);
        out.print("47 \u03A9");
        out.flush();
    }

    private static Outlet failing(String why) {
        return new Outlet(new OutputStream() {
            @Override
            public void write(int one) throws IOException {
                throw new IOException(why);
            }
        });
    }
}
