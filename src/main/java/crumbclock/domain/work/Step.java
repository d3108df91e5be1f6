package crumbclock.domain.work;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The smallest thing the timetable places, with all its needs.
 *
 * <p>A hands-on step lasts from the first to the last minute somebody works on it. An unattended step lasts for its
 * putting-in touch, a rest, and its taking-out touch; the rest is at least {@link #leastMinutes} and at most
 * {@link #mostMinutes} long, and ends when the next step takes the thing out: a bake has nearly equal limits, a
 * holding has limits hours apart.
 *
 * @param id           unique in the problem, readable: {@code A1/1/thin-coat}
 * @param name         what people call it: "thin coat"
 * @param ownerId      the cake or batch it belongs to
 * @param part         tier or component inside the cake; empty for the whole cake
 * @param handsOn      the work; present exactly for {@link StepKind#HANDS_ON}
 * @param leastMinutes least rest of an unattended step; 0 for a hands-on step
 * @param mostMinutes  most rest of an unattended step, {@link Wait#NO_MOST} for no limit; 0 for a hands-on step
 * @param putIn        touch at the start, for unattended steps that need one
 * @param takeOut      touch at the end, for unattended steps that need one
 * @param presence     someone must be in the kitchen all through (rule R05)
 * @param oven         the bake, for unattended steps in an oven; such a step has no place
 * @param place        where the thing stands, when that counts
 * @param contains     allergens in it
 * @param freeFrom     allergens that it must not meet (rule R13)
 * @param earliest     not before this minute (rule R14)
 */
public record Step(String id, String name, String ownerId, String part, StepKind kind, Optional<HandsOn> handsOn,
        int leastMinutes, int mostMinutes, Optional<Touch> putIn, Optional<Touch> takeOut, boolean presence,
        List<EquipmentNeed> equipment, Optional<OvenUse> oven, Optional<PlaceNeed> place, Set<String> contains,
        Set<String> freeFrom, int earliest) {

    public Step {
        if ((kind == StepKind.HANDS_ON) != handsOn.isPresent()) {
            throw new IllegalArgumentException("step " + id + ": " + kind + " and its work do not go together");
        }
        if (oven.isPresent() && (place.isPresent() || kind != StepKind.UNATTENDED)) {
            throw new IllegalArgumentException("step " + id + ": a bake is unattended and has no other place");
        }
        if (kind == StepKind.HANDS_ON && (putIn.isPresent() || takeOut.isPresent())) {
            throw new IllegalArgumentException("step " + id + ": touches belong to unattended steps");
        }
        if (leastMinutes < 0 || mostMinutes < leastMinutes) {
            throw new IllegalArgumentException("step " + id + ": least " + leastMinutes + ", most " + mostMinutes);
        }
        equipment = List.copyOf(equipment);
        contains = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(contains));
        freeFrom = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(freeFrom));
    }

    /** The same with another id, of another owner. */
    public Step called(String otherId, String otherOwnerId) {
        return new Step(otherId, name, otherOwnerId, part, kind, handsOn, leastMinutes, mostMinutes, putIn, takeOut, presence,
                equipment, oven, place, contains, freeFrom, earliest);
    }

    /** The same hands-on step with other work. */
    public Step withHandsOn(HandsOn work) {
        return new Step(id, name, ownerId, part, kind, Optional.of(work), leastMinutes, mostMinutes, putIn, takeOut, presence,
                equipment, oven, place, contains, freeFrom, earliest);
    }

    /** The same unattended step with another rest. */
    public Step withRest(int least, int most) {
        return new Step(id, name, ownerId, part, kind, handsOn, least, most, putIn, takeOut, presence,
                equipment, oven, place, contains, freeFrom, earliest);
    }

    /** The same with other equipment. */
    public Step withEquipment(List<EquipmentNeed> needs) {
        return new Step(id, name, ownerId, part, kind, handsOn, leastMinutes, mostMinutes, putIn, takeOut, presence,
                needs, oven, place, contains, freeFrom, earliest);
    }

    /** The same with other allergens in it. */
    public Step withContains(Set<String> allergens) {
        return new Step(id, name, ownerId, part, kind, handsOn, leastMinutes, mostMinutes, putIn, takeOut, presence,
                equipment, oven, place, allergens, freeFrom, earliest);
    }

    /** The same with other allergens that it must not meet. */
    public Step withFreeFrom(Set<String> allergens) {
        return new Step(id, name, ownerId, part, kind, handsOn, leastMinutes, mostMinutes, putIn, takeOut, presence,
                equipment, oven, place, contains, allergens, earliest);
    }

    /** The same, not before another minute. */
    public Step withEarliest(int minute) {
        return new Step(id, name, ownerId, part, kind, handsOn, leastMinutes, mostMinutes, putIn, takeOut, presence,
                equipment, oven, place, contains, freeFrom, minute);
    }

    /** Minutes of the putting-in touch, 0 without one. */
    public int putInMinutes() {
        return putIn.map(Touch::minutes).orElse(0);
    }

    /** Minutes of the taking-out touch, 0 without one. */
    public int takeOutMinutes() {
        return takeOut.map(Touch::minutes).orElse(0);
    }
}
