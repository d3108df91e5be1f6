/**
 * What one more order would do to the plan that people have: the earliest times that can be promised, what they cost, until
 * when it can be said yes, and what helps. Each answer is a plan that was found by planning again and is sound by its audit.
 */
package crumbclock.app.promise;
