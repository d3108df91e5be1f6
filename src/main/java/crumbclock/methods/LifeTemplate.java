package crumbclock.methods;

import crumbclock.domain.kitchen.PlaceKind;
import java.util.List;
import java.util.Map;

/**
 * How long something keeps from one step to another.
 *
 * @param id          unique in the method
 * @param name        what keeps: "layers"
 * @param from        step from whose end it counts
 * @param to          step at whose start it is used; {@code hand-over} for the order's hand-over
 * @param held        unattended steps in between that have a place
 * @param lifeMinutes by kind of place; must hold {@code AMBIENT}
 * @param source      where the figures come from
 */
public record LifeTemplate(String id, String name, String from, String to, List<String> held,
        Map<PlaceKind, Integer> lifeMinutes, String source) {

    public LifeTemplate {
        id = Given.text(id);
        name = Given.text(name);
        from = Given.text(from);
        to = Given.text(to);
        held = Given.list(held);
        lifeMinutes = Given.map(lifeMinutes);
        source = Given.text(source);
    }
}
