package crumbclock.units;

/**
 * A half-open stretch of time, {@code [start, end)}, in whole minutes of elapsed time from the problem's start.
 *
 * @param start first minute inside; may be negative (the first calendar day often begins before the problem does)
 * @param end   first minute after; at least {@code start} (an empty span is allowed and overlaps nothing)
 */
public record Span(int start, int end) implements Comparable<Span> {

    public Span {
        if (end < start) {
            throw new IllegalArgumentException("span ends before it starts: [" + start + ", " + end + ")");
        }
    }

    public int minutes() {
        return end - start;
    }

    public boolean isEmpty() {
        return end == start;
    }

    /** Whether at least one minute lies in both; spans that only touch do not overlap. */
    public boolean overlaps(Span other) {
        return Math.max(start, other.start) < Math.min(end, other.end);
    }

    public boolean contains(int minute) {
        return start <= minute && minute < end;
    }

    public boolean contains(Span other) {
        return start <= other.start && other.end <= end;
    }

    /** Minutes that lie in both spans, 0 when they do not overlap. */
    public int overlapMinutes(Span other) {
        return Math.max(0, Math.min(end, other.end) - Math.max(start, other.start));
    }

    @Override
    public int compareTo(Span other) {
        return start != other.start ? Integer.compare(start, other.start) : Integer.compare(end, other.end);
    }
}
