package crumbclock.app.replan;

/**
 * Work that has to be done again.
 *
 * @param line    of the day file, 0 when nobody wrote it down
 * @param minute  from which on it is lost; what was recorded after that is the new attempt
 * @param whole   with all that went into it, or from this step on only
 */
record Loss(int line, String stepId, int minute, boolean whole) {
}
