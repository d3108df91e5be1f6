package crumbclock.methods;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What a template takes for something that its file leaves out. */
final class Given {

    private Given() {
    }

    static String text(String read) {
        return read == null ? "" : read;
    }

    static <T> List<T> list(List<T> read) {
        return read == null ? List.of() : List.copyOf(read);
    }

    static <K extends Comparable<K>, V> Map<K, V> map(Map<K, V> read) {
        return read == null ? Map.of() : Collections.unmodifiableSortedMap(new TreeMap<>(read));
    }

    static <T> T or(T read, T otherwise) {
        return read == null ? otherwise : read;
    }
}
