package crumbclock.engine.model;

import java.util.Arrays;

/**
 * Remembers bookings so that they can be taken back in the opposite order. The unit placer books tentatively,
 * and steps back when a later member finds no place.
 */
public final class Journal {

    /** A book that can take back one of its own entries. */
    public interface Undoable {
        void undo(int code, int a, int b, int c);
    }

    private Undoable[] books = new Undoable[256];
    private int[] entries = new int[1024];
    private int size;

    public void reset() {
        size = 0;
    }

    public int mark() {
        return size;
    }

    public void add(Undoable book, int code, int a, int b, int c) {
        if (size == books.length) {
            books = Arrays.copyOf(books, 2 * size);
            entries = Arrays.copyOf(entries, 8 * size);
        }
        books[size] = book;
        int at = 4 * size;
        entries[at] = code;
        entries[at + 1] = a;
        entries[at + 2] = b;
        entries[at + 3] = c;
        size++;
    }

    /** Takes back everything booked since {@code mark}. */
    public void undoTo(int mark) {
        while (size > mark) {
            size--;
            int at = 4 * size;
            books[size].undo(entries[at], entries[at + 1], entries[at + 2], entries[at + 3]);
        }
    }
}
