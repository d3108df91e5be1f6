/** Differences between two problems, such as an order more or a shelf less; said in minutes, like everything behind the formats. */
package crumbclock.domain.change;
