/** What Timefold plans: one list, the order of work. */
package crumbclock.search.model;
