package crumbclock.methods;

import crumbclock.domain.kitchen.PlaceKind;
import java.util.List;

/**
 * Where something stands during a step.
 *
 * @param allowed kinds of place in order of preference
 * @param form    what stands there
 */
public record PlaceTemplate(List<PlaceKind> allowed, FormTemplate form) {

    public PlaceTemplate {
        allowed = Given.list(allowed);
    }
}
