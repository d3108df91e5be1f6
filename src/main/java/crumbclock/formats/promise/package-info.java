/** Answers about one more order, written as JSON. */
package crumbclock.formats.promise;
