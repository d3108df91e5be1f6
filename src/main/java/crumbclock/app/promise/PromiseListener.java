package crumbclock.app.promise;

/** Hears how the answers come about. */
public interface PromiseListener {

    /** What is looked for next, for people; and how many such things are done, of about how many. */
    void looking(String what, int done, int about);

    /** Asked often: whether to end now and keep the answers so far. */
    boolean stopAsked();
}
