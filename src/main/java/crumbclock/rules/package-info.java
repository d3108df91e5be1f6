/**
 * The audit and the explanation: every rule R01–R17 as a hard constraint and every wish W01–W07 as a soft one (lateness
 * as a medium one), declared once as constraint streams over the facts of a finished timetable. A match of a hard
 * constraint is a finding, a match of a wish is a cost, and both say in a sentence what, where and when.
 *
 * <p>Nothing is believed: the rules are recomputed from problem and timetable alone and share no code with what made
 * the timetable. One class for each subject, one method for each facet of a rule, named after its number. Uses domain,
 * units and Timefold.
 */
package crumbclock.rules;
