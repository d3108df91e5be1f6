package crumbclock.engine.book;

import java.util.Arrays;

/** A growing list of plain ints, reused from decode to decode. */
public final class IntList {

    private int[] values = new int[8];
    private int size;

    public int size() {
        return size;
    }

    public int get(int index) {
        return values[index];
    }

    public void set(int index, int value) {
        values[index] = value;
    }

    public void add(int value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size);
        }
        values[size++] = value;
    }

    /** Answers what it took off. */
    public int removeLast() {
        return values[--size];
    }

    public void clear() {
        size = 0;
    }

    public int[] toArray() {
        return Arrays.copyOf(values, size);
    }

    public void copyFrom(IntList other) {
        if (values.length < other.size) {
            values = new int[other.values.length];
        }
        System.arraycopy(other.values, 0, values, 0, other.size);
        size = other.size;
    }
}
