package crumbclock.engine.cost;

/**
 * What a timetable costs. Less is better; medium counts before all soft points.
 *
 * @param medium lateness and orders not possible, in points
 * @param soft   wishes W01 to W08, in points
 */
public record Cost(long medium, long soft) implements Comparable<Cost> {

    @Override
    public int compareTo(Cost other) {
        return medium != other.medium ? Long.compare(medium, other.medium) : Long.compare(soft, other.soft);
    }
}
