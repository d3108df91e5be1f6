package crumbclock.formats.change;

import crumbclock.domain.change.Change;
import crumbclock.domain.problem.Problem;
import java.util.List;

/**
 * A named difference to a problem, and what it makes of it.
 *
 * @param name    short, of small letters, digits and hyphens: fit for a folder
 * @param title   for people
 * @param changes what differs, in the order in which it applies
 * @param problem the changed problem; its title tells the scenario's
 */
public record Scenario(String name, String title, List<Change> changes, Problem problem) {

    public Scenario {
        changes = List.copyOf(changes);
    }
}
