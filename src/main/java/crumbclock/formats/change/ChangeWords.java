package crumbclock.formats.change;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbclock.formats.issue.Alternatives;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * One change in a few words, such as {@code away oven from Thu 20:00}, turned into the object that a file would have for it.
 * A word in quotes may hold blanks. What is said of an order or cake is said as key=value.
 */
final class ChangeWords {

    /** What a change in words may begin with. */
    static final List<String> VERBS = List.of("drop", "add", "move", "edit", "copy", "away", "hours", "more", "goods", "stock", "time", "window");
    static final String EXPECTED = Alternatives.of(VERBS) + ", as in \"away oven from Thu 20:00\"";

    private static final Pattern WORD = Pattern.compile("((?:[^\\s\"]|\"[^\"]*\")+)");
    private static final Pattern SAID = Pattern.compile("([A-Za-z][A-Za-z0-9.-]*)=(.*)");
    private static final Pattern AMOUNT = Pattern.compile("\\s([+-]?)(\\d{1,5})\\s*(%|min)(?=\\s|$)");
    private static final Pattern SIZE = Pattern.compile("(\\d+)x(\\d+)(?:x(\\d+))?");
    private static final Set<String> KEYWORDS = Set.of("from", "to", "until", "on", "of", "as", "at", "pieces");
    private static final Set<String> LISTS = Set.of("freeFrom", "contains");
    private static final Set<String> TEXTS = Set.of("title", "message", "size");

    private final ObjectNode change = JsonNodeFactory.instance.objectNode();
    private final Map<String, String> parts = new LinkedHashMap<>();
    private String object = "";

    private ChangeWords() {
    }

    /** The change as an object; empty when the words say none. */
    static Optional<ObjectNode> read(String text) {
        var words = new ChangeWords();
        String rest = words.amount(text.strip());
        List<String> all = words(rest);
        String verb = all.isEmpty() ? "" : all.get(0).toLowerCase(Locale.ROOT);
        words.divide(all.subList(Math.min(1, all.size()), all.size()));
        return words.build(verb) ? Optional.of(words.change) : Optional.empty();
    }

    /** Takes "200%" or "+20 min" out of the text. */
    private String amount(String text) {
        boolean timed = text.toLowerCase(Locale.ROOT).startsWith("time ") || text.toLowerCase(Locale.ROOT).startsWith("window ");
        var amount = AMOUNT.matcher(text);
        if (!timed || !amount.find()) {
            return text;
        }
        int number = Integer.parseInt(amount.group(2));
        boolean percent = amount.group(3).equals("%");
        if (percent && !amount.group(1).isEmpty()) {
            return text; // whether "+20 %" means 120 or 20 is not for us to guess
        }
        change.put(percent ? "percent" : "minutes", amount.group(1).equals("-") ? -number : number);
        return text.substring(0, amount.start()) + text.substring(amount.end());
    }

    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        var found = WORD.matcher(text);
        while (found.find()) {
            words.add(found.group().replace("\"", ""));
        }
        return words;
    }

    /** What stands before the first keyword is the object; each keyword takes what follows up to the next. */
    private void divide(List<String> words) {
        String key = "";
        for (String word : words) {
            var said = SAID.matcher(word);
            if (said.matches()) {
                say(said.group(1), said.group(2));
            } else if (KEYWORDS.contains(word.toLowerCase(Locale.ROOT)) && !parts.containsKey(word.toLowerCase(Locale.ROOT))) {
                key = word.toLowerCase(Locale.ROOT);
                parts.put(key, "");
            } else if (key.isEmpty()) {
                object = (object + " " + word).strip();
            } else {
                parts.merge(key, word, (before, more) -> (before + " " + more).strip());
            }
        }
    }

    private void say(String key, String value) {
        int dot = key.indexOf('.');
        if (dot > 0) {
            change.withObject("/" + key.substring(0, dot)).put(key.substring(dot + 1), value);
        } else if (LISTS.contains(key)) {
            ArrayNode list = change.putArray(key);
            for (String one : value.split(",")) {
                if (!one.isBlank()) {
                    list.add(one.strip());
                }
            }
        } else if (value.matches("\\d{1,9}") && !TEXTS.contains(key)) {
            change.put(key, Integer.parseInt(value));
        } else {
            change.put(key, value);
        }
    }

    private boolean build(String verb) {
        switch (verb) {
            case "drop", "away", "hours", "stock", "time", "window", "edit", "copy" -> change.put(verb, object);
            case "add" -> change.put("addFrom", object);
            case "move" -> {
                change.put("edit", object);
                put("to", "handOver");
                put("from", "handOverFrom");
            }
            case "more" -> more();
            case "goods" -> goods();
            default -> {
                return false;
            }
        }
        put("from", "from");
        put("to", "until");
        put("until", "until");
        put("on", "on");
        put("of", "of");
        put("as", "as");
        String pieces = parts.remove("pieces");
        if (pieces != null) {
            say("pieces", pieces);
        }
        return !object.isEmpty() && parts.isEmpty();
    }

    /** "more mixer 2": a number at the end says how many. */
    private void more() {
        int space = object.lastIndexOf(' ');
        boolean counted = space > 0 && object.substring(space + 1).matches("\\d{1,5}");
        change.put("more", counted ? object.substring(0, space) : object);
        if (counted) {
            change.put("pieces", Integer.parseInt(object.substring(space + 1)));
        }
    }

    /** "goods cheese on fridge/F1 200x150x100 at 0,180": millimetres. */
    private void goods() {
        change.put("goods", object);
        String on = parts.getOrDefault("on", "");
        var size = SIZE.matcher(on);
        if (size.find()) {
            change.put("width", Integer.parseInt(size.group(1))).put("depth", Integer.parseInt(size.group(2)));
            if (size.group(3) != null) {
                change.put("height", Integer.parseInt(size.group(3)));
            }
            parts.put("on", on.substring(0, size.start()).strip());
        }
        String at = parts.remove("at");
        if (at != null && at.matches("\\d{1,5}\\s*,\\s*\\d{1,5}")) {
            change.put("x", Integer.parseInt(at.split(",")[0].strip())).put("y", Integer.parseInt(at.split(",")[1].strip()));
        } else if (at != null) {
            change.put("x", at);
        }
    }

    private void put(String keyword, String key) {
        String value = parts.remove(keyword);
        if (value != null) {
            change.put(key, value);
        }
    }
}
