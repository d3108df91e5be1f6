package crumbclock.methods;

import java.util.List;

/**
 * How long something may be out of the cold, all outings added up.
 *
 * @param id             unique in the method
 * @param name           what must stay cold
 * @param from           step from whose end it counts
 * @param to             step at whose start it ends; {@code hand-over} for the order's hand-over
 * @param held           unattended steps in between that may keep it cold
 * @param mostMinutesOut at most so long in all
 * @param source         where the figure comes from
 */
public record ColdTemplate(String id, String name, String from, String to, List<String> held, int mostMinutesOut,
        String source) {

    public ColdTemplate {
        id = Given.text(id);
        name = Given.text(name);
        from = Given.text(from);
        to = Given.text(to);
        held = Given.list(held);
        source = Given.text(source);
    }
}
