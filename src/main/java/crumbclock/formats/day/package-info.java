/** Day files: what happened, one line for each thing, in the words that a person types with one thumb. */
package crumbclock.formats.day;
