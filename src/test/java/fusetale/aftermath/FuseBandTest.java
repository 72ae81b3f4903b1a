package fusetale.aftermath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.FuseLink;
import fusetale.circuit.FuseLink.Speed;
import fusetale.circuit.FuseLink.Standard;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;

class FuseBandTest {
    private static final double RELATIVE = 1e-9;

    @ParameterizedTest
    @CsvFileSource(files = "shared/reference/fuse-gates.csv", useHeadersInDisplayName = true)
    void everyGateOfTheStandardsIsKept(
            Standard standard,
            Speed speed,
            double ratedAmps,
            double multiple,
            @Nullable Double minSeconds,
            @Nullable Double maxSeconds,
            String source) {
        Melting melting = band(standard, speed, ratedAmps).melting(multiple * ratedAmps);

        assertThat(source).isNotBlank();
        if (minSeconds != null) {
            assertNear(melting.minSeconds(), minSeconds);
        }
        if (maxSeconds != null) {
            assertNear(melting.maxSeconds(), maxSeconds);
        }
    }

    static Stream<Arguments> everyFamily() {
        return Stream.of(Standard.values())
                .flatMap(standard -> Stream.of(Speed.values())
                        .flatMap(speed -> Stream.of(0.05, 0.2, 1.0, 5.0, 10.0, 25.0, 40.0)
                                .map(amps -> Arguments.of(standard, speed, amps))));
    }

    @ParameterizedTest
    @MethodSource("everyFamily")
    void moreCurrentNeverMeltsLater(Standard standard, Speed speed, double ratedAmps) {
        FuseBand band = band(standard, speed, ratedAmps);
        Melting last = band.melting(0);
        for (double multiple = 0; multiple < 100; multiple += 0.01) {
            Melting next = band.melting(multiple * ratedAmps);
            assertThat(next.minSeconds()).isLessThanOrEqualTo(last.minSeconds());
            assertThat(next.maxSeconds()).isLessThanOrEqualTo(last.maxSeconds());
            last = next;
        }
    }

    @ParameterizedTest
    @MethodSource("everyFamily")
    void bandLiesWithinWhatTheGatesAlonePromise(Standard standard, Speed speed, double ratedAmps) {
        FuseBand band = band(standard, speed, ratedAmps);
        for (double multiple = 0; multiple < 100; multiple += 0.01) {
            Melting read = band.melting(multiple * ratedAmps);
            Melting promised = band.promised(multiple * ratedAmps);
            assertThat(promised.minSeconds()).isLessThanOrEqualTo(read.minSeconds());
            assertThat(promised.maxSeconds()).isGreaterThanOrEqualTo(read.maxSeconds());
        }
    }

    @Test
    void linkHoldsItsRatingForEver() {
        assertThat(band(Standard.IEC_60127, Speed.SLOW, 5).melting(5).surelyHolds())
                .isTrue();
    }

    @Test
    void ulLinkMayHoldAQuarterMoreThanItsRatingForEver() {
        // UL/CSA 248-14 asks for nothing between 100 % and 135 %
        Melting melting = band(Standard.UL_248_14, Speed.QUICK, 5).melting(1.25 * 5);

        assertThat(melting.mayHold()).isTrue();
        assertThat(melting.surelyHolds()).isFalse();
    }

    @Test
    void iecFiveAmpsIsNotUlFiveAmps() {
        // an IEC link carries 150 % for an hour; a UL link has melted at 135 % within one
        double amps = 1.5 * 5;

        assertThat(band(Standard.IEC_60127, Speed.QUICK, 5).melting(amps).minSeconds())
                .isGreaterThanOrEqualTo(3600);
        assertThat(band(Standard.UL_248_14, Speed.QUICK, 5).melting(amps).maxSeconds())
                .isLessThan(3600);
    }

