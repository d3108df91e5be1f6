/**
 * Finds a good order of work: Timefold searches, the engine decodes. Nothing outside this package and the audit
 * knows Timefold.
 */
package crumbclock.search;
