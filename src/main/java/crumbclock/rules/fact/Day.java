package crumbclock.rules.fact;

import crumbclock.units.Span;

/** One calendar day, midnight to midnight, numbered from 0. */
public record Day(int no, Span span) {
}
