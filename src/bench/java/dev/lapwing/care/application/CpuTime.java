package dev.lapwing.care.application;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Processor time of this process, its compiler and collector included, and of the database's process that serves it:
 * what to compare on a machine that others load too. Reads Linux' /proc.
 */
final class CpuTime {
    private static final double TICKS_PER_SECOND = 100;

    private final OperatingSystemMXBean system = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
    private final long databaseProcess;

    /** @param databaseProcess id of the process, or 0 when the database runs in this one */
    CpuTime(long databaseProcess) {
        this.databaseProcess = databaseProcess;
    }

    double seconds() {
        return system.getProcessCpuTime() / 1e9 + (databaseProcess == 0 ? 0 : ofProcess());
    }

    private double ofProcess() {
        try {
            String stat = Files.readString(Path.of("/proc/" + databaseProcess + "/stat"));
            String[] fields = stat.substring(stat.lastIndexOf(')') + 2).split(" ");
            return (Long.parseLong(fields[11]) + Long.parseLong(fields[12])) / TICKS_PER_SECOND;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
