package crumbclock.domain.work;

import java.util.List;

/**
 * How long something that needs cold may be out of it, all outings added up (rule R12): the minutes from the end of
 * one step to the start of another, less those in which a listed step held it in a fridge or freezer
 * (the part of that step's placement between the two).
 *
 * @param heldStepIds unattended steps with a place that may keep it cold in between
 */
public record ColdLimit(String id, String name, String ownerId, String fromStepId, String toStepId,
        List<String> heldStepIds, int mostMinutesOut) {

    public ColdLimit {
        heldStepIds = List.copyOf(heldStepIds);
    }
}
