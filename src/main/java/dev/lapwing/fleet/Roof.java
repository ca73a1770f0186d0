package dev.lapwing.fleet;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.time.LocalDate;

/** What is known of a unit's roof. */
@Embeddable
public class Roof {
    @Enumerated(EnumType.STRING)
    public Surface surface;

    @Enumerated(EnumType.STRING)
    public Footing footing;

    /** Name of the membrane system, or null when not known. */
    @Column(name = "membrane_system")
    public String membraneSystem;

    /** Who confirmed the membrane system, or null. */
    @Column(name = "confirmed_by")
    public String confirmedBy;

    /** When the membrane system was confirmed, or null. */
    @Column(name = "confirmed_on")
    public LocalDate confirmedOn;

    public String sealant;

    /** When the roof was laid, or null when not known. */
    @Column(name = "installed_on")
    public LocalDate installedOn;

    /** Returns whether a person may stand on it; only a roof recorded as walkable bears one. */
    public boolean bearsAPerson() {
        return footing == Footing.WALKABLE;
    }
}
