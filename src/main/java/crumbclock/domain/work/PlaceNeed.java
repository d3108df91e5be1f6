package crumbclock.domain.work;

import crumbclock.domain.kitchen.PlaceKind;
import java.util.List;

/**
 * Where the thing worked on stands during a step.
 *
 * @param form    what stands there
 * @param allowed kinds of place in order of preference, never empty (rule R11); a hands-on step names surfaces only
 */
public record PlaceNeed(Form form, List<PlaceKind> allowed) {

    public PlaceNeed {
        allowed = List.copyOf(allowed);
    }
}
