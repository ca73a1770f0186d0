package dev.lapwing.web;

import dev.lapwing.platform.FieldErrors;
import java.util.List;
import java.util.function.Function;

/**
 * One page of a list, as every list of the API is answered.
 *
 * @param items the items of this page
 * @param total how many there are in all
 * @param next the cursor of the next page, or null at the end
 */
public record Page<T>(List<T> items, long total, String next) {
    /** Most items of one page. */
    public static final int MOST = 500;

    private static final int USUAL = 50;

    /** Reads a limit as sent; null means the usual one. Wrong ones are refused. */
    public static int limit(Integer asked) {
        if (asked == null) {
            return USUAL;
        }
        var errors = new FieldErrors();
        errors.check(asked >= 1 && asked <= MOST, "limit", "must be from 1 to " + MOST);
        errors.refuseIfAny();
        return asked;
    }

    /** Cuts a list that was fetched with one item more than the limit, which only shows that there are more. */
    public static <T> Page<T> of(List<T> fetched, int limit, long total, Function<T, String> cursor) {
        if (fetched.size() <= limit) {
            return new Page<>(fetched, total, null);
        }
        List<T> items = fetched.subList(0, limit);
        return new Page<>(items, total, cursor.apply(items.get(limit - 1)));
    }

    /** Returns the same page with its items changed. */
    public <R> Page<R> map(Function<T, R> change) {
        return new Page<>(items.stream().map(change).toList(), total, next);
    }
}
