package crumbclock.domain.order;

/** Something made once for several cakes: a bowl of batter or icing. Its steps are needed while one of its cakes is. */
public record Batch(String id, String title) {
}
