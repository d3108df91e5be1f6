/** What happened on the day itself, line by line as somebody wrote it down. */
package crumbclock.domain.day;
