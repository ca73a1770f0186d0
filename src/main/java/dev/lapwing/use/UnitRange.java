package dev.lapwing.use;

/**
 * A run of a depot's units in the order of their numbers, both ends included.
 *
 * @param depot code of the depot
 * @param first number of the first unit
 * @param last number of the last unit
 */
public record UnitRange(String depot, String first, String last) {
    /**
     * Condition of a query on rows of these units; takes depot, first and last number. The column that names the unit is
     * filled in. PostgreSQL looks the units' rows up by index however it guesses their number; joined to the units, it
     * reads the whole table for every batch.
     */
    public static final String WHERE_UNIT_OF = " where %s = any(array(select u.id from unit u"
            + " where u.depot_code = ? and u.number >= ? and u.number <= ?))";
}
