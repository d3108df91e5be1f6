/**
 * The plan arranged for reading: who is meant by an id, when a stretch begins and ends, what stands on a shelf at one
 * time, what a person does one after another. Nothing here decides or scores anything; every figure is a minute, a
 * millimetre or a point that the problem or the plan already holds, subtracted or laid side by side.
 * Uses the domain and units alone.
 */
package crumbclock.report.view;
