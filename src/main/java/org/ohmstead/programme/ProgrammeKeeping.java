package org.ohmstead.programme;

import static org.ohmstead.access.Permission.EDIT_REGISTER;
import static org.ohmstead.access.Permission.OVERRULE;
import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Technology;
import org.ohmstead.programme.rules.Branch;
import org.ohmstead.programme.rules.Interval;
import org.ohmstead.programme.rules.Requirement;
import org.ohmstead.programme.rules.RulePack;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Decides which rules a string is under and how they are met. Every decision counts from a day on, is audited, and moves
 * the string's next date in the same transaction.
 */
@Service
@Transactional
public class ProgrammeKeeping {

    private final FleetRegister register;
    private final SettingsWriter writer;
    private final DutyBook book;
    private final InServiceTable strings;
    private final PackShelf packs;
    private final NextDateKeeping dates;
    private final DecisionTable decisions;
    private final Access access;
    private final AuditTrail audit;
    private final Clock clock;

    ProgrammeKeeping(
            FleetRegister register,
            SettingsWriter writer,
            DutyBook book,
            InServiceTable strings,
            PackShelf packs,
            NextDateKeeping dates,
            DecisionTable decisions,
            Access access,
            AuditTrail audit,
            Clock clock) {
        this.register = register;
        this.writer = writer;
        this.book = book;
        this.strings = strings;
        this.packs = packs;
        this.dates = dates;
        this.decisions = decisions;
        this.access = access;
        this.audit = audit;
        this.clock = clock;
    }

    /** The pack that a string of that technology is put under when nobody chooses another. */
    public static String usualPack(Technology technology) {
        return switch (technology) {
            case VENTED_LEAD_ACID -> "protection-vented";
            case AGM, GEL -> "protection-valve-regulated";
            case NICKEL_CADMIUM -> "protection-nickel-cadmium";
        };
    }

    /**
     * Puts a string under a pack from a day on.
     *
     * @param pack code; null for the usual one of the string's technology
     * @throws NotFound when there is no such string within reach, or no such pack
     * @throws Refused when the pack is meant for another technology
     */
    public void assign(long stringId, @Nullable String pack, LocalDate from) {
        StringView string = editable(EDIT_REGISTER, stringId);
        Technology technology = register.jarType(string.jarTypeCode()).technology();
        String code = pack == null ? usualPack(technology) : pack;
        RulePack chosen = packs.versions().inForce(code, from);
        if (!chosen.suits(technology)) {
            throw new Refused("\"" + chosen.title() + "\" is not meant for " + technology.words()
                    + "; choose a pack for that technology.");
        }
        writer.assign(stringId, from, code);
        decided("pack assigned", string, Map.of("pack", code, "from", from.toString()));
    }

    /** Meets an either/or requirement by that branch from a day on. */
    public void elect(long stringId, String requirement, String branch, LocalDate from) {
        StringView string = editable(EDIT_REGISTER, stringId);
        sound(() -> requirement(stringId, requirement, from).branch(branch));
        writer.elect(stringId, requirement, from, branch);
        decided(
                "branch elected",
                string,
                Map.of("requirement", requirement, "branch", branch, "from", from.toString()));
    }

    /**
     * Keeps a shorter interval than the pack's from a day on.
     *
     * @param months null to give up the string's own
     * @throws Refused when it is not shorter
     */
    public void shorten(long stringId, String requirement, @Nullable Integer months, LocalDate from) {
        StringView string = editable(EDIT_REGISTER, stringId);
        Requirement asked = requirement(stringId, requirement, from);
        if (months != null) {
            sound(() -> longest(asked).shortenedTo(months));
        }
        writer.shorten(stringId, requirement, from, months);
        Map<String, Object> detail = new LinkedHashMap<>();
        detail.put("requirement", requirement);
        detail.put("months", months);
        detail.put("from", from.toString());
        decided("own interval set", string, detail);
    }

    /**
     * Excuses the running span of a duty up to a day; the due day stays what it is.
     *
     * @param grantedOn the site's today
     */
    public void waive(long stringId, String requirement, LocalDate grantedOn, LocalDate until, String reason) {
        StringView string = editable(OVERRULE, stringId);
        requirement(stringId, requirement, grantedOn);
        if (reason.isBlank()) {
            throw new Refused("Give the reason of the waiver: an auditor will read it.");
        }
        if (until.isBefore(grantedOn)) {
            throw new Refused("A waiver ends on or after the day it is granted, " + grantedOn + ".");
        }
        writer.waive(stringId, requirement, grantedOn, until, reason.strip());
        decided(
                "duty waived",
                string,
                Map.of("requirement", requirement, "until", until.toString(), "reason", reason.strip()));
    }

    /** The same, granted on the site's today. */
    public void waive(long stringId, String requirement, LocalDate until, String reason) {
        waive(stringId, requirement, today(editable(OVERRULE, stringId)), until, reason);
    }

    /**
     * Ends a waiver from the site's today on; what it excused before stays excused.
     *
     * @throws Conflict when there is none that still runs
     */
    public void endWaiver(long stringId, long waiverId) {
        StringView string = editable(OVERRULE, stringId);
        if (!writer.endWaiver(stringId, waiverId, today(string))) {
            throw new Conflict("There is no such waiver at this string, or it has ended already.");
        }
        decided("waiver ended", string, Map.of("waiver", waiverId));
    }

    /** What was decided for a string, the latest first. */
    @Transactional(readOnly = true)
    public List<Decision> decisions(long stringId) {
        access.require(SEE_ESTATE);
        register.string(stringId);
        return decisions.of(stringId);
    }

    private LocalDate today(StringView string) {
        return LocalDate.ofInstant(
                clock.instant(), register.site(string.siteCode()).timeZone());
    }

    private StringView editable(Permission permission, long stringId) {
        access.require(permission);
        StringView string = register.string(stringId);
        access.require(permission, string.areaId());
        return string;
    }

    private Requirement requirement(long stringId, String code, LocalDate on) {
        StringDuties duties =
                book.of(strings.of(List.of(stringId)), string -> on).get(0);
        RulePack pack = duties.pack();
        if (pack == null) {
            throw new Refused("The string is under no rule pack on " + on + "; put it under one first.");
        }
        return pack.find(code).orElseThrow(() -> NotFound.of("requirement", code));
    }

    /** The longest of the branches: a string's own interval may shorten whichever is elected. */
    private static Interval longest(Requirement requirement) {
        return requirement.branches().stream()
                .map(Branch::interval)
                .filter(java.util.Objects::nonNull)
                .max(java.util.Comparator.comparing(Interval::months))
                .orElseThrow();
    }

    private static void sound(Runnable check) {
        try {
            check.run();
        } catch (IllegalArgumentException e) {
            throw new Refused(String.valueOf(e.getMessage()));
        }
    }

    private void decided(String action, StringView string, Map<String, ?> detail) {
        audit.record(action, "string", String.valueOf(string.id()), string.areaId(), detail);
        dates.recompute(List.of(string.id()));
    }
}
