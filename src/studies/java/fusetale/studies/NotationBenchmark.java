package fusetale.studies;

import fusetale.quantity.Notation;
import fusetale.quantity.NotationException;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time to read one value of a circuit file, and to print it. A large circuit has a thousand of them. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class NotationBenchmark {
    /** What is read. */
    @Param({"4k7", "0.47 ohm", "10 000 ohm"})
    public String text = "";

    private Quantity value = new Quantity(0, Unit.OHM);

    /** Reads the value that is printed. */
    @Setup
    public void read() throws NotationException {
        value = Notation.parse(text, Unit.OHM);
    }

    /** Text to value. */
    @Benchmark
    public Quantity parse() throws NotationException {
        return Notation.parse(text, Unit.OHM);
    }

    /** Value to text. */
    @Benchmark
    public String format() {
        return Notation.format(value);
    }
}
