package crumbclock.engine.decode;

/** How placing a task or a unit went. */
enum Outcome {
    /** It has its place. */
    PLACED,
    /** An earlier task must start later first: {@link Obstacle#task} not before {@link Obstacle#minute}. */
    RAISE,
    /** There is no place before the horizon. */
    NEVER
}
