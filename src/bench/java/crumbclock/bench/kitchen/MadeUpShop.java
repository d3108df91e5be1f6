package crumbclock.bench.kitchen;

import com.fasterxml.jackson.databind.ObjectMapper;
import crumbclock.bench.kitchen.Menu.Dish;
import crumbclock.domain.problem.Problem;
import crumbclock.formats.ProblemReader;
import crumbclock.formats.issue.IssueLog;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/** Writes the problem files of a made-up shop: the same for the same size and seed. They are read as a user's would be. */
public final class MadeUpShop {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final ShopSize size;
    private final Random random;

    private MadeUpShop(ShopSize size, long seed) {
        this.size = size;
        this.random = new Random(seed);
    }

    /** Writes problem.json, kitchen.json and orders.csv into the folder. */
    public static Path write(ShopSize size, long seed, Path folder) {
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve("kitchen.json"), JSON.writeValueAsString(ShopFile.of(size)));
            Files.writeString(folder.resolve("orders.csv"), new MadeUpShop(size, seed).orders());
            Path problem = folder.resolve("problem.json");
            Files.writeString(problem, JSON.writeValueAsString(problem(size, seed)));
            return problem;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Reads a problem that has to be without a fault. */
    public static Problem read(Path file) {
        IssueLog log = new IssueLog();
        return ProblemReader.read(file, log).orElseThrow(() -> new IllegalStateException(log.sorted().toString()));
    }

    private static Map<String, Object> problem(ShopSize size, long seed) {
        Map<String, Object> problem = new LinkedHashMap<>();
        problem.put("title", size.cakes() + " cakes, seed " + seed);
        problem.put("start", size.firstDay() + "T05:30");
        problem.put("end", size.firstDay().plusDays(size.days() - 1) + "T20:00");
        problem.put("zone", "Europe/London");
        problem.put("kitchen", "kitchen.json");
        problem.put("orders", "orders.csv");
        return problem;
    }

    private String orders() {
        StringBuilder table = new StringBuilder("order,cake,method,size,layers,pieces,hand_over,hand_over_from,way,"
                + "road_minutes,free_from,message,options\n");
        int order = 0;
        for (int cake = 0; cake < size.cakes(); ) {
            order++;
            Dish dish = Menu.any(random);
            int pieces = dish.pieces() > 0 && cake + 1 < size.cakes() && random.nextInt(3) == 0 ? 2 : 1;
            String handOver = handOver((double) cake / size.cakes());
            for (int part = 1; part <= pieces; part++) {
                table.append(row(order, part, dish, handOver));
            }
            cake += pieces;
        }
        return table.toString();
    }

    /** Orders are spread evenly over the days, and over each day from nine to five, with an hour in which to come. */
    private String handOver(double share) {
        LocalDate day = size.firstDay().plusDays(size.leadDays() + (int) (share * size.handOverDays()));
        int hour = 10 + random.nextInt(8);
        int minute = 15 * random.nextInt(4);
        return String.format(Locale.ROOT, "%sT%02d:%02d,%sT%02d:%02d", day, hour, minute, day, hour - 1, minute);
    }

    private String row(int order, int part, Dish dish, String handOver) {
        boolean delivery = random.nextInt(10) == 0 && part == 1;
        String freeFrom = !dish.method().contains("sheet") && random.nextInt(12) == 0 ? "nuts" : "";
        String message = dish.pieces() == 0 && !dish.method().equals("cheesecake") && random.nextInt(3) == 0 ? "Well done" : "";
        return String.join(",", String.format(Locale.ROOT, "K%04d", order), Integer.toString(part), dish.method(),
                dish.sizes().get(random.nextInt(dish.sizes().size())), dish.layers(),
                dish.pieces() > 0 ? Integer.toString(dish.pieces()) : "",
                part == 1 ? handOver : ",", part == 1 ? delivery ? "delivery" : "pick-up" : "", delivery ? "20" : "", freeFrom, message,
                dish.options()) + "\n";
    }
}
