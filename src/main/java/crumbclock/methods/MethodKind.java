package crumbclock.methods;

/** What a method makes: a cake for one customer, or a component for several cakes. */
public enum MethodKind {
    CAKE, BATCH
}
