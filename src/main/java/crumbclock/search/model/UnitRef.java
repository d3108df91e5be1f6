package crumbclock.search.model;

/** One unit of work, as an element of the order of work. */
public record UnitRef(int index) {
}
