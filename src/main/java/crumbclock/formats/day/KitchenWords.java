package crumbclock.formats.day;

import crumbclock.domain.day.KitchenEvent;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What was said of the whole kitchen.
 *
 * @param kind    as the word alone says; an oven that is warm or a fridge that is dead is sorted out by its name
 * @param subject as written; empty for a power cut
 * @param times   from-to, "until" a time, or empty
 */
record KitchenWords(KitchenEvent.Kind kind, String subject, String times, boolean isIll) {

    private static final String TIMES = "(?: (?:from )?(until .+|\\d.*))?";
    private static final Pattern POWER = Pattern.compile("(?:power cut|power out|no power)" + TIMES);
    private static final Pattern THING = Pattern.compile("(.+?) (?:is )?(dead|broken|warm|failed)" + TIMES);
    private static final Pattern PERSON = Pattern.compile("(.+?) (?:is )?(ill|sick|away|gone)" + TIMES);

    static Optional<KitchenWords> of(String text) {
        String plain = text.toLowerCase(Locale.ROOT);
        var power = POWER.matcher(plain);
        if (power.matches()) {
            return Optional.of(new KitchenWords(KitchenEvent.Kind.POWER_CUT, "", orNothing(power.group(1)), false));
        }
        var thing = THING.matcher(plain);
        if (thing.matches()) {
            boolean warm = thing.group(2).equals("warm");
            return Optional.of(new KitchenWords(warm ? KitchenEvent.Kind.STORE_WARM : KitchenEvent.Kind.OVEN_DEAD,
                    thing.group(1), orNothing(thing.group(3)), false));
        }
        var person = PERSON.matcher(plain);
        if (person.matches()) {
            boolean ill = person.group(2).equals("ill") || person.group(2).equals("sick");
            return Optional.of(new KitchenWords(KitchenEvent.Kind.PERSON_AWAY, person.group(1), orNothing(person.group(3)), ill));
        }
        return Optional.empty();
    }

    private static String orNothing(String text) {
        return text == null ? "" : text.strip();
    }
}
