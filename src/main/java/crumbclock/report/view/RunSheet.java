package crumbclock.report.view;

import java.util.List;

/**
 * All that one person does, day by day.
 *
 * @param hands all hands-on work and touches together, as a duration
 */
public record RunSheet(String personId, String name, String hands, List<Day> days) {

    public RunSheet {
        days = List.copyOf(days);
    }

    /** One calendar day with something to do; {@code shift} says when the person is there and when not. */
    public record Day(String title, String shift, String hands, List<Row> rows) {

        public Day {
            rows = List.copyOf(rows);
        }
    }

    /** What a row asks for. */
    public enum Kind {
        WORK("work"), PUT_IN("put in"), TAKE_OUT("take out"), REMINDER("reminder");

        private final String title;

        Kind(String title) {
            this.title = title;
        }

        public String title() {
            return title;
        }
    }

    /**
     * One line to follow.
     *
     * @param stepId empty for a reminder
     * @param clock  clock time or times
     * @param what   name of the step, or what to be reminded of
     * @param owner  short id of order, cake or batch; empty for a reminder
     * @param tint   position of the order, −1 for none
     * @param about  title of the cake, batch or order
     * @param where  shelf, rack, surface, equipment
     * @param with   the others who work on it; empty when alone
     * @param window from when to when it may be done, in words; empty when nothing limits it
     * @param notes  timers, messages, what follows
     */
    public record Row(int from, int until, Kind kind, String stepId, String clock, String what, String owner,
            int tint, String about, String where, String with, String window, List<String> notes) {

        public Row {
            notes = List.copyOf(notes);
        }
    }
}
