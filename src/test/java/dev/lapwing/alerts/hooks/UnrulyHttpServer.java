package dev.lapwing.alerts.hooks;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Takes webhooks and misbehaves as it is told. */
final class UnrulyHttpServer implements AutoCloseable {
    /** How it answers the next calls. */
    enum Manner {
        TAKES,
        /** 500. */
        FAILS,
        /** 302 to itself. */
        REDIRECTS,
        /** Never answers. */
        STALLS,
        /** 410. */
        IS_GONE
    }

    /** One call as it came. */
    record Call(String path, String event, String delivery, long timestamp, String signature, String body) {}

    private final List<Call> calls = new CopyOnWriteArrayList<>();
    private final CountDownLatch closing = new CountDownLatch(1);
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final HttpServer server;
    private volatile Manner manner = Manner.TAKES;

    UnrulyHttpServer() throws IOException {
        server = HttpServer.create(new InetSocketAddress("127.0.0.1", 0), 0);
        server.setExecutor(threads);
        server.createContext("/", this::answer);
        server.start();
    }

    String address() {
        return "http://127.0.0.1:" + server.getAddress().getPort() + "/hook";
    }

    void behave(Manner how) {
        manner = how;
    }

    List<Call> calls() {
        return calls;
    }

    private void answer(HttpExchange exchange) throws IOException {
        var headers = exchange.getRequestHeaders();
        String body = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
        calls.add(new Call(
                exchange.getRequestURI().getPath(),
                headers.getFirst("Lapwing-Event"),
                headers.getFirst("Lapwing-Delivery"),
                Long.parseLong(headers.getFirst("Lapwing-Timestamp")),
                headers.getFirst("Lapwing-Signature"),
                body));
        switch (manner) {
            case TAKES -> say(exchange, 204);
            case FAILS -> say(exchange, 500);
            case IS_GONE -> say(exchange, 410);
            case REDIRECTS -> {
                exchange.getResponseHeaders().set("Location", "/elsewhere");
                say(exchange, 302);
            }
            case STALLS -> stall(exchange);
        }
    }

    private void stall(HttpExchange exchange) {
        try {
            closing.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        exchange.close();
    }

    private static void say(HttpExchange exchange, int status) throws IOException {
        exchange.sendResponseHeaders(status, -1);
        exchange.close();
    }

    @Override
    public void close() {
        closing.countDown();
        server.stop(0);
        threads.shutdownNow();
    }
}
