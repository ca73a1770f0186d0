package dev.lapwing.alerts.mail;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;

/** What an operator sets about mail. */
@ConfigMapping(prefix = "lapwing.mail")
public interface MailSettings {
    /** Where mails go. */
    enum Transport {
        FOLDER,
        SMTP
    }

    /** How the connection to the server is secured. */
    enum Tls {
        /** Begun in the clear and secured before anything else; refused when the server cannot. */
        STARTTLS,
        /** From the first byte. */
        IMPLICIT,
        NONE
    }

    @WithDefault("folder")
    Transport transport();

    @WithDefault("data/mail")
    Path folder();

    /** Sender of all mails, with or without a name. */
    @WithDefault("Lapwing <lapwing@haldenridge.example>")
    String from();

    Smtp smtp();

    @WithDefault("5s")
    Duration firstPause();

    @WithDefault("30m")
    Duration longestPause();

    /** The longest pause while the server cannot be reached. */
    @WithDefault("1m")
    Duration outagePause();

    /** After so many refusals a mail is given up. */
    @WithDefault("20")
    int attempts();

    /** How often the outbox is looked through for mails that wait. */
    @WithDefault("3s")
    Duration tick();

    /** How many mails go at a time. */
    @WithDefault("4")
    int senders();

    /** How many mails a person gets within an hour; mails about strikes go all the same. */
    @WithDefault("30")
    int hourly();

    /** A mail that waits longer is reported by the health check. */
    @WithDefault("15m")
    Duration longestWait();

    /** Mails that wait longer, strikes aside, become one digest for each person. */
    @WithDefault("12h")
    Duration staleAfter();

    /** The server that takes the mails. */
    interface Smtp {
        @WithDefault("localhost")
        String host();

        @WithDefault("587")
        int port();

        Optional<String> username();

        Optional<String> password();

        @WithDefault("starttls")
        Tls tls();

        /** For connecting, for each answer and for each write. */
        @WithDefault("20s")
        Duration timeout();
    }
}
