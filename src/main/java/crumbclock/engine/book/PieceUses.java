package crumbclock.engine.book;

import crumbclock.domain.kitchen.Pool;
import crumbclock.engine.model.FullCleans;
import crumbclock.engine.model.Task;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;

/**
 * The uses of one piece of equipment in abstract time, with what each held: keeps rules R06 and R13 for it.
 *
 * <p>A use that must be free from something, with an earlier use that held it, needs an idle gap right before it that is long
 * enough for a full clean; "before" means real time.
 */
final class PieceUses {

    /** @param task {@code null} for a time away */
    private record Use(Task task, int from, int until) {
    }

    private final Pool pool;
    private final FullCleans cleans;
    private final boolean mirrored;
    private final List<Span> away;
    private final List<Use> uses = new ArrayList<>();
    /** Uses that must be free from something. */
    private int minding;

    PieceUses(Pool pool, FullCleans cleans, boolean mirrored, List<Span> away) {
        this.pool = pool;
        this.cleans = cleans;
        this.mirrored = mirrored;
        this.away = away;
        reset();
    }

    void reset() {
        uses.clear();
        minding = 0;
        for (Span span : away) {
            uses.add(position(span.start()), new Use(null, span.start(), span.end()));
        }
    }

    private int position(int from) {
        int low = 0;
        int high = uses.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (uses.get(middle).from < from) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** −1 when {@code task} may have the piece for {@code [from, until)}; else the first later start worth asking for. */
    int blockedUntil(Task task, int from, int until) {
        int blocked = -1;
        for (Use use : uses) {
            int gap = use.task == null ? 0 : pool.cleanMinutes();
            if (use.from < until + gap && from < use.until + gap) {
                blocked = Math.max(blocked, use.until + gap);
            }
        }
        if (blocked > from) {
            return blocked;
        }
        int missing = missingIdle(task, from, until);
        return missing == 0 ? -1 : from + missing;
    }

    /**
     * Minutes that are missing for a full clean before some use, at least; 0 when none is. Also asked for a task that
     * neither holds nor minds anything: it must not fill the gap that a clean needs.
     */
    private int missingIdle(Task task, int from, int until) {
        if (task.freeFrom == 0 && minding == 0) {
            return 0;
        }
        Use asked = new Use(task, from, until);
        int at = position(from);
        long held = 0;
        Use before = null;
        for (int index = 0; index <= uses.size(); index++) {
            Use use = with(asked, at, mirrored ? uses.size() - index : index);
            if (use.task == null) {
                continue;
            }
            long met = use.task.freeFrom & held;
            if (met != 0) {
                int clean = cleans.minutes(met);
                int missing = clean - idle(before, use);
                if (missing > 0) {
                    return missing;
                }
                held &= ~cleans.cleaned(clean);
            }
            held |= use.task.contains;
            before = use;
        }
        return 0;
    }

    /** The uses as if one more stood at {@code at}. */
    private Use with(Use asked, int at, int index) {
        return index == at ? asked : uses.get(index < at ? index : index - 1);
    }

    /** Idle minutes between two uses that follow each other in real time. */
    private int idle(Use before, Use use) {
        return mirrored ? before.from - use.until : use.from - before.until;
    }

    void add(Task task, int from, int until) {
        uses.add(position(from), new Use(task, from, until));
        minding += task.freeFrom != 0 ? 1 : 0;
    }

    void remove(int from) {
        Use removed = uses.remove(indexOf(from));
        minding -= removed.task.freeFrom != 0 ? 1 : 0;
    }

    void setUntil(int from, int until) {
        int index = indexOf(from);
        uses.set(index, new Use(uses.get(index).task, from, until));
    }

    private int indexOf(int from) {
        int index = position(from);
        while (uses.get(index).task == null) {
            index++;
        }
        return index;
    }
}
