package crumbclock.domain.work;

/** Whether hands work all through a step, or nobody does between its touches. */
public enum StepKind {
    HANDS_ON, UNATTENDED
}
