/**
 * Who and what is taken when, in abstract time. Every booking goes through the journal and can be taken back in the
 * opposite order. A question that is answered with "not at this minute" also says from which minute on it is worth
 * asking again.
 */
package crumbclock.engine.book;
