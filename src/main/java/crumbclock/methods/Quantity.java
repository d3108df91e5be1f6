package crumbclock.methods;

/** What an amount is reckoned from. */
public enum Quantity {
    /** Grams of batter by the area rule. */
    BATTER_G,
    /** Millilitres of icing for top and sides. */
    COAT_ML,
    /** Millilitres between the layers. */
    FILLING_ML,
    /** Both. */
    COAT_AND_FILLING_ML,
    /** Pieces. */
    PIECES,
    /** What a batch was asked to hold; in batch methods only. */
    BATCH
}
