/** Holds the written pages against the program: fields, columns, weights and examples, so that none of them goes out of date. */
package crumbclock.docs;
