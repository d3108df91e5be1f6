package crumbclock.domain.change;

/** One difference between two problems. What it names exists; whoever reads changes has made sure of that. */
public sealed interface Change permits OrderChange, KitchenChange, WorkChange {
}
