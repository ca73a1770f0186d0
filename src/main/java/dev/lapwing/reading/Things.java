package dev.lapwing.reading;

/** Sets of signs that are asked for together. */
final class Things {
    static final long ABOVE = Sign.bits(Sign.OVERHEAD, Sign.TALL);
    static final long FALLING = Sign.bits(Sign.OVERHEAD, Sign.TALL, Sign.DROPPING, Sign.DEBRIS);
    static final long DECIDING = Sign.bits(Sign.OVERHEAD, Sign.TALL, Sign.ROOF, Sign.BELOW, Sign.OTHER, Sign.DROPPING);
    /** Things that leave no need to look further from the event. */
    static final long SETTLING = Sign.bits(Sign.OVERHEAD, Sign.ROOF, Sign.BELOW, Sign.OTHER, Sign.ELSEWHERE);

    static final long ALL = DECIDING
            | Sign.bits(
                    Sign.LOW,
                    Sign.DEBRIS,
                    Sign.UNIT,
                    Sign.PERSON,
                    Sign.ELSEWHERE,
                    Sign.OWNER,
                    Sign.PASSAGE,
                    Sign.PLAIN);
    static final long EVENTS = Sign.bits(
            Sign.CONTACT,
            Sign.TOUCH,
            Sign.STUCK,
            Sign.FALL,
            Sign.DAMAGE,
            Sign.WEAR,
            Sign.DEBRIS,
            Sign.TRACE,
            Sign.NOISE,
            Sign.STRIKE,
            Sign.HINT,
            Sign.TIGHT,
            Sign.DOUBT);

    private Things() {}
}
