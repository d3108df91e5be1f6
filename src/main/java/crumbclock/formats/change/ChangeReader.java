package crumbclock.formats.change;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import crumbclock.domain.change.Change;
import crumbclock.domain.change.WorkChange;
import crumbclock.domain.problem.Problem;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.issue.Nearest;
import crumbclock.formats.json.JsonLoader;
import crumbclock.formats.json.JsonLoader.Loaded;
import crumbclock.formats.json.Spot;
import crumbclock.formats.order.OrderEdits;
import crumbclock.formats.problem.AllergenCheck;
import crumbclock.formats.problem.ExpansionWords;
import crumbclock.formats.problem.ProblemDraft;
import crumbclock.methods.ExpansionFault;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads changes of a problem, from files and from words, and applies them; all faults are told at once. */
public final class ChangeReader {

    private static final String IN_WORDS = "change ";

    private final IssueLog log = new IssueLog();
    private final OrderEntries orders = new OrderEntries(log);
    private final KitchenEntries kitchen = new KitchenEntries(log);
    private final WorkEntries work = new WorkEntries(log);
    private final List<Change> changes = new ArrayList<>();
    private final List<String> titles = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private ProblemDraft draft;
    private boolean sure = true;

    private ChangeReader(ProblemDraft draft) {
        this.draft = draft;
    }

    /**
     * Reads changes that apply together, one after the other.
     *
     * @param texts each the path of a file of changes, or changes in words with ";" between them
     * @param draft what they change
     * @return empty when the log got an issue; without texts the problem as it is
     */
    public static Optional<Scenario> read(List<String> texts, ProblemDraft draft, IssueLog log) {
        var reader = new ChangeReader(draft);
        texts.forEach(reader::read);
        Optional<Problem> problem = reader.log.isEmpty() ? Optional.of(reader.problem()) : Optional.empty();
        reader.log.sorted().forEach(issue -> log.add(plain(issue)));
        return problem.filter(made -> reader.log.isEmpty()).map(made ->
                new Scenario(String.join("-", reader.names), String.join("; ", reader.titles), reader.changes, made));
    }

    /** Changes in words have no lines, and their one object needs no path. */
    private static Issue plain(Issue issue) {
        return !issue.file().startsWith(IN_WORDS) ? issue : new Issue(issue.file(), 0,
                issue.where().replaceFirst("^/changes/[0-9]+/?", ""), issue.read(), issue.expected(), issue.advice());
    }

    private void read(String text) {
        if (isFile(text)) {
            SourceFile.read(Path.of(text), log).flatMap(source -> JsonLoader.loadWithSpot(source, "changes", ChangesFile.class, log))
                    .ifPresent(loaded -> {
                        titles.add(loaded.value().title());
                        names.add(plainName(Path.of(text).getFileName().toString().replaceFirst("\\.json$", "")));
                        entries(loaded);
                    });
            return;
        }
        titles.add(text.strip());
        names.add(plainName(text));
        for (String words : text.split(";", -1)) {
            var change = ChangeWords.read(words);
            String name = IN_WORDS + Spot.quote(words.strip());
            if (change.isEmpty()) {
                log.add(new Issue(name, 0, "", Spot.quote(firstWord(words)), ChangeWords.EXPECTED,
                        Nearest.advice(firstWord(words), ChangeWords.VERBS)));
                continue;
            }
            var file = JsonNodeFactory.instance.objectNode().put("title", words.strip());
            file.putArray("changes").add(change.get());
            JsonLoader.loadWithSpot(SourceFile.ofText(name, file.toString()), "changes", ChangesFile.class, log)
                    .ifPresent(this::entries);
        }
    }

    private static String firstWord(String words) {
        return words.strip().split("\\s+", 2)[0];
    }

    /** Words that are no path, or hold a blank and name no file, are words. */
    private static boolean isFile(String text) {
        try {
            return Files.exists(Path.of(text)) || !text.matches(".*\\s.*") && text.toLowerCase(Locale.ROOT).endsWith(".json");
        } catch (InvalidPathException noPath) {
            return false;
        }
    }

    private static String plainName(String text) {
        String plain = text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return plain.isEmpty() ? "changed" : plain.substring(0, Math.min(plain.length(), 48)).replaceAll("-$", "");
    }

