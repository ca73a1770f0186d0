package dev.lapwing.alerts.hooks;

import dev.lapwing.alerts.domain.Urgency;
import dev.lapwing.platform.Worded;
import java.util.EnumSet;
import java.util.Set;

/** What a webhook is told of. */
public enum HookKind implements Worded {
    STRIKE("strike", Urgency.AT_ONCE),
    HOLD("hold", Urgency.AT_ONCE),
    RELEASE("release", Urgency.SOON),
    /** Nothing happened: somebody tries whether it works. */
    TEST("test", Urgency.AT_ONCE);

    /** What a target can ask for. */
    static final Set<HookKind> TO_CHOOSE = Set.copyOf(EnumSet.complementOf(EnumSet.of(TEST)));

    private final String word;
    private final Urgency urgency;

    HookKind(String word, Urgency urgency) {
        this.word = word;
        this.urgency = urgency;
    }

    @Override
    public String word() {
        return word;
    }

    Urgency urgency() {
        return urgency;
    }
}