    @Test
    void sixAmpTimeLagLinkBehindAShortedBridgeLegMeltsBetweenItsGates() {
        // 47.11 A r.m.s. through a 6 A time-lag link is 785 %: between the 400 % gate (0.15 to 3 s) and the 1000 % gate
        // (20 to 300 ms) of IEC 60127-2 sheet 3
        Melting melting = band(Standard.IEC_60127, Speed.SLOW, 6).melting(47.11);

        assertThat(melting.minSeconds()).isBetween(0.020, 0.150);
        assertThat(melting.maxSeconds()).isBetween(0.3, 3.0);
    }

    @Test
    void twentyFiveAmpLinkBehindAShortedBridgeLegIsPromisedToMeltOnlyWithinAnHour() {
        // 47.11 A is 188 % of 25 A: of the UL gates only that of 135 % has been passed
        Melting promised = band(Standard.UL_248_14, Speed.SLOW, 25).promised(47.11);

        assertThat(promised.maxSeconds()).isEqualTo(3600);
    }

    @Test
    void twentyFiveAmpLinkBehindAShortedBridgeLegHoldsForManySeconds() {
        Melting melting = band(Standard.UL_248_14, Speed.SLOW, 25).melting(47.11);

        // it must hold twice its rating for 12 s (UL/CSA 248-14, time-delay above 3 A)
        assertThat(melting.minSeconds()).isGreaterThan(12);
    }

    @Test
    void beyondTheLastGateTheLongestTimeKeepsItsMeltingIntegral() {
        FuseBand band = band(Standard.IEC_60127, Speed.SLOW, 5);

        // adiabatic heating: t = I²t/I², so twice the current takes a quarter of the time
        assertNear(band.melting(200).maxSeconds(), band.melting(100).maxSeconds() / 4);
    }

    @Test
    void fiveAmpTimeLagLinkCoversItsPublishedMeltingIntegral() {
        // maker's table of 5 × 20 mm time-lag links, 5 A: 314 A²s; at 200 A that is 7.85 ms, short enough to be
        // adiabatic
        Melting melting = band(Standard.IEC_60127, Speed.SLOW, 5).melting(200);

        assertThat(314.0 / (200 * 200)).isBetween(melting.minSeconds(), melting.maxSeconds());
    }

    @ParameterizedTest
    @CsvFileSource(files = "shared/reference/ul-time-delay-melting.csv", useHeadersInDisplayName = true)
    void ulTimeDelayLinksCoverTheirPublishedMeltingIntegrals(
            double ratedAmps, double ampsSquaredSeconds, String source) {
        double amps = 40 * ratedAmps;

        Melting melting = band(Standard.UL_248_14, Speed.SLOW, ratedAmps).melting(amps);

        assertThat(source).isNotBlank();
        assertThat(ampsSquaredSeconds / (amps * amps)).isBetween(melting.minSeconds(), melting.maxSeconds());
    }

    @Test
    void standardThatAsksForLessGivesAWiderBand() {
        Melting ul = band(Standard.UL_248_14, Speed.QUICK, 5).melting(4 * 5);
        Melting iec = band(Standard.IEC_60127, Speed.QUICK, 5).melting(4 * 5);

        assertThat(ul.maxSeconds() / ul.minSeconds()).isGreaterThan(iec.maxSeconds() / iec.minSeconds());
    }

    @Test
    void ratingBeyondTheStandardSaysSo() {
        assertThat(band(Standard.IEC_60127, Speed.SLOW, 25).assumptions()).anyMatch(a -> a.contains("above 16"));
    }

    @Test
    void currentThatIsNoCurrentIsRefused() {
        FuseBand band = band(Standard.UL_248_14, Speed.QUICK, 5);

        assertThatThrownBy(() -> band.melting(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    private static void assertNear(double actual, double expected) {
        if (Double.isInfinite(expected)) {
            assertThat(actual).isEqualTo(expected);
        } else {
            assertThat(actual).isCloseTo(expected, within(RELATIVE * expected));
        }
    }

    private static FuseBand band(Standard standard, Speed speed, double amps) {
        return FuseBand.of(
                new FuseLink(new Quantity(amps, Unit.AMPERE), speed, standard, "6.3x32", new Quantity(0.02, Unit.OHM)));
    }
}
