package org.ohmstead.access;

import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The accounts: opened by an administrator, given a password by their owner, closed but never deleted. */
@Service
@Transactional
public class People {

    static final int SHORTEST_PASSWORD = 12;
    /** The hash function reads no further. */
    static final int LONGEST_PASSWORD_BYTES = 72;

    private final AppUsers users;
    private final OneTimeLinks links;
    private final AuditTrail audit;
    private final PasswordEncoder encoder;
    private final Clock clock;

    People(AppUsers users, OneTimeLinks links, AuditTrail audit, PasswordEncoder encoder, Clock clock) {
        this.users = users;
        this.links = links;
        this.audit = audit;
        this.encoder = encoder;
        this.clock = clock;
    }

    /** Opens an account; its owner chooses a password through a one-time link, see {@link #newLink}. */
    public PersonView open(NewPerson person) {
        String username = person.username().strip().toLowerCase(Locale.ROOT);
        if (!username.matches("[a-z0-9][a-z0-9._-]{1,39}")) {
            throw new Refused("A user name has 2 to 40 letters, digits, dots, dashes or underscores.");
        }
        if (users.findByUsername(username).isPresent()) {
            throw new Conflict("There is already an account named " + username + "; choose another name.");
        }
        AppUser user = new AppUser(username, person.displayName().strip(), person.role(), clock.instant());
        user.giveReach(person.reach());
        AppUser saved = users.save(user);
        record("opened", saved, Map.of("role", person.role().name()));
        return saved.view();
    }

    public PersonView change(long id, String displayName, Role role, Reach reach) {
        AppUser user = user(id);
        user.become(displayName.strip(), role, reach);
        record("changed", user, Map.of("role", role.name(), "reach", reach.toString()));
        return user.view();
    }

    public void close(long id) {
        AppUser user = user(id);
        user.close();
        record("closed", user, Map.of());
    }

    public void reopen(long id) {
        AppUser user = user(id);
        user.reopen();
        record("reopened", user, Map.of());
    }

    /** A secret, good once and for a day, with which the account's owner chooses a password. */
    public String newLink(long id) {
        AppUser user = user(id);
        record("given a one-time link", user, Map.of());
        return links.create(user.id());
    }

    /** @throws Refused when the password is too short or too long */
    public void choosePassword(long id, String password) {
        if (password.length() < SHORTEST_PASSWORD) {
            throw new Refused("A password has at least " + SHORTEST_PASSWORD + " characters; a few words do well.");
        }
        if (password.getBytes(java.nio.charset.StandardCharsets.UTF_8).length > LONGEST_PASSWORD_BYTES) {
            throw new Refused("A password has at most " + LONGEST_PASSWORD_BYTES + " bytes.");
        }
        AppUser user = user(id);
        user.choosePassword(Objects.requireNonNull(encoder.encode(password)));
        record("password chosen", user, Map.of());
    }

    /** @throws Refused when the current password is not right, or the new one is too short or too long */
    public void changeOwnPassword(Person person, String current, String password) {
        String hash = user(person.userId()).passwordHash();
        if (hash == null || !encoder.matches(current, hash)) {
            throw new Refused("The current password is not right.");
        }
        choosePassword(person.userId(), password);
    }

    /**
     * Uses up a one-time link and sets the password.
     *
     * @throws NotFound when the link is unknown, used or out of date
     */
    public void redeem(String secret, String password) {
        long userId = links.owner(secret).orElseThrow(OneTimeLinks::gone);
        choosePassword(userId, password);
        links.useUp(secret);
    }

    @Transactional(readOnly = true)
    public Optional<PersonView> ownerOfLink(String secret) {
        return links.owner(secret).flatMap(users::findById).map(AppUser::view);
    }

    @Transactional(readOnly = true)
    public List<PersonView> all() {
        return users.findAllByOrderByUsername().stream().map(AppUser::view).toList();
    }

    @Transactional(readOnly = true)
    public boolean nobodyCanSignIn() {
        return !users.existsByPasswordHashIsNotNull();
    }

    @Transactional(readOnly = true)
    public Optional<PersonView> find(String username) {
        return users.findByUsername(username).map(AppUser::view);
    }

    @Transactional(readOnly = true)
    public Optional<Person> findEnabled(String username) {
        return users.findByUsername(username).filter(AppUser::isEnabled).map(AppUser::person);
    }

    @Transactional(readOnly = true)
    Optional<Person> findEnabled(long id) {
        return users.findById(id).filter(AppUser::isEnabled).map(AppUser::person);
    }

    @Transactional(readOnly = true)
    Optional<SignedIn> credentials(String username) {
        return users.findByUsername(username.strip().toLowerCase(Locale.ROOT)).flatMap(People::signedIn);
    }

    private static Optional<SignedIn> signedIn(AppUser user) {
        String hash = user.passwordHash();
        return hash == null ? Optional.empty() : Optional.of(new SignedIn(user.username(), hash, user.isEnabled()));
    }

    private AppUser user(long id) {
        return users.findById(id).orElseThrow(() -> NotFound.of("account", id));
    }

    private void record(String action, AppUser user, Map<String, ?> detail) {
        audit.record("account " + action, "account", user.username(), null, detail);
    }
}
