/** What people read: the page, its drawings and the terminal summary. All of it follows from problems and their plans. */
package crumbclock.report;
