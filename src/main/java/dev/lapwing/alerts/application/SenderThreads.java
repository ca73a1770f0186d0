package dev.lapwing.alerts.application;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jboss.logging.Logger;

/** Threads that send whatever is due when they are asked to. */
public final class SenderThreads {
    private static final Logger LOG = Logger.getLogger(SenderThreads.class);
    private static final int SECONDS_TO_FINISH = 5;

    private final Runnable sendWhatIsDue;
    private final ExecutorService threads;
    /** Places for senders that wait for a thread. */
    private final Semaphore places;

    /** Starts no thread before it is needed. */
    public SenderThreads(String name, int count, Runnable sendWhatIsDue) {
        this.sendWhatIsDue = sendWhatIsDue;
        threads = Executors.newFixedThreadPool(count, work -> new Thread(work, name));
        places = new Semaphore(2 * count);
    }

    /** Asks for a sender. One that waits for a thread will see whatever is due by then, so few need to wait. */
    public void wake() {
        if (!threads.isShutdown() && places.tryAcquire()) {
            threads.execute(this::run);
        }
    }

    private void run() {
        places.release();
        try {
            sendWhatIsDue.run();
        } catch (RuntimeException e) {
            LOG.error("Sending stopped; the next tick tries again", e);
        }
    }

    /** Lets senders finish what they are at, for a while. */
    public void stop() throws InterruptedException {
        threads.shutdown();
        if (!threads.awaitTermination(SECONDS_TO_FINISH, TimeUnit.SECONDS)) {
            threads.shutdownNow();
        }
    }
}
