package crumbclock.methods;

import java.util.Map;

/**
 * Hands-on work.
 *
 * @param minutes    at pace 1, by size: {@code {"6in": 12, "8in": 15}} or {@code {"any": 5}} (see {@link SizeTable})
 * @param times      what the minutes are multiplied by; once by default
 * @param people     how many work together, 1 by default
 * @param pairFrom   two people when a tier that stands on another is at least this large ({@code 8in}); empty for never
 * @param skill      what each of them must be able to do; empty for anyone
 * @param kind       kind of work, for pace and calm
 * @param mayPutDown whether it may be put down and picked up by the same person
 * @param finish     whether it belongs to the cake's finish, which one person should carry
 */
public record WorkTemplate(Map<String, Integer> minutes, Times times, int people, String pairFrom, String skill,
        String kind, boolean mayPutDown, boolean finish) {

    public WorkTemplate {
        minutes = Given.map(minutes);
        times = Given.or(times, Times.ONCE);
        people = people == 0 ? 1 : people;
        pairFrom = Given.text(pairFrom);
        skill = Given.text(skill);
        kind = Given.text(kind);
    }
}
