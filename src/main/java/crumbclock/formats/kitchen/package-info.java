/** The kitchen file: its records as written, and their way to the domain's kitchen with every calendar in minutes. */
package crumbclock.formats.kitchen;
