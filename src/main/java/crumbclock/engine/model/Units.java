package crumbclock.engine.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * Groups tasks into units: maximal sets tied by waits whose range is short. A wait with hours to spare does not tie;
 * the search then decides what happens in between. Ties that would make two units wait for each other make them one.
 */
public final class Units {

    /** Longest range of a wait, in minutes, that still ties two tasks into one unit. */
    static final int TIE_RANGE = 90;

    public final Unit[] fine;
    /** Unit of each task, by task index. */
    public final int[] unitOf;
    /** Units with a task of each order, ascending. */
    public final int[][] unitsOfOrder;
    /** The same with the units of batches that the order uses. */
    private final int[][] unitsFor;

    private final Task[] tasks;
    private final int[] parent;
    /** Tasks in an order in which each comes after those it waits for, and the place of each in it. */
    private final Task[] inOrder;
    private final int[] rank;

    /** @param ordersOfOwner orders that use a batch, by its owner number */
    Units(Task[] tasks, int orderCount, int[][] ordersOfOwner) {
        this.tasks = tasks;
        parent = new int[tasks.length];
        Arrays.setAll(parent, index -> index);
        for (Task task : tasks) {
            for (Link link : task.after) {
                if (ties(link)) {
                    join(task.index, link.to().index);
                }
            }
        }
        inOrder = inOrder(tasks);
        rank = new int[tasks.length];
        for (int at = 0; at < inOrder.length; at++) {
            rank[inOrder[at].index] = at;
        }
        joinCycles();
        unitOf = new int[tasks.length];
        fine = units(ordersOfOwner);
        List<TreeSet<Integer>> own = new ArrayList<>();
        List<TreeSet<Integer>> all = new ArrayList<>();
        for (int order = 0; order < orderCount; order++) {
            own.add(new TreeSet<>());
            all.add(new TreeSet<>());
        }
        for (Unit unit : fine) {
            for (int order : unit.orders()) {
                own.get(order).add(unit.index());
                all.get(order).add(unit.index());
            }
            for (int order : unit.serves()) {
                all.get(order).add(unit.index());
            }
        }
        unitsOfOrder = own.stream().map(Units::ascending).toArray(int[][]::new);
        unitsFor = all.stream().map(Units::ascending).toArray(int[][]::new);
    }

    /** Units with a task of the order or of a batch that it uses, ascending. */
    public int[] unitsFor(int order) {
        return unitsFor[order];
    }

    private static int[] ascending(TreeSet<Integer> numbers) {
        return numbers.stream().mapToInt(Integer::intValue).toArray();
    }

    private static boolean ties(Link link) {
        if (!link.hasMost() || link.from().fixed || link.to().fixed) {
            return false;
        }
        long range = (long) link.most() - link.least();
        if (link.from().elastic) {
            range += (long) link.from().most - link.from().least;
        }
        return range <= TIE_RANGE;
    }

    /** Members of several units in an order in which each comes after those it waits for. */
    public Task[] inOrder(List<Task> members) {
        int[] ranks = members.stream().mapToInt(task -> rank[task.index]).toArray();
        Arrays.sort(ranks);
        Task[] sorted = new Task[ranks.length];
        Arrays.setAll(sorted, at -> inOrder[ranks[at]]);
        return sorted;
    }

    /** By the longest number of links from a task that waits for nothing. */
    private static Task[] inOrder(Task[] tasks) {
        int[] depth = depths(tasks);
        return Arrays.stream(tasks)
                .sorted(Comparator.comparingInt((Task task) -> depth[task.index]).thenComparingInt(task -> task.index))
                .toArray(Task[]::new);
    }

