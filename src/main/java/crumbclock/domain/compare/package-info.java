/** Plans of a problem and of changed problems beside each other: the figures, and what they say. */
package crumbclock.domain.compare;
