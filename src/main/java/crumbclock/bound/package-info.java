/**
 * What no sound plan can be better than: a lower bound on lateness and on the end of the work, proven from parts of the
 * rules. Waits and calendars give each step the earliest and latest minutes it can have at all; what hands, ovens,
 * equipment and shelves can do in a stretch of time is held against what must happen in it. Each argument leaves rules
 * out and adds none, so every sound plan passes it. Shares no code with the decoder, the search or the audit.
 */
package crumbclock.bound;
