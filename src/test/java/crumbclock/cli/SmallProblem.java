package crumbclock.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Two dozen cupcakes for one person with time enough; all figures are invented. */
final class SmallProblem {

    private static final String PROBLEM = """
            {
              "title": "Two dozen",
              "start": "2026-06-05T08:00",
              "end": "2026-06-05T20:00",
              "zone": "Europe/London",
              "kitchen": {
                "name": "Test kitchen",
                "people": [{ "id": "ada", "name": "Ada", "shifts": { "friday": "08:00-20:00" }, "skills": ["baking", "decorating"] }],
                "ovens": [{ "id": "oven", "preheatMinutes": 15, "racks": [{ "width": 460, "depth": 360, "clearHeight": 140 },
                                                                          { "width": 460, "depth": 360, "clearHeight": 140 }] }],
                "stores": [{ "id": "fridge", "kind": "fridge", "gap": 25, "wallGap": 0,
                             "shelves": [{ "id": "shelf", "width": 900, "depth": 600, "clearHeight": 300 }] }],
                "surfaces": [{ "id": "rack", "kind": "rack", "area": "0.8 m2" }, { "id": "bench", "kind": "bench", "area": "1 m2" }],
                "equipment": [{ "id": "mixer", "capacity": "4.8 L" }, { "id": "cupcake-tin", "count": 2 }]
              },
              "orders": "orders.csv"
            }
            """;
    private static final String ORDERS = """
            order,title,method,size,layers,pieces,servings,hand_over,hand_over_from,way
            A1,Two dozen,cupcakes-swirl,70 mm,,24,24,2026-06-05 18:00,2026-06-05 17:00,pick-up
            """;

    private SmallProblem() {
    }

    /** @return the problem file */
    static Path in(Path folder) throws IOException {
        Files.writeString(folder.resolve("orders.csv"), ORDERS);
        return Files.writeString(folder.resolve("two-dozen.json"), PROBLEM);
    }

    /** The same with two mistakes in its orders and one in its times. */
    static Path withMistakesIn(Path folder) throws IOException {
        Files.writeString(folder.resolve("orders.csv"), ORDERS.replace("2026-06-05 18:00", "25:10").replace("pick-up", "by owl"));
        return Files.writeString(folder.resolve("two-dozen.json"), PROBLEM.replace("2026-06-05T20:00", "tomorrow"));
    }
}
