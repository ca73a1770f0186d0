package dev.lapwing.web;

/** Where the page of a unit and the forms about it are. */
public final class UnitPaths {
    private UnitPaths() {}

    /** Returns the path of the unit's page. */
    public static String page(String number) {
        return "/units/" + TemplateWords.urlPart(number);
    }
}
