package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Thousands of solves live on steps that make no garbage. Reference: the virtual machine's own count of allocated bytes. */
class StepAllocationTest {
    private static final PeriodicSettings MAINS = PeriodicSettings.mains(60);

    @Test
    void aCycleOfStepsAllocatesNothing() {
        assertThat(allocatedByACycle(false)).isZero();
    }

    @Test
    void norDoesOneThatCarriesSensitivities() {
        assertThat(allocatedByACycle(true)).isZero();
    }

    private static long allocatedByACycle(boolean carry) {
        PeriodicState known = Solve.periodic(Supplies.bridge(28, 20, 0));
        SampledRun.Restart from = Objects.requireNonNull(((SampledRun) known).restart);
        Stepper stepper = new Stepper(((SampledRun) known).reductions());
        PeriodMap map = new PeriodMap(stepper, MAINS, () -> false);
        System.arraycopy(from.x, 0, stepper.x, 0, from.x.length);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long least = Long.MAX_VALUE;
        // the first cycles make room, and the compiler may allocate on this thread's account
        for (int k = 0; k < 20; k++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            map.fixedCycle(from.mesh, carry);
            least = Math.min(least, threads.getCurrentThreadAllocatedBytes() - before);
        }
        return least;
    }
}
