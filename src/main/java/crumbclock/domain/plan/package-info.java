/** What comes out: placed steps, touches, oven runs, placements, outcomes, cost and findings. */
package crumbclock.domain.plan;
