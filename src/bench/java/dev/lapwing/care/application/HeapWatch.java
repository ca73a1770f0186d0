package dev.lapwing.care.application;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;

/** Notes the most heap in use, sampled, with garbage and without what the last collection freed. */
final class HeapWatch implements AutoCloseable {
    private static final int PAUSE_MILLIS = 20;

    private final Thread sampler = new Thread(this::sample, "heap watch");
    private volatile boolean watching = true;
    private volatile long most;
    private volatile long mostKept;

    HeapWatch() {
        sampler.setDaemon(true);
        sampler.start();
    }

    private void sample() {
        while (watching) {
            long used = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
            most = Math.max(most, used);
            mostKept = Math.max(mostKept, kept());
            try {
                Thread.sleep(PAUSE_MILLIS);
            } catch (InterruptedException end) {
                return;
            }
        }
    }

    private static long kept() {
        long kept = 0;
        for (MemoryPoolMXBean pool : ManagementFactory.getMemoryPoolMXBeans()) {
            MemoryUsage afterCollection = pool.getType() == MemoryType.HEAP ? pool.getCollectionUsage() : null;
            kept += afterCollection == null ? 0 : afterCollection.getUsed();
        }
        return kept;
    }

    long mostMegabytes() {
        return most >> 20;
    }

    long keptMegabytes() {
        return mostKept >> 20;
    }

    @Override
    public void close() {
        watching = false;
        sampler.interrupt();
    }
}
