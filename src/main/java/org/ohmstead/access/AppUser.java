package org.ohmstead.access;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** An account. Never deleted, only closed: the audit trail goes on naming it. */
@Entity
@Table(name = "app_user")
class AppUser {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    private String username;
    private String displayName;
    private @Nullable String passwordHash;

    @Enumerated(EnumType.STRING)
    private Role role;

    private boolean reachesAll;
    private boolean enabled = true;
    private Instant createdAt;

    @ElementCollection(fetch = FetchType.EAGER)
    @CollectionTable(name = "user_area", joinColumns = @JoinColumn(name = "user_id"))
    @Column(name = "area_id")
    private Set<Long> areaIds = new HashSet<>();

    /** For JPA. */
    @SuppressWarnings("NullAway")
    protected AppUser() {}

    AppUser(String username, String displayName, Role role, Instant createdAt) {
        this.username = username;
        this.displayName = displayName;
        this.role = role;
        this.createdAt = createdAt;
    }

    void giveReach(Reach reach) {
        reachesAll = reach.everywhere();
        areaIds.clear();
        areaIds.addAll(reach.areaIds());
    }

    void become(String newDisplayName, Role newRole, Reach reach) {
        displayName = newDisplayName;
        role = newRole;
        giveReach(reach);
    }

    void choosePassword(String hash) {
        passwordHash = hash;
    }

    void close() {
        enabled = false;
    }

    void reopen() {
        enabled = true;
    }

    long id() {
        if (id == null) {
            throw new IllegalStateException("not stored yet");
        }
        return id;
    }

    String username() {
        return username;
    }

    @Nullable
    String passwordHash() {
        return passwordHash;
    }

    boolean isEnabled() {
        return enabled;
    }

    Person person() {
        return new Person(id(), username, displayName, role, new Reach(reachesAll, Set.copyOf(areaIds)));
    }

    PersonView view() {
        return new PersonView(
                id(), username, displayName, role, reachesAll, Set.copyOf(areaIds), enabled, passwordHash != null);
    }
}
