/**
 * Values everything else is measured in: whole minutes from the problem's start, half-open spans, mm, mL, g, °C.
 * US customary units exist only on the way in and out. Uses the JDK alone.
 */
package crumbclock.units;
