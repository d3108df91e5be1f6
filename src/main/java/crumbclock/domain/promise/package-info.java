/** Answers to "can you make one more, and for when?": the earliest times that can be promised, what they cost the others, and what helps. */
package crumbclock.domain.promise;
