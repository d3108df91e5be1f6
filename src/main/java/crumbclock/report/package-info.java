/** What people read: the page, its drawings and the terminal summary. All of it follows from one problem and one plan. */
package crumbclock.report;
