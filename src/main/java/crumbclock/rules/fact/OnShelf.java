package crumbclock.rules.fact;

import crumbclock.units.Span;

/**
 * Anything that stands on a shelf for a time, of the plan or not.
 *
 * @param no     unlike that of every other; orders pairs; below 0 for goods
 * @param stepId the step whose piece it is; empty for goods
 * @param piece  which of the step's pieces
 * @param name   step, with its piece when it has several, or goods; for people
 */
public record OnShelf(int no, String stepId, int piece, String name, String storeId, String shelfId, Shape shape,
        int massGrams, Span when) {

    public boolean isGoods() {
        return stepId.isEmpty();
    }

    public int start() {
        return when.start();
    }

    public int end() {
        return when.end();
    }

    /** Whether both are the same piece, given twice. */
    public boolean isSamePieceAs(OnShelf other) {
        return !isGoods() && stepId.equals(other.stepId) && piece == other.piece;
    }

    /** Whether it stands there just when something else goes in or comes out at that minute. */
    public boolean isThereAcross(int minute) {
        return when.start() < minute && minute < when.end();
    }
}