    private void entries(Loaded<ChangesFile> loaded) {
        var list = loaded.value().changes();
        for (int i = 0; i < list.size(); i++) {
            var spot = loaded.spot().child("changes").child(i);
            if (log.holdsWithin(spot.doc().source().name(), spot.pointer())) {
                bringsNames(list.get(i));
                continue;
            }
            var verbs = Verb.keys().stream().filter(list.get(i)::has).toList();
            if (verbs.size() == 1) {
                entry(new Entry(Verb.find(verbs.get(0)).orElseThrow(), list.get(i), spot));
            } else {
                spot.fault(log, verbs.isEmpty() ? "none of them" : String.join(" and ", verbs),
                        "exactly one of the keys " + String.join(", ", Verb.keys()), "");
                bringsNames(list.get(i));
            }
        }
    }

    /** What an unreadable change would have brought may be named further down: an unknown name is then no fault. */
    private void bringsNames(JsonNode change) {
        sure &= Verb.BRINGING.stream().map(Verb::key).noneMatch(change::has);
    }

    private void entry(Entry entry) {
        boolean fits = true;
        for (String key : entry.keys()) {
            if (!entry.verb().known().contains(key)) {
                entry.at(key).fault(log, "the key \"" + key + "\"", "a key that goes with \"" + entry.verb().key() + "\"",
                        Nearest.advice(key, entry.verb().known()));
                fits = false;
            }
        }
        for (String key : entry.verb().needed()) {
            if (!entry.has(key)) {
                entry.spot().fault(log, "no key \"" + key + "\"", "the key \"" + key + "\" beside \"" + entry.verb().key() + "\"", "");
                fits = false;
            }
        }
        var read = fits ? changes(entry) : List.<Change>of();
        if (read.isEmpty() || log.holdsWithin(entry.spot().doc().source().name(), entry.spot().pointer())) {
            bringsNames(entry.node());
            return;
        }
        read.forEach(change -> apply(change, entry));
    }

    private void apply(Change change, Entry entry) {
        changes.add(change);
        draft = draft.with(change);
        if (change instanceof WorkChange.ComponentInStock stock) {
            orders.touch(stock.cakeId(), entry.spot());
        }
    }

    private List<Change> changes(Entry entry) {
        return switch (entry.verb()) {
            case DROP -> orders.drop(entry, draft, sure);
            case ADD -> orders.add(entry, draft);
            case ADD_FROM -> orders.addFrom(entry, draft);
            case EDIT -> orders.edit(entry, draft, sure);
            case COPY -> copy(entry);
            case AWAY -> kitchen.away(entry, draft, sure);
            case HOURS -> kitchen.hours(entry, draft, sure);
            case MORE -> kitchen.more(entry, draft, sure);
            case BRING -> kitchen.bring(entry, draft);
            case GOODS -> kitchen.goods(entry, draft, sure);
            case STOCK -> work.stock(entry, draft, sure);
            case TIME -> work.time(entry, draft, sure);
            case WINDOW -> work.window(entry, draft, sure);
        };
    }

    private List<Change> copy(Entry entry) {
        var things = Things.of(draft);
        var found = things.find(entry.object(), EnumSet.complementOf(EnumSet.of(Things.Kind.EQUIPMENT)), entry.atObject(), log, sure);
        if (found.size() > 1) {
            entry.atObject().fault(log, "one of its cavities", Nearest.advice("", found.stream().map(Things.Thing::id).toList()));
        }
        if (found.size() != 1) {
            return List.of();
        }
        boolean saysOfOrders = entry.keys().stream().anyMatch(OrderEdits.keys()::contains);
        if (found.get(0).kind() != Things.Kind.ORDER && saysOfOrders) {
            entry.spot().fault(log, "keys of an order or cake", "\"as\" alone: what is copied is no order", "");
            return List.of();
        }
        var thing = found.get(0);
        return switch (thing.kind()) {
            case ORDER -> orders.copy(entry, thing.id(), draft);
            case BATCH -> work.copy(entry, thing.id(), draft);
            default -> kitchen.copy(entry, thing, draft);
        };
    }

    private Problem problem() {
        boolean changed = !titles.isEmpty();
        var problem = draft.titled(changed ? draft.title() + ", with: " + String.join("; ", titles) : draft.title())
                .problem(this::report);
        if (log.isEmpty() && changed) {
            orders.checkAllergens(AllergenCheck.of(problem, log));
        }
        return problem;
    }

    private void report(ExpansionFault fault) {
        var words = ExpansionWords.of(fault);
        if (!orders.fault(fault.itemId(), words.read(), words.expected())) {
            log.add(new Issue(String.join(", ", titles), 0, fault.itemId(), words.read(), words.expected(), ""));
        }
    }
}
