package dev.lapwing.pages;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The network between a browser and the service: it can be cut, and it can lose the answer to one request. */
final class Wire implements AutoCloseable {
    private static final int CHUNK = 8192;

    private final ServerSocket door;
    private final int servicePort;
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private volatile boolean cut;
    private volatile boolean losesAnswers;

    Wire(int servicePort) {
        this.servicePort = servicePort;
        try {
            door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        inBackground(this::accept);
    }

    String root() {
        return "http://localhost:" + door.getLocalPort();
    }

    /** Ends every connection and lets none through. */
    void cut() {
        cut = true;
        open.forEach(Wire::quietlyClose);
    }

    /** Lets requests reach the service, but no answer come back. */
    void loseAnswers() {
        losesAnswers = true;
    }

    void mend() {
        cut = false;
        losesAnswers = false;
    }

    private void accept() {
        while (!door.isClosed()) {
            try {
                Socket browser = door.accept();
                if (cut) {
                    browser.close();
                } else {
                    join(browser);
                }
            } catch (IOException closed) {
                // a browser that went away, or the end of the test
                continue;
            }
        }
    }

    private void join(Socket browser) throws IOException {
        Socket service = new Socket(InetAddress.getLoopbackAddress(), servicePort);
        open.add(browser);
        open.add(service);
        inBackground(() -> carry(browser, service, false));
        inBackground(() -> carry(service, browser, true));
    }

    private void carry(Socket from, Socket to, boolean answer) {
        try (from;
                to) {
            InputStream in = from.getInputStream();
            OutputStream out = to.getOutputStream();
            byte[] chunk = new byte[CHUNK];
            for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
                if (answer && losesAnswers) {
                    return;
                }
                out.write(chunk, 0, read);
                out.flush();
            }
        } catch (IOException gone) {
            // one side hung up; the other is closed with it
        } finally {
            open.remove(from);
            open.remove(to);
        }
    }

    private static void inBackground(Runnable work) {
        var thread = new Thread(work, "wire");
        thread.setDaemon(true);
        thread.start();
    }

    private static void quietlyClose(Socket socket) {
        try {
            socket.close();
        } catch (IOException alreadyGone) {
            // nothing is left to close
        }
    }

    @Override
    public void close() {
        cut();
        try {
            door.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
