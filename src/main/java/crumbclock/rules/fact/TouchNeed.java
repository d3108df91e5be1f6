package crumbclock.rules.fact;

import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.work.Touch;
import crumbclock.units.Span;

/** A touch that a placed step must have, and when (rule R04). */
public record TouchNeed(String stepId, TouchEnd at, Touch touch, Span due) {
}
