package dev.lapwing.demo;

import io.quarkus.runtime.StartupEvent;
import io.quarkus.vertx.http.HttpServerStart;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.event.ObservesAsync;
import jakarta.inject.Inject;
import java.io.PrintStream;
import java.nio.file.Path;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Loads the demo at start and says where to look. */
@ApplicationScoped
class DemoStart {
    private static final int AFTER_THE_CHECKS = 100;

    @ConfigProperty(name = "lapwing.demo")
    boolean demo;

    @ConfigProperty(name = "lapwing.demo.folder", defaultValue = "shared/demo")
    Path folder;

    @Inject
    LoadingDemo loading;

    @Inject
    DemoPeople people;

    private volatile boolean loaded;

    void starting(@Observes @Priority(AFTER_THE_CHECKS) StartupEvent event) {
        loaded = demo && loading.loadIfEmpty();
    }

    void listening(@ObservesAsync HttpServerStart server) {
        if (demo) {
            String address = "http://" + server.options().getHost() + ":"
                    + server.options().getPort() + "/";
            greet(System.out, address);
        }
    }

    void greet(PrintStream out, String address) {
        out.println();
        out.println("Lapwing is at " + address);
        if (!loaded) {
            out.println("The database holds other data, so the invented fleet was not loaded.");
            return;
        }
        out.println("It holds the invented fleet of Halden Ridge. Sign in with the password \"" + people.password()
                + "\" as:");
        for (DemoFiles.Row row : new DemoFiles(folder).staff()) {
            out.printf(
                    "  %-12s %-18s %s%n",
                    row.text("username"),
                    row.text("fullName"),
                    row.text("depots").replace(" ", ", "));
        }
        out.println();
    }
}
