package crumbclock.formats.issue;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Finds known names that an unknown one was probably meant to be, for the advice at the end of an issue. */
public final class Nearest {

    private static final int MOST_LISTED = 12;

    private Nearest() {
    }

    /** {@code Did you mean "icing-1"?}, or the list of what is known when nothing is near; never empty. */
    public static String advice(String unknown, Collection<String> known) {
        if (known.isEmpty()) {
            return "There is none to choose from.";
        }
        List<String> near = to(unknown, known);
        if (!near.isEmpty()) {
            return "Did you mean " + near.stream().map(name -> '"' + name + '"').collect(Collectors.joining(" or ")) + "?";
        }
        String listed = known.stream().sorted().distinct().limit(MOST_LISTED).collect(Collectors.joining(", "));
        long more = known.stream().distinct().count() - MOST_LISTED;
        return "Known: " + listed + (more > 0 ? " and " + more + " more." : ".");
    }

    /** The nearest name within a third of the word's letters of it, or two that are equally near. */
    static List<String> to(String unknown, Collection<String> known) {
        String sought = plain(unknown);
        int most = Math.max(1, sought.length() / 3);
        record Candidate(String name, int distance) {
        }
        var near = known.stream().distinct()
                .map(name -> new Candidate(name, distance(sought, plain(name))))
                .filter(candidate -> candidate.distance() <= most)
                .sorted(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::name))
                .limit(2).toList();
        return near.stream().filter(candidate -> candidate.distance() == near.get(0).distance()).map(Candidate::name).toList();
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[ _.-]", "");
    }

    /** Letters to add, drop, change or swap with their neighbour (optimal string alignment). */
    static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                cost[i][j] = Math.min(cost[i - 1][j - 1] + change, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
                }
            }
        }
        return cost[a.length()][b.length()];
    }
}
