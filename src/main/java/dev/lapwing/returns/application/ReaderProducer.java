package dev.lapwing.returns.application;

import dev.lapwing.reading.ContactQuestion;
import dev.lapwing.reading.ContactReader;
import dev.lapwing.reading.ContactReaders;
import io.quarkus.runtime.Startup;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.nio.file.Path;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Loads the lexicons once, at start, so that a bad file is refused before anyone depends on it. */
@Singleton
class ReaderProducer {
    @ConfigProperty(name = "lapwing.reading.folder", defaultValue = "shared/reading")
    Path folder;

    @Produces
    @Singleton
    @Startup
    ContactReader reader() {
        return ContactReaders.load(folder);
    }

    @Produces
    @Singleton
    ContactQuestion question() {
        return ContactQuestion.load(folder);
    }
}
