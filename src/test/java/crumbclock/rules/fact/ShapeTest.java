package crumbclock.rules.fact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShapeTest {

    @ParameterizedTest
    @CsvSource({"100, 0, 0, true", "99, 0, 0, false", "100, 0, 1, false", "101, 0, 1, true", "0, 100, 0, true",
        "103, 104, 5, true", "103, 104, 6, false", "102, 104, 5, false", "100, 100, 0, true", "99, 100, 0, true"})
    void should_measure_between_rectangles(int xMm, int yMm, int gapMm, boolean apart) {
        assertThat(box(0, 0, 100, 100).isApartFrom(box(xMm, yMm, 50, 50), gapMm)).isEqualTo(apart);
        assertThat(box(xMm, yMm, 50, 50).isApartFrom(box(0, 0, 100, 100), gapMm)).isEqualTo(apart);
    }

    @ParameterizedTest
    @CsvSource({"30, 40, 0, true", "30, 39, 0, false", "29, 40, 0, false", "60, 80, 50, true", "60, 79, 50, false"})
    void should_measure_between_circles(int xMm, int yMm, int gapMm, boolean apart) {
        // 50 mm across each: they touch when their centres are 50 apart, by the triangle 30, 40, 50
        assertThat(circle(0, 0, 50).isApartFrom(circle(xMm, yMm, 50), gapMm)).isEqualTo(apart);
    }

    @ParameterizedTest
    @CsvSource({"103, 104, 0, true", "102, 104, 0, false", "103, 103, 0, false", "100, 0, 0, false", "105, 0, 0, true",
        "106, 108, 5, true", "106, 107, 5, false", "50, 50, 0, false"})
    void should_measure_between_circle_and_rectangle(int centreX, int centreY, int gapMm, boolean apart) {
        // radius 5: it touches the corner (100, 100) when 3 right and 4 up of it
        Shape circle = circle(centreX - 5, centreY - 5, 10);
        assertThat(circle.isApartFrom(box(0, 0, 100, 100), gapMm)).isEqualTo(apart);
        assertThat(box(0, 0, 100, 100).isApartFrom(circle, gapMm)).isEqualTo(apart);
    }

    @Test
    void should_place_centres_on_half_millimetres() {
        assertThat(circle(0, 0, 5).isApartFrom(circle(5, 0, 4), 0)).isTrue();
        assertThat(circle(0, 0, 5).isApartFrom(circle(4, 0, 5), 0)).isFalse();
    }

    @Test
    void should_survive_positions_that_are_nonsense() {
        assertThat(box(Integer.MIN_VALUE, 0, 10, 10).isApartFrom(box(Integer.MAX_VALUE, 0, 10, 10), 5)).isTrue();
        assertThat(circle(Integer.MIN_VALUE, 0, 10).isApartFrom(circle(Integer.MAX_VALUE, 0, 10), 5)).isTrue();
        assertThat(box(Integer.MAX_VALUE, 0, 10, 10).fitsOn(500, 500, 0)).isFalse();
    }

    /** The exact answer agrees with plain floating point wherever that is not in doubt. */
    @Test
    void should_agree_with_floating_point() {
        var random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            Shape one = anyShape(random);
            Shape other = anyShape(random);
            int gap = random.nextInt(30);
            double distance = distance(one, other);
            if (Math.abs(distance - gap) > 1e-6) {
                assertThat(one.isApartFrom(other, gap)).as("seed 7, case %d: %s, %s, gap %d", i, one, other, gap)
                        .isEqualTo(distance > gap);
            }
        }
    }

    private static Shape anyShape(Random random) {
        int size = 1 + random.nextInt(60);
        return random.nextBoolean() ? circle(random.nextInt(200), random.nextInt(200), size)
                : box(random.nextInt(200), random.nextInt(200), size, 1 + random.nextInt(60));
    }

    /** Negative when they overlap. A circle is a point with a radius, a rectangle a box with none. */
    private static double distance(Shape one, Shape other) {
        double oneRadius = one.round() ? one.widthMm() / 2.0 : 0;
        double otherRadius = other.round() ? other.widthMm() / 2.0 : 0;
        double across = Math.max(low(other.xMm(), otherRadius) - high(one.xMm(), one.widthMm(), oneRadius),
                low(one.xMm(), oneRadius) - high(other.xMm(), other.widthMm(), otherRadius));
        double along = Math.max(low(other.yMm(), otherRadius) - high(one.yMm(), one.depthMm(), oneRadius),
                low(one.yMm(), oneRadius) - high(other.yMm(), other.depthMm(), otherRadius));
        if (across < 0 && along < 0) {
            return -1;
        }
        return Math.hypot(Math.max(0, across), Math.max(0, along)) - oneRadius - otherRadius;
    }

    private static double low(int edge, double radius) {
        return edge + radius;
    }

    private static double high(int edge, int length, double radius) {
        return edge + length - radius;
    }

    private static Shape box(int xMm, int yMm, int widthMm, int depthMm) {
        return new Shape(false, xMm, yMm, widthMm, depthMm);
    }

    private static Shape circle(int xMm, int yMm, int diameterMm) {
        return new Shape(true, xMm, yMm, diameterMm, diameterMm);
    }
}
