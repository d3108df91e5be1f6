package crumbclock.formats.problem;

import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.JsonLoader;
import crumbclock.formats.json.JsonLoader.Loaded;
import crumbclock.formats.json.Spot;
import crumbclock.methods.Method;
import crumbclock.methods.MethodFile;
import crumbclock.methods.MethodKind;
import crumbclock.methods.MethodLibrary;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The library's methods and a problem's own; one of its own with the id of a library method takes that one's place. */
public final class MethodBook {

    private final Map<String, Method> byId = new TreeMap<>();
    private final Set<String> ownIds = new HashSet<>();
    private final IssueLog log;
    private boolean complete = true;

    private MethodBook(IssueLog log) {
        this.log = log;
    }

    /** Reads the library and what the problem names: paths of method files, or method files themselves. */
    public static MethodBook read(Spot spot, int count, IssueLog log) {
        var book = new MethodBook(log);
        Library.METHODS.forEach(method -> book.byId.put(method.id(), method));
        for (int i = 0; i < count; i++) {
            var at = spot.node().isArray() ? spot.child(i) : spot;
            var loaded = at.node().isTextual()
                    ? NamedFiles.open(at, log).flatMap(file -> JsonLoader.loadWithSpot(file, "method", MethodFile.class, log))
                    : JsonLoader.load(at, "method", MethodFile.class, log);
            book.own(loaded);
        }
        return book;
    }

    public Map<String, Method> byId() {
        return Collections.unmodifiableMap(byId);
    }

    /** Ids of the methods of one kind. */
    public Set<String> ids(MethodKind kind) {
        Set<String> ids = new TreeSet<>();
        byId.values().stream().filter(method -> method.kind() == kind).forEach(method -> ids.add(method.id()));
        return ids;
    }

    /** False when a method file could not be read, so that a method not found may still exist. */
    public boolean isComplete() {
        return complete;
    }

    /** The library, read once: it ships with the program and never changes. */
    private static final class Library {

        static final List<Method> METHODS = MethodLibrary.resources().stream().flatMap(Library::methods).toList();

        private static Stream<Method> methods(String resource) {
            var ownLog = new IssueLog();
            var file = JsonLoader.load(SourceFile.ofText(resource, text(resource)), "method", MethodFile.class, ownLog);
            if (!ownLog.isEmpty() || file.isEmpty()) {
                throw new IllegalStateException("the method library is broken: " + ownLog.sorted());
            }
            return file.get().methods().stream();
        }
    }

    private void own(Optional<Loaded<MethodFile>> loaded) {
        if (loaded.isEmpty()) {
            complete = false;
            return;
        }
        var methods = loaded.get().value().methods();
        for (int i = 0; i < methods.size(); i++) {
            if (!ownIds.add(methods.get(i).id())) {
                loaded.get().spot().child("methods").child(i).child("id").fault(log, "an id that no other method of the problem has",
                        "Rename one of the two.");
            }
            byId.put(methods.get(i).id(), methods.get(i));
        }
    }

    private static String text(String resource) {
        try (InputStream stream = MethodBook.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("the method library lacks " + resource);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(resource, unreadable);
        }
    }
}
