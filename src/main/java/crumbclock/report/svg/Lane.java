package crumbclock.report.svg;

import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One strip of the timetable.
 *
 * @param group  heading over the first of several lanes: "people", "ovens"
 * @param name   what the lane stands for
 * @param bars   sorted by start; those that overlap get rows of their own
 * @param shades grounds behind the bars
 */
record Lane(String group, String name, List<Bar> bars, List<Shade> shades) {

    /** More rows than this are counted instead of drawn one by one. */
    static final int MOST_ROWS = 8;

    Lane {
        bars = bars.stream().sorted(Comparator.comparing((Bar bar) -> bar.when().start())
                .thenComparing(bar -> bar.when().end()).thenComparing(Bar::label)).toList();
        shades = List.copyOf(shades);
    }

    /** How a bar looks. */
    enum Look {
        WORK, AWAY, PUT_IN, TAKE_OUT, HEAT, HOT, STAND, STOCK, CLEAN, COUNT
    }

    /**
     * @param label short name, drawn strong
     * @param text  the rest, drawn where there is room
     * @param tint  class of its order
     */
    record Bar(Span when, Look look, String label, String text, String tint) {

        boolean isTouch() {
            return look == Look.PUT_IN || look == Look.TAKE_OUT;
        }

        boolean isHeat() {
            return look == Look.HEAT || look == Look.HOT;
        }
    }

    /** A stretch in which the lane cannot be used, or not by everybody. */
    record Shade(Span when, String cssClass, String text) {
    }

    Lane within(Span window) {
        return new Lane(group, name, bars.stream().filter(bar -> bar.when().overlaps(window)).toList(),
                shades.stream().filter(shade -> shade.when().overlaps(window)).toList());
    }

    /**
     * Row of each bar, in the order of {@link #bars}: the first row that is free. Touches share the first row, and so
     * does an oven's heat, with the bakes below it.
     */
    List<Integer> rows() {
        List<Integer> rows = new ArrayList<>();
        List<Integer> freeFrom = new ArrayList<>();
        int firstRow = bars.stream().anyMatch(Bar::isHeat) ? 1 : 0;
        if (firstRow == 1) {
            freeFrom.add(0);
        }
        for (Bar bar : bars) {
            int row = bar.isHeat() ? 0 : firstRow;
            if (!bar.isTouch() && !bar.isHeat()) {
                while (row < freeFrom.size() && freeFrom.get(row) > bar.when().start()) {
                    row++;
                }
                if (row == freeFrom.size()) {
                    freeFrom.add(0);
                }
                freeFrom.set(row, bar.when().end());
            }
            rows.add(row);
        }
        return rows;
    }

    int rowCount() {
        return rows().stream().mapToInt(row -> row + 1).max().orElse(1);
    }

    /** The lane itself, or, when it has too many rows, one row that says how many things there are when. */
    Lane readable() {
        if (rowCount() <= MOST_ROWS) {
            return this;
        }
        var changes = bars.stream().flatMapToInt(bar -> IntStream.of(bar.when().start(),
                bar.when().end())).sorted().distinct().toArray();
        List<Bar> counts = new ArrayList<>();
        for (int i = 0; i + 1 < changes.length; i++) {
            var when = new Span(changes[i], changes[i + 1]);
            long there = bars.stream().filter(bar -> bar.when().overlaps(when)).count();
            if (there > 0) {
                counts.add(new Bar(when, Look.COUNT, Long.toString(there), "at once", "tb"));
            }
        }
        return new Lane(group, name, counts, shades);
    }
}
