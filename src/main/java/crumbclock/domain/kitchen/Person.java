package crumbclock.domain.kitchen;

import crumbclock.units.Span;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Someone who works in the kitchen.
 *
 * @param id               unique among people
 * @param shifts           when the person is there: sorted, disjoint
 * @param breaks           when the person is there but does not work: sorted, disjoint
 * @param skills           what the person can do that not everybody can
 * @param paceByWork       factor on a step's hands-on minutes, by kind of work; 1.0 where a kind is missing; above 0
 * @param mostMinutesADay  most minutes of hands-on work and touches in one calendar day, at least 0
 */
public record Person(String id, String name, List<Span> shifts, List<Span> breaks, Set<String> skills,
        Map<String, Double> paceByWork, int mostMinutesADay) {

    public Person {
        shifts = List.copyOf(shifts);
        breaks = List.copyOf(breaks);
        skills = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(skills));
        paceByWork = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(paceByWork));
    }

    /** Whether the person may do work that asks for {@code skill}; an empty skill asks for nothing. */
    public boolean hasSkill(String skill) {
        return skill.isEmpty() || skills.contains(skill);
    }

    /**
     * This person's minutes for work that takes {@code minutes} at pace 1: the product rounded up to whole minutes.
     * Touches are not scaled. The product is first rounded to a millionth, so that 10 × 1.1 is 11 and not 12.
     */
    public int minutesAtOwnPace(String workKind, int minutes) {
        double product = minutes * paceByWork.getOrDefault(workKind, 1.0);
        return (int) Math.ceil(Math.round(product * 1_000_000.0) / 1_000_000.0);
    }
}
