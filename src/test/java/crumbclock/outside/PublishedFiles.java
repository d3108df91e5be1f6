package crumbclock.outside;

import crumbclock.outside.Network.Lag;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Reads instances in the text forms in which they were published. */
public final class PublishedFiles {

    private PublishedFiles() {
    }

    /** A small instance that lies beside the tests; its origin is told in the README there. */
    static String resource(String name) {
        try (var in = PublishedFiles.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.US_ASCII);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.US_ASCII);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Job shop: jobs and machines, then for each job pairs of machine and duration; lines with # are remarks. */
    public static Network jobShop(String name, String text) {
        List<int[]> lines = numbers(text.lines().filter(line -> !line.startsWith("#")).toList());
        int jobs = lines.get(0)[0];
        int machines = lines.get(0)[1];
        int[] durations = new int[jobs * machines + 1];
        int[][] demands = new int[durations.length][machines];
        List<Lag> lags = new ArrayList<>();
        for (int job = 0; job < jobs; job++) {
            for (int step = 0; step < machines; step++) {
                int activity = job * machines + step;
                durations[activity] = lines.get(job + 1)[2 * step + 1];
                demands[activity][lines.get(job + 1)[2 * step]] = 1;
                int next = step + 1 < machines ? activity + 1 : durations.length - 1;
                lags.add(new Lag(activity, next, durations[activity]));
            }
        }
        int[] capacities = new int[machines];
        Arrays.fill(capacities, 1);
        return new Network(name, durations, demands, capacities, lags);
    }

    /** PSPLIB's single-mode form ({@code .sm}): an activity starts when all its predecessors have ended. */
    public static Network project(String name, String text) {
        List<String> lines = text.lines().toList();
        int size = Integer.parseInt(after(lines, "jobs (incl. supersource/sink )").split(":")[1].strip());
        List<int[]> successors = numbers(block(lines, "PRECEDENCE RELATIONS:", 2, size));
        List<int[]> requests = numbers(block(lines, "REQUESTS/DURATIONS:", 3, size));
        int[] capacities = numbers(block(lines, "RESOURCEAVAILABILITIES:", 2, 1)).get(0);
        int[] durations = requests.stream().mapToInt(row -> row[2]).toArray();
        int[][] demands = requests.stream().map(row -> Arrays.copyOfRange(row, 3, row.length)).toArray(int[][]::new);
        List<Lag> lags = new ArrayList<>();
        for (int[] row : successors) {
            for (int at = 3; at < 3 + row[2]; at++) {
                lags.add(new Lag(row[0] - 1, row[at] - 1, durations[row[0] - 1]));
            }
        }
        return new Network(name, durations, demands, capacities, lags);
    }

    private static String after(List<String> lines, String start) {
        return lines.stream().filter(line -> line.startsWith(start)).findFirst().orElseThrow();
    }

    private static List<String> block(List<String> lines, String title, int offset, int rows) {
        int at = lines.indexOf(title) + offset;
        return lines.subList(at, at + rows);
    }

    /** ProGen/max's form ({@code .SCH}): arcs with lags from start to start, negative ones for maximum lags. */
    public static Network projectWithLags(String name, String text) {
        List<int[]> lines = numbers(text.replace('[', ' ').replace(']', ' ').lines().toList());
        int size = lines.get(0)[0] + 2;
        List<Lag> lags = new ArrayList<>();
        int[] durations = new int[size];
        int[][] demands = new int[size][];
        for (int activity = 0; activity < size; activity++) {
            int[] arcs = lines.get(1 + activity);
            for (int arc = 0; arc < arcs[2]; arc++) {
                lags.add(new Lag(activity, arcs[3 + arc], arcs[3 + arcs[2] + arc]));
            }
            int[] needs = lines.get(1 + size + activity);
            durations[activity] = needs[2];
            demands[activity] = Arrays.copyOfRange(needs, 3, needs.length);
        }
        return new Network(name, durations, demands, lines.get(1 + 2 * size), lags);
    }

    private static List<int[]> numbers(List<String> lines) {
        return lines.stream().map(String::strip).filter(line -> !line.isEmpty())
                .map(line -> Arrays.stream(line.split("\\s+")).mapToInt(Integer::parseInt).toArray()).toList();
    }
}
