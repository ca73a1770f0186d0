package dev.lapwing.alerts.domain.rain;

/** A feed answered with something that is no forecast. The message reads on after "the feed". */
public final class BadForecast extends RuntimeException {
    private static final long serialVersionUID = 1L;

    BadForecast(String message) {
        super(message);
    }
}
