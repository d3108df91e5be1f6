/**
 * What people want done, as use cases: make a plan, audit one again. A plan leaves this package audited or not at all.
 * Uses search, engine, rules and domain; knows no files and no streams.
 */
package crumbclock.app;
