package crumbclock.bench.kitchen;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which kitchens: problem files, and made-up shops by their number of cakes. */
public final class ShopOptions {

    @Parameters(paramLabel = "PROBLEM", arity = "0..*", description = "Problem files, such as problems/*.json.")
    private List<Path> files = List.of();

    @Option(names = "--cakes", split = ",", paramLabel = "N", description = "Made-up shops with so many cakes.")
    private List<Integer> cakes = List.of();

    @Option(names = "--shops", defaultValue = "target/made-up-shops", paramLabel = "FOLDER",
            description = "Where the files of made-up shops go (default: ${DEFAULT-VALUE}).")
    private Path shops;

    /** The named files, then the made-up shops, written anew. */
    public List<Path> problems(long seed) {
        List<Path> problems = new ArrayList<>(files);
        for (int count : cakes) {
            problems.add(MadeUpShop.write(ShopSize.of(count), seed, shops.resolve(count + "-cakes-seed-" + seed)));
        }
        return problems;
    }
}
