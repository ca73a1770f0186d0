package dev.lapwing.care.domain;

import dev.lapwing.platform.Worded;

/** What can happen to a roof, beside a strike, that asks for an inspection. */
public enum RoofEventKind implements Worded {
    WATER_INSIDE("water inside", "Water seen inside", TaskOrigin.WATER_INSIDE),
    STORM("storm", "Hail or windstorm", TaskOrigin.STORM),
    PART_LOST("part lost", "Part lost from the roof", TaskOrigin.PART_LOST);

    private final String word;
    private final String label;
    private final TaskOrigin origin;

    RoofEventKind(String word, String label, TaskOrigin origin) {
        this.word = word;
        this.label = label;
        this.origin = origin;
    }

    @Override
    public String word() {
        return word;
    }

    /** Returns the name as it stands at the start of a line. */
    public String label() {
        return label;
    }

    /** Returns the origin of the work it brings about. */
    public TaskOrigin origin() {
        return origin;
    }
}
