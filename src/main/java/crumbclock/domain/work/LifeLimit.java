package crumbclock.domain.work;

import crumbclock.domain.kitchen.PlaceKind;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How long something keeps (rule R12), from the end of one step to the start of another. Each minute burns a share
 * of its life that depends on where it was: {@code LIFE / life minutes of that kind of place}, rounded down;
 * a minute outside the listed steps counts as {@link PlaceKind#AMBIENT}. The shares may add up to {@link #LIFE}.
 *
 * @param lifeMinutes by kind of place; must hold AMBIENT, which stands in for kinds that are missing; 1 to 999,999
 * @param heldStepIds unattended steps with a place in between
 */
public record LifeLimit(String id, String name, String ownerId, String fromStepId, String toStepId,
        List<String> heldStepIds, Map<PlaceKind, Integer> lifeMinutes) {

    /** One whole life, in shares. */
    public static final long LIFE = 1_000_000_000_000L;

    public LifeLimit {
        if (!lifeMinutes.containsKey(PlaceKind.AMBIENT)) {
            throw new IllegalArgumentException("life " + id + ": no minutes for " + PlaceKind.AMBIENT);
        }
        heldStepIds = List.copyOf(heldStepIds);
        lifeMinutes = Collections.unmodifiableMap(new EnumMap<>(lifeMinutes));
    }

    public int lifeMinutesIn(PlaceKind kind) {
        return lifeMinutes.getOrDefault(kind, lifeMinutes.get(PlaceKind.AMBIENT));
    }
}
