/**
 * Differences between two problems, such as an order more or a shelf less; said in minutes, like everything behind the formats.
 * Those of a kitchen are applied here, since they need nothing but the kitchen.
 */
package crumbclock.domain.change;
