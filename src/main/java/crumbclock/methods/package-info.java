/**
 * How cakes are made. Templates ({@link crumbclock.methods.Method} and the records below it) say it for any size, as
 * files have it; {@link crumbclock.methods.Expander} turns them and the requests into concrete steps, waits and limits;
 * {@link crumbclock.methods.MethodLibrary} names the methods that ship with the program. Stands on the domain alone.
 */
package crumbclock.methods;
