/**
 * What the rules look at: the problem and one finished timetable, with every id looked up once. Facts hold spans,
 * shapes and the records that they belong to; they judge nothing. What cannot be looked up becomes a
 * {@link crumbclock.rules.fact.Stray}, which a rule then reports, so a wrong timetable never stops the audit.
 * Uses domain, units and the planning annotations.
 */
package crumbclock.rules.fact;
