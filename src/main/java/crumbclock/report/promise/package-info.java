/** Whether one more order can be promised: sentences, summary and page. They show what was found and reckon nothing anew. */
package crumbclock.report.promise;
