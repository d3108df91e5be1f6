/** The problems that ship with the program: that they read, and that they are as hard as their page says. */
package crumbclock.problems;