    private static int[] depths(Task[] tasks) {
        int[] depth = new int[tasks.length];
        int[] open = new int[tasks.length];
        List<Task> ready = new ArrayList<>();
        for (Task task : tasks) {
            open[task.index] = task.before.length;
            if (open[task.index] == 0) {
                ready.add(task);
            }
        }
        for (int next = 0; next < ready.size(); next++) {
            Task task = ready.get(next);
            for (Link link : task.after) {
                Task to = link.to();
                depth[to.index] = Math.max(depth[to.index], depth[task.index] + 1);
                if (--open[to.index] == 0) {
                    ready.add(to);
                }
            }
        }
        if (ready.size() < tasks.length) {
            throw new IllegalArgumentException("the waits go round in a circle");
        }
        return depth;
    }

    private int find(int task) {
        int root = task;
        while (parent[root] != root) {
            root = parent[root];
        }
        for (int at = task; at != root; ) {
            int next = parent[at];
            parent[at] = root;
            at = next;
        }
        return root;
    }

    private void join(int a, int b) {
        int rootA = find(a);
        int rootB = find(b);
        // the smaller index leads, so that numbering does not depend on the order of joining
        parent[Math.max(rootA, rootB)] = Math.min(rootA, rootB);
    }

    /**
     * Joins groups that wait for each other: walks the groups depth first and joins every group on the path between
     * two meetings of the same one.
     */
    private void joinCycles() {
        boolean joined = true;
        while (joined) {
            joined = false;
            int[] state = new int[tasks.length];
            List<List<Integer>> next = groupSuccessors();
            List<Integer> path = new ArrayList<>();
            for (Task task : tasks) {
                int root = find(task.index);
                if (state[root] == 0 && walk(root, state, next, path)) {
                    joined = true;
                    break;
                }
            }
        }
    }

    private List<List<Integer>> groupSuccessors() {
        List<List<Integer>> next = new ArrayList<>();
        for (int index = 0; index < tasks.length; index++) {
            next.add(new ArrayList<>());
        }
        for (Task task : tasks) {
            for (Link link : task.after) {
                int from = find(task.index);
                int to = find(link.to().index);
                if (from != to) {
                    next.get(from).add(to);
                }
            }
        }
        return next;
    }

    /** Depth first from {@code root} with an explicit path; joins and answers true at the first circle. */
    private boolean walk(int root, int[] state, List<List<Integer>> next, List<Integer> path) {
        int[] position = new int[tasks.length];
        path.clear();
        path.add(root);
        state[root] = 1;
        while (!path.isEmpty()) {
            int at = path.get(path.size() - 1);
            if (position[at] == next.get(at).size()) {
                state[at] = 2;
                path.remove(path.size() - 1);
                continue;
            }
            int to = next.get(at).get(position[at]++);
            if (state[to] == 1) {
                for (int index = path.indexOf(to); index < path.size(); index++) {
                    join(to, path.get(index));
                }
                return true;
            }
            if (state[to] == 0) {
                state[to] = 1;
                path.add(to);
            }
        }
        return false;
    }

    private Unit[] units(int[][] ordersOfOwner) {
        int[] unitOfRoot = new int[tasks.length];
        Arrays.fill(unitOfRoot, -1);
        List<List<Task>> members = new ArrayList<>();
        for (Task task : tasks) {
            int root = find(task.index);
            if (unitOfRoot[root] < 0) {
                unitOfRoot[root] = members.size();
                members.add(new ArrayList<>());
            }
            unitOf[task.index] = unitOfRoot[root];
            members.get(unitOfRoot[root]).add(task);
        }
        Unit[] units = new Unit[members.size()];
        for (int unit = 0; unit < units.length; unit++) {
            TreeSet<Integer> before = new TreeSet<>();
            TreeSet<Integer> orders = new TreeSet<>();
            TreeSet<Integer> serves = new TreeSet<>();
            for (Task task : members.get(unit)) {
                if (task.order >= 0) {
                    orders.add(task.order);
                }
                for (int order : ordersOfOwner[task.owner]) {
                    serves.add(order);
                }
                for (Link link : task.before) {
                    before.add(unitOf[link.from().index]);
                }
            }
            before.remove(unit);
            units[unit] = new Unit(unit, inOrder(members.get(unit)),
                    ascending(before), ascending(orders), ascending(serves));
        }
        return units;
    }
}
