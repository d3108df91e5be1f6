package crumbclock.rules.fact;

import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.units.Span;
import java.util.Map;
import java.util.Optional;

/** In what kind of place each step kept its thing, and when (rule R12); a step of several pieces goes by its first. */
public record Whereabouts(Map<String, Stay> stays) {

    public Whereabouts {
        stays = Map.copyOf(stays);
    }

    public Optional<Stay> findStay(String stepId) {
        return Optional.ofNullable(stays.get(stepId));
    }

    /** One stay of a thing in one kind of place. */
    public record Stay(PlaceKind kind, Span when) {
    }
}
