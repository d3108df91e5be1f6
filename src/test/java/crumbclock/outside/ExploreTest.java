package crumbclock.outside;

import crumbclock.bound.Bound;
import crumbclock.domain.plan.LowerBound;
import java.nio.file.*;
import java.util.*;
import org.junit.jupiter.api.Test;

class ExploreTest {
    static final Path DATA = Path.of("/work/shared/data");

    @Test
    void psplib() throws Exception {
        Map<String, List<Double>> gaps = new TreeMap<>(), cps = new TreeMap<>();
        Map<String, Integer> tight = new TreeMap<>();
        long t0 = System.nanoTime();
        int n = 0;
        for (String line : Files.readAllLines(DATA.resolve("psplib/reference.csv"))) {
            String[] c = line.split(",", -1);
            if (!c[0].startsWith("j")) continue;
            String set = c[0].startsWith("j120") ? "j120" : c[0].substring(0, 3);
            if (!set.equals("j30") && (c[0].hashCode() & 7) != 0) continue;
            Path f = DATA.resolve("psplib").resolve(set).resolve(c[0]);
            if (!Files.exists(f)) continue;
            var problem = PublishedProblems.of(PublishedFiles.project(c[0], PublishedFiles.text(f)));
            LowerBound b = Bound.of(problem);
            int best = Integer.parseInt(c[4].isEmpty() ? "0" : c[4]);
            n++;
            if (b.endMinute() > best) System.out.println("WRONG " + c[0] + " " + b.endMinute() + " > " + best + " " + line);
            gaps.computeIfAbsent(set, k -> new ArrayList<>()).add(100.0 * (best - b.endMinute()) / best);
            cps.computeIfAbsent(set, k -> new ArrayList<>()).add(100.0 * (best - Integer.parseInt(c[1])) / best);
            if (b.endMinute() == best) tight.merge(set, 1, Integer::sum);
        }
        System.out.println("ms each " + (System.nanoTime() - t0) / 1e6 / n);
        for (String s : gaps.keySet()) System.out.println(s + " n " + gaps.get(s).size() + " gap " + avg(gaps.get(s)) + " cp gap " + avg(cps.get(s)) + " tight " + tight.get(s));
    }
    static double avg(List<Double> l) { return l.stream().mapToDouble(x -> x).average().orElse(-1); }

    @Test
    void jobshop() throws Exception {
        List<Double> gaps = new ArrayList<>();
        for (String line : Files.readAllLines(DATA.resolve("jobshop/reference.csv"))) {
            String[] c = line.split(",", -1);
            Path f = DATA.resolve("jobshop").resolve(c[0] + ".jss");
            if (!Files.exists(f)) continue;
            LowerBound b = Bound.of(PublishedProblems.of(PublishedFiles.jobShop(c[0], PublishedFiles.text(f))));
            System.out.println(line + " -> " + b.endMinute());
        }
    }
}
