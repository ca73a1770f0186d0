package dev.lapwing.care;

import dev.lapwing.fleet.Roof;
import java.util.List;

/** Knows what to mind before work on a roof. */
public interface RoofCautions {
    /** Returns the few cautions that stand in letters and on the page of a task, in a language (en, es, fr). */
    List<String> inShort(Roof roof, String language);

    /** Returns those of them that hold for every roof. */
    List<String> inShort(String language);
}
