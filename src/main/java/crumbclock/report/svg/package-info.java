/**
 * Drawings: shelves and oven racks to scale from above, the days as lanes. Numbers are written with a point whatever
 * the machine's locale; text is escaped; a drawing of a shelf or rack has one millimetre as its unit.
 * Uses {@code report.view}, the domain and units.
 */
package crumbclock.report.svg;
