package dev.lapwing.alerts.mail;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Speaks SMTP and misbehaves as it is told. */
public final class UnrulySmtpServer implements AutoCloseable {
    /** How it treats the next connections. */
    public enum Manner {
        TAKES,
        /** 451 to the recipient. */
        PUTS_OFF,
        /** 550 to the recipient. */
        REFUSES,
        /** 554 after the text. */
        REFUSES_TEXT,
        /** 421 in the middle of the text, and gone. */
        DROPS_IN_TEXT,
        /** Takes the connection and never says a word. */
        STALLS,
        /** 530 to the sender. */
        WANTS_SIGN_IN
    }

    private final List<String> taken = new CopyOnWriteArrayList<>();
    private final List<String> recipients = new CopyOnWriteArrayList<>();
    private final ServerSocket socket;
    private volatile Manner manner = Manner.TAKES;
    private volatile String unwanted;

    public UnrulySmtpServer(int port) throws IOException {
        socket = new ServerSocket();
        socket.setReuseAddress(true);
        socket.bind(new InetSocketAddress("127.0.0.1", port));
        start(this::accept);
    }

    public int port() {
        return socket.getLocalPort();
    }

    public void behave(Manner how) {
        manner = how;
    }

    /** Refuses this one recipient for good, whatever the manner. */
    public void refuse(String recipient) {
        unwanted = recipient;
    }

    /** The texts it took responsibility for. */
    public List<String> taken() {
        return taken;
    }

    /** The recipients of what it took, in order. */
    public List<String> recipients() {
        return recipients;
    }

    private void accept() {
        while (!socket.isClosed()) {
            try {
                Socket caller = socket.accept();
                start(() -> talk(caller));
            } catch (IOException closed) {
                return;
            }
        }
    }

    private static void start(Runnable work) {
        var thread = new Thread(work, "unruly-smtp");
        thread.setDaemon(true);
        thread.start();
    }

    private void talk(Socket caller) {
        try (caller;
                var in = new BufferedReader(
                        new InputStreamReader(caller.getInputStream(), StandardCharsets.ISO_8859_1));
                var out = caller.getOutputStream()) {
            if (manner == Manner.STALLS) {
                in.readLine();
                return;
            }
            say(out, "220 unruly");
            converse(in, out);
        } catch (IOException callerLeft) {
            return;
        }
    }

    private void converse(BufferedReader in, OutputStream out) throws IOException {
        String recipient = "";
        for (String line = in.readLine(); line != null; line = in.readLine()) {
            if (line.startsWith("MAIL")) {
                say(out, manner == Manner.WANTS_SIGN_IN ? "530 sign in first" : "250 ok");
            } else if (line.startsWith("RCPT")) {
                recipient = line.substring(line.indexOf('<') + 1, line.indexOf('>'));
                say(out, answerTo(recipient));
            } else if (line.equals("DATA")) {
                say(out, "354 go on");
                if (!text(in, out, recipient)) {
                    return;
                }
            } else if (line.equals("QUIT")) {
                say(out, "221 bye");
                return;
            } else {
                say(out, "250 ok");
            }
        }
    }

    private String answerTo(String recipient) {
        if (manner == Manner.REFUSES || recipient.equals(unwanted)) {
            return "550 5.1.1 no such person";
        }
        return manner == Manner.PUTS_OFF ? "451 4.3.0 later please" : "250 ok";
    }

    private boolean text(BufferedReader in, OutputStream out, String recipient) throws IOException {
        var text = new StringBuilder();
        for (String line = in.readLine(); line != null && !line.equals("."); line = in.readLine()) {
            if (manner == Manner.DROPS_IN_TEXT) {
                return false;
            }
            text.append(line).append("\r\n");
        }
        if (manner == Manner.REFUSES_TEXT) {
            say(out, "554 5.7.1 not that");
            return true;
        }
        taken.add(text.toString());
        recipients.add(recipient);
        say(out, "250 taken");
        return true;
    }

    private static void say(OutputStream out, String line) throws IOException {
        out.write((line + "\r\n").getBytes(StandardCharsets.ISO_8859_1));
        out.flush();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
