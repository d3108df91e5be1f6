package crumbclock.domain.kitchen;

import crumbclock.units.Span;
import java.util.List;

/**
 * Cooling rack or bench space, counted by area only (rule R06).
 *
 * @param kind    {@link PlaceKind#RACK} or {@link PlaceKind#BENCH}
 * @param areaMm2 all there is, in mm²
 */
public record Surface(String id, String name, PlaceKind kind, int areaMm2, List<Span> away) {

    public Surface {
        if (kind.hasShelves()) {
            throw new IllegalArgumentException("surface " + id + ": " + kind + " is a store, not a surface");
        }
        away = List.copyOf(away);
    }
}
