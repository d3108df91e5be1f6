package crumbclock.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;

/** Time that has passed, by the clock and on the processors, since it was started. */
public final class Stopwatch {

    private final long wallNanos = System.nanoTime();
    private final long cpuNanos = processNanos();

    public double wallSeconds() {
        return (System.nanoTime() - wallNanos) / 1e9;
    }

    /** Of the whole process: all threads, also those that compile and collect. */
    public double cpuSeconds() {
        return (processNanos() - cpuNanos) / 1e9;
    }

    private static long processNanos() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }
}
