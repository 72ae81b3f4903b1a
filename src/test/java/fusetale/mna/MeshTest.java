package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Whatever is done to a mesh, its steps still fill the same time: arithmetic of powers of two. */
class MeshTest {
    private static final Mesh MESH = Mesh.of(new int[] {3, 1, 1, 2, 4}, 5);

    private static long grains(Mesh mesh) {
        return IntStream.range(0, mesh.size())
                .mapToLong(k -> 1L << mesh.level(k))
                .sum();
    }

    private static int[] levels(Mesh mesh) {
        return IntStream.range(0, mesh.size()).map(mesh::level).toArray();
    }

    @Test
    void halvingOneStepLeavesTheOthers() {
        assertThat(levels(MESH.halved(3))).containsExactly(3, 1, 1, 1, 1, 4);
        assertThat(grains(MESH.halved(3))).isEqualTo(grains(MESH));
    }

    @Test
    void halvingAllLeavesOnlyGrainsWhole() {
        assertThat(levels(Mesh.of(new int[] {0, 0, 1, 2}, 4).halved())).containsExactly(0, 0, 0, 0, 1, 1);
        assertThat(grains(MESH.halved())).isEqualTo(grains(MESH));
    }

    @Test
    void longStepsAreCutAndShortOnesStay() {
        assertThat(levels(MESH.atMost(2))).containsExactly(2, 2, 1, 1, 2, 2, 2, 2, 2);
        assertThat(grains(MESH.atMost(2))).isEqualTo(grains(MESH));
    }

    @Test
    void pairsOfStepsArePutTogetherWhereTheyMakeOne() {
        assertThat(levels(MESH.coarser())).containsExactly(3, 2, 2, 4);
        assertThat(grains(MESH.coarser())).isEqualTo(grains(MESH));
        // 2 + 4 + 4: the two longer ones do not start where a step of eight may
        assertThat(levels(Mesh.of(new int[] {1, 2, 2, 1}, 4).coarser())).containsExactly(1, 2, 2, 1);
    }

    @Test
    void stepsThatAreShortEnoughAreTheSameMesh() {
        assertThat(MESH.atMost(4)).isSameAs(MESH);
    }

    @Test
    void moreStepsAreTakenFromANeighbourToo() {
        PeriodicState near = Solve.periodic(Supplies.transformer(120, 20));
        PeriodicSettings fine = PeriodicSettings.mains(60).withFewestSteps(1024);
        PeriodicState warm =
                Solve.found(new Solver(Supplies.transformer(120, 20)).periodicState(fine, near, () -> false));
        // two stages a step
        assertThat(warm.volts(1, 0).size()).isGreaterThanOrEqualTo(2 * 1024);
    }
}
