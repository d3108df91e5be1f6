package crumbclock.rules;

import crumbclock.units.Span;

/**
 * A stretch in which a person's hands are busy: work on a step, or a touch. Pans that go into or come out of one
 * cavity together are one movement, so equal handlings count once.
 */
record Handling(String personId, String what, Span span) {
}
