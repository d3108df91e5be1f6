package crumbclock.methods;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Whole numbers by nominal diameter. Between two sizes they are interpolated; below the smallest the smallest holds
 * (fetching and wiping take their time on the tiniest cake, too); above the largest the last stretch goes on.
 */
final class SizeTable {

    private static final String ANY = "any";
    private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");

    private final List<Point> points;

    private SizeTable(List<Point> points) {
        this.points = points;
    }

    private record Point(double sizeMm, int value) {
    }

    /**
     * @param bySize sizes such as {@code 8in} or {@code 203mm}, or {@code any} alone
     * @throws IllegalArgumentException naming the size that cannot be read, or when there is none
     */
    static SizeTable of(Map<String, Integer> bySize) {
        var points = new ArrayList<Point>();
        bySize.forEach((size, value) -> points.add(new Point(ANY.equals(size) ? 0 : mm(size), value)));
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a table by size needs at least one size");
        }
        points.sort(Comparator.comparingDouble(Point::sizeMm));
        return new SizeTable(List.copyOf(points));
    }

    /** Millimetres of a size text: {@code 8in} is 203.2. */
    static double mm(String size) {
        String unit = size.endsWith("in") ? "in" : "mm";
        try {
            var number = new BigDecimal(size.substring(0, Math.max(0, size.length() - 2)));
            if (size.endsWith(unit)) {
                return unit.equals("in") ? number.multiply(MM_PER_INCH).doubleValue() : number.doubleValue();
            }
        } catch (NumberFormatException notANumber) {
            throw new IllegalArgumentException(sizeExpected(size), notANumber);
        }
        throw new IllegalArgumentException(sizeExpected(size));
    }

    private static String sizeExpected(String size) {
        return "read size \"" + size + "\"; expected \"any\" or a size such as 8in or 203mm";
    }

    /** Interpolated, not rounded. */
    double at(double sizeMm) {
        var first = points.get(0);
        if (points.size() == 1 || sizeMm <= first.sizeMm()) {
            return first.value();
        }
        int upper = 1;
        while (upper < points.size() - 1 && points.get(upper).sizeMm() < sizeMm) {
            upper++;
        }
        var from = points.get(upper - 1);
        var to = points.get(upper);
        double share = (sizeMm - from.sizeMm()) / (to.sizeMm() - from.sizeMm());
        return Math.max(0, from.value() + share * (to.value() - from.value()));
    }

    /** Interpolated and rounded to the nearest whole number, halves up. */
    int wholeAt(double sizeMm) {
        return whole(at(sizeMm));
    }

    /** Not interpolated: the entry of the largest size that is not above this one by more than a rounding. */
    int stepAt(double sizeMm) {
        int value = points.get(0).value();
        for (Point point : points) {
            if (point.sizeMm() <= sizeMm + 0.5) {
                value = point.value();
            }
        }
        return value;
    }

    /** Nearest whole number, halves up. */
    static int whole(double value) {
        return Math.toIntExact(Math.round(value));
    }
}
