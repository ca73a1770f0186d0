package dev.lapwing.people;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A person who works with the service. */
@Entity
public class Staff extends PanacheEntityBase {
    @Id
    public String username;

    @Column(name = "full_name")
    public String fullName;

    public String mail;

    /** Two-letter code of the language for mails to this person: en, es or fr. */
    public String language;

    @Enumerated(EnumType.STRING)
    public Role role;

    /** Modular crypt form of bcrypt, or null while no password was set. */
    @Column(name = "password_hash")
    String passwordHash;

    public boolean active;

    @Column(name = "created_at")
    public Instant createdAt;

    @ElementCollection
    @CollectionTable(name = "staff_depot", joinColumns = @JoinColumn(name = "username"))
    @Column(name = "depot_code")
    public Set<String> depots = new HashSet<>();

    public static Optional<Staff> activeByName(String username) {
        return find("username = ?1 and active = true", username).firstResultOptional();
    }

    /** Returns the active people of a role at a depot, by name. */
    public static List<Staff> at(String depotCode, Role role) {
        return list(
                "select s from Staff s join s.depots d where d = ?1 and s.role = ?2 and s.active = true order by s.username",
                depotCode,
                role);
    }

    /** Returns the active people of a role anywhere, by sign-in name. */
    public static List<Staff> inRole(Role role) {
        return list("role = ?1 and active = true order by username", role);
    }

    /** Returns all active people of a depot, by name. */
    public static List<Staff> atDepot(String depotCode) {
        return list(
                "select s from Staff s join s.depots d where d = ?1 and s.active = true order by s.fullName, s.username",
                depotCode);
    }
}
