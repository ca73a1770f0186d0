package dev.lapwing.use.domain;

/** Where the rental log says a unit was. In none of these it stands in the yard. */
public enum LogKind {
    RENTAL("rental"),
    STORAGE("storage"),
    WORKSHOP("workshop");

    private final String word;

    LogKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
