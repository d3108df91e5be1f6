package crumbclock.app.replan;

/**
 * When a step that has begun was or is done.
 *
 * @param end  after now while it runs; for a stay whose end nobody knows yet: now, or when it is in
 * @param open it goes on until what takes it out begins
 */
record Happened(int start, int end, boolean open) {
}
