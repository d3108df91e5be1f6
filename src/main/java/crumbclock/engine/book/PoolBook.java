package crumbclock.engine.book;

import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.kitchen.Pool.PoolAway;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Journal;
import crumbclock.engine.model.Need;
import crumbclock.units.Span;
import java.util.Arrays;
import java.util.List;

/**
 * Equipment of one pool: keeps rule R06 (no more pieces than there are, cleaning between uses) by construction.
 *
 * <p>Where pieces are alike in everything, only their number is counted: uses of equal pieces that never pass the
 * count can always be dealt out to single pieces afterwards (they form an interval graph). Where a piece is away for
 * a time, what it held before counts (rule R13), or it is recorded which was taken (rule R15), each piece is followed
 * by itself.
 */
public final class PoolBook implements Journal.Undoable {

    private static final int BOOK = 0;
    private static final int UNTIL = 1;

    private final Journal journal;
    private final Pool pool;
    private final int horizon;
    private final Profile profile;
    private final PieceUses[] pieces;
    /** Pieces that were found by the last question. */
    private final int[] found;

    public PoolBook(CompiledProblem compiled, int poolIndex, Journal journal) {
        this.journal = journal;
        pool = compiled.kitchen().pools().get(poolIndex);
        horizon = compiled.horizon;
        found = new int[pool.count()];
        if (pool.away().isEmpty() && !compiled.hasFreeFrom && compiled.problem.fixedSteps().isEmpty()) {
            profile = new Profile(journal, pool.count(), Profile.none(horizon + 1));
            pieces = new PieceUses[0];
        } else {
            profile = null;
            pieces = new PieceUses[pool.count()];
            for (int piece = 0; piece < pieces.length; piece++) {
                int unit = piece;
                List<Span> away = pool.away().stream().filter(gone -> gone.unit() == unit).map(PoolAway::when)
                        .map(compiled::mirror).toList();
                pieces[piece] = new PieceUses(pool, compiled.fullCleans(poolIndex), compiled.mirrored, away);
            }
        }
    }

    public void reset() {
        if (profile != null) {
            profile.reset();
        }
        for (PieceUses piece : pieces) {
            piece.reset();
        }
    }

    /** Whether each piece is followed by itself, so that {@link #pieces} has an answer. */
    public boolean followsPieces() {
        return profile == null;
    }

    /**
     * −1 when the pieces are free all through {@code [from, until)}, which {@link #book} then takes; else the first
     * later start worth asking for.
     */
    public int blockedUntil(Need need, int from, int until) {
        if (need.units() > pool.count() || need.amount() > pool.capacity()) {
            return horizon + 1;
        }
        if (profile != null) {
            return profile.blockedUntil(from, until + pool.cleanMinutes(), need.units());
        }
        int free = 0;
        int next = horizon + 1;
        for (int piece = 0; piece < pieces.length && free < need.units(); piece++) {
            int blocked = pieces[piece].blockedUntil(need.owner(), from, until);
            if (blocked < 0) {
                found[free++] = piece;
            } else {
                next = Math.min(next, blocked);
            }
        }
        return free == need.units() ? -1 : Math.max(from + 1, next);
    }

    /** Takes what the last {@link #blockedUntil} with the same arguments found. */
    public int[] book(Need need, int from, int until) {
        if (profile != null) {
            profile.book(from, until + pool.cleanMinutes(), need.units());
            return found;
        }
        int[] taken = Arrays.copyOf(found, need.units());
        for (int piece : taken) {
            pieces[piece].add(need.owner(), from, until);
            journal.add(this, BOOK, piece, from, until);
        }
        return taken;
    }

    /** Books given pieces without a question: for what has happened (rule R15). */
    public void force(Need need, int piece, int from, int until) {
        if (profile != null) {
            profile.book(from, until + pool.cleanMinutes(), 1);
        } else {
            pieces[piece].add(need.owner(), from, until);
            journal.add(this, BOOK, piece, from, until);
        }
    }

    /** Ends a use that was booked open-ended. */
    public void shorten(Need need, int[] taken, int from, int oldUntil, int until) {
        if (profile != null) {
            profile.release(until + pool.cleanMinutes(), oldUntil + pool.cleanMinutes(), need.units());
            return;
        }
        for (int piece : taken) {
            pieces[piece].setUntil(from, until);
            journal.add(this, UNTIL, piece, from, oldUntil);
        }
    }

    @Override
    public void undo(int code, int piece, int from, int until) {
        if (code == BOOK) {
            pieces[piece].remove(from);
        } else {
            pieces[piece].setUntil(from, until);
        }
    }
}
