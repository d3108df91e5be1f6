/** Published scheduling problems, told in Crumbclock's words and held against their published values. */
package crumbclock.bench.published;
