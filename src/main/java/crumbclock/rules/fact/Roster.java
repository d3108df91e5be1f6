package crumbclock.rules.fact;

import crumbclock.domain.kitchen.Person;

/**
 * One person's hours: {@code shifts} joined where they touch, and {@code working} without the breaks.
 */
public record Roster(Person person, SpanSet shifts, SpanSet working) {

    public static Roster of(Person person) {
        SpanSet shifts = SpanSet.of(person.shifts());
        return new Roster(person, shifts, shifts.minus(SpanSet.of(person.breaks())));
    }

    public String personId() {
        return person.id();
    }

    public boolean hasShift() {
        return !shifts.spans().isEmpty();
    }
}
