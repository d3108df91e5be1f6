package crumbclock.domain.day;

import crumbclock.domain.pace.PaceReport;
import crumbclock.domain.plan.Finding;
import java.util.List;

/**
 * What a plan made during the day changes.
 *
 * @param now    minute from the problem's start
 * @param people in the kitchen's order, everybody for whom something is different from now on
 * @param lost   what is lost, later or not possible any more, in whole sentences
 * @param inFact rules that what happened has broken; nothing planned from now on breaks one of them
 * @param notes  what was assumed
 * @param soFar  real minutes of what was recorded, beside the figures in use
 */
public record DayNews(int now, List<PersonNews> people, List<String> lost, List<Finding> inFact, List<DayNote> notes,
        PaceReport soFar) {

    public DayNews {
        people = List.copyOf(people);
        lost = List.copyOf(lost);
        inFact = List.copyOf(inFact);
        notes = List.copyOf(notes);
    }

    /**
     * One person's changes.
     *
     * @param changes in time order
     */
    public record PersonNews(String personId, List<Change> changes) {

        public PersonNews {
            changes = List.copyOf(changes);
        }
    }

    /** What becomes of one piece of work for one person. */
    public enum Kind {
        MOVED, NEW, GONE
    }

    /**
     * One change for one person.
     *
     * @param minute       when it is to be done now; for {@link Kind#GONE}, when it was
     * @param stepId       of the step
     * @param touch        "put in" or "take out"; empty for the work itself
     * @param beforeMinute when it was to be done; −1 for {@link Kind#NEW}
     * @param others       names of who did it before, or does it now; empty for nobody
     */
    public record Change(int minute, Kind kind, String stepId, String touch, int beforeMinute, List<String> others) {

        public Change {
            others = List.copyOf(others);
        }
    }
}
