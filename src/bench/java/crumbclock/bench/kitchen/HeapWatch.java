package crumbclock.bench.kitchen;

import com.sun.management.GarbageCollectionNotificationInfo;
import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import javax.management.NotificationEmitter;
import javax.management.openmbean.CompositeData;

/** The most memory that objects took just after any garbage collection since {@link #restart}: what is really in use. */
final class HeapWatch {

    private final Set<String> heapPools = ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP).map(MemoryPoolMXBean::getName).collect(Collectors.toSet());
    private final AtomicLong mostBytes = new AtomicLong();

    HeapWatch() {
        for (GarbageCollectorMXBean collector : ManagementFactory.getGarbageCollectorMXBeans()) {
            ((NotificationEmitter) collector).addNotificationListener((notification, nothing) -> {
                if (notification.getUserData() instanceof CompositeData data) {
                    after(GarbageCollectionNotificationInfo.from(data));
                }
            }, notification -> notification.getType()
                    .equals(GarbageCollectionNotificationInfo.GARBAGE_COLLECTION_NOTIFICATION), null);
        }
    }

    private void after(GarbageCollectionNotificationInfo collection) {
        long bytes = collection.getGcInfo().getMemoryUsageAfterGc().entrySet().stream()
                .filter(pool -> heapPools.contains(pool.getKey())).mapToLong(pool -> pool.getValue().getUsed()).sum();
        mostBytes.accumulateAndGet(bytes, Math::max);
    }

    /** Clears away what is left of earlier measurements and begins anew. */
    void restart() {
        System.gc();
        mostBytes.set(0);
    }

    long mostMib() {
        return mostBytes.get() >> 20;
    }
}
