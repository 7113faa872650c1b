package org.ohmstead.programme;

import static org.ohmstead.access.Permission.EDIT_REGISTER;
import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.programme.rules.RulePack;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The library of rule packs. Built-in ones are copied, never changed; an owner's own get new versions. */
@Service
@Transactional
public class RulePacks {

    private static final String CODE = "[a-z0-9][a-z0-9-]{0,47}";

    private final PackShelf shelf;
    private final SettingsTable settings;
    private final NextDateKeeping dates;
    private final Access access;
    private final AuditTrail audit;

    RulePacks(PackShelf shelf, SettingsTable settings, NextDateKeeping dates, Access access, AuditTrail audit) {
        this.shelf = shelf;
        this.settings = settings;
        this.dates = dates;
        this.access = access;
        this.audit = audit;
    }

    /** @param builtIn part of the program, to be copied but not changed */
    public record Listed(RulePack pack, boolean builtIn) {}

    /** Every pack in its latest version, by code. */
    @Transactional(readOnly = true)
    public List<Listed> all() {
        access.require(SEE_ESTATE);
        PackShelf.Versions versions = shelf.versions();
        return versions.codes().stream()
                .map(code -> new Listed(latest(versions, code), shelf.isBuiltIn(code)))
                .toList();
    }

    /** @throws NotFound when there is none of that code */
    @Transactional(readOnly = true)
    public Listed latest(String code) {
        access.require(SEE_ESTATE);
        return new Listed(latest(shelf.versions(), code), shelf.isBuiltIn(code));
    }

    /** Oldest first. */
    @Transactional(readOnly = true)
    public List<RulePack> versionsOf(String code) {
        access.require(SEE_ESTATE);
        return shelf.versions().all(code);
    }

    /**
     * Adds a pack of the owner's own, or its next version. The strings under it get their dates anew.
     *
     * @param wished its version is ignored: the next free one is taken
     * @throws Refused when the code is not a sound one or the new version would count from before the last
     * @throws Conflict when the code is that of a built-in pack, or somebody else was faster
     */
    public RulePack save(RulePack wished) {
        access.require(EDIT_REGISTER);
        if (!wished.code().matches(CODE)) {
            throw new Refused("A pack's code has lower-case letters, digits and hyphens, at most 48: \"" + wished.code()
                    + "\" has not.");
        }
        if (shelf.isBuiltIn(wished.code())) {
            throw new Conflict(
                    "\"" + wished.code() + "\" is built in and stays as it is; give your copy another code.");
        }
        RulePack next = next(wished);
        store(next);
        audit.record(
                "rule pack saved",
                "rule pack",
                next.code(),
                null,
                Map.of(
                        "version",
                        next.version(),
                        "in force from",
                        next.inForceFrom().toString()));
        dates.recompute(settings.under(next.code()));
        return next;
    }

    private RulePack next(RulePack wished) {
        PackShelf.Versions versions = shelf.versions();
        int version = 1;
        if (versions.knows(wished.code())) {
            RulePack last = latest(versions, wished.code());
            LocalDate from = last.inForceFrom();
            if (wished.inForceFrom().isBefore(from)) {
                throw new Refused("The version before counts from " + from + "; the new one can't count from earlier.");
            }
            version = last.version() + 1;
        }
        return new RulePack(
                wished.code(),
                version,
                wished.title(),
                wished.inForceFrom(),
                wished.technologies(),
                wished.source(),
                wished.note(),
                wished.requirements());
    }

    private void store(RulePack pack) {
        try {
            shelf.add(pack, access.current().username());
        } catch (DuplicateKeyException e) {
            throw new Conflict("Somebody else saved version " + pack.version() + " of this pack. Look at it first.", e);
        }
    }

    private static RulePack latest(PackShelf.Versions versions, String code) {
        List<RulePack> all = versions.all(code);
        return all.get(all.size() - 1);
    }
}
