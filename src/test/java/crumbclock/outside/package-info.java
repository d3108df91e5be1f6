/**
 * Checks against the world outside: published instances with proven optima, and a general-purpose constraint solver
 * that knows nothing of the engine. Each check names where its value comes from.
 */
package crumbclock.outside;
