package org.ohmstead.reports;

import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.sql.Types;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Which reports go to whom by e-mail, each person for themselves. */
@Service
@Transactional
public class ReportSubscriptions {

    private static final int LONGEST = 254;
    private static final int MOST = 20;
    private static final String SELECT = """
            select s.*, u.username, a.code as area from report_subscription s
            join app_user u on u.id = s.user_id left join area a on a.id = s.area_id where\s""";

    private final JdbcClient jdbc;
    private final FleetRegister register;
    private final Access access;
    private final AuditTrail audit;
    private final Clock clock;

    ReportSubscriptions(JdbcClient jdbc, FleetRegister register, Access access, AuditTrail audit, Clock clock) {
        this.jdbc = jdbc;
        this.register = register;
        this.access = access;
        this.audit = audit;
        this.clock = clock;
    }

    /** Of whoever asks. */
    @Transactional(readOnly = true)
    public List<Subscription> own() {
        access.require(SEE_ESTATE);
        return jdbc.sql(SELECT + "s.user_id = ? order by s.id")
                .param(access.current().userId())
                .query((row, n) -> read(row))
                .list();
    }

    /**
     * @param area code; null for everything in reach
     * @throws Refused when it is no e-mail address, or no report that can be sent by itself
     * @throws Conflict when the person has the same subscription already
     */
    public void add(String email, ReportKind kind, ReportForm form, @Nullable String area, Rhythm rhythm) {
        access.require(SEE_ESTATE);
        String address = email.strip();
        if (!address.matches("[^@\\s,;<>\"]+@[^@\\s,;<>\"]+") || address.length() > LONGEST) {
            throw new Refused("\"" + address + "\" is no e-mail address.");
        }
        if (!kind.isOfEstate() || form == ReportForm.ZIP) {
            throw new Refused("Only reports of areas go out by themselves, as CSV, XLSX or PDF.");
        }
        if (own().size() >= MOST) {
            throw new Refused("One person has at most " + MOST + " subscriptions.");
        }
        Long areaId = area == null ? null : register.area(area).id();
        int added = jdbc.sql("""
                        insert into report_subscription (user_id, email, report, form, area_id, rhythm, made_at)
                        values (:user, :email, :report, :form, :area, :rhythm, :at) on conflict do nothing""")
                .param("user", access.current().userId())
                .param("email", address)
                .param("report", kind.code())
                .param("form", form.suffix())
                .param("area", areaId, Types.BIGINT)
                .param("rhythm", rhythm.name())
                .param("at", Timestamp.from(clock.instant()))
                .update();
        if (added == 0) {
            throw new Conflict("You get this report already; stop that subscription first.");
        }
        audit.record(
                "report subscribed",
                "account",
                access.current().username(),
                areaId,
                Map.of("report", kind.code(), "rhythm", rhythm.name()));
    }

    /** @throws NotFound when the person has no such subscription */
    public void stop(long id) {
        access.require(SEE_ESTATE);
        int stopped = jdbc.sql("delete from report_subscription where id = ? and user_id = ?")
                .params(id, access.current().userId())
                .update();
        if (stopped == 0) {
            throw NotFound.of("subscription", id);
        }
        audit.record("report unsubscribed", "account", access.current().username(), null, Map.of("subscription", id));
    }

    /** Of open accounts, those that have not gone out in the period that the day lies in. */
    @Transactional(readOnly = true)
    List<Subscription> open(LocalDate day) {
        return jdbc.sql(SELECT + "u.enabled order by s.id").query((row, n) -> read(row)).list().stream()
                .filter(one -> !one.rhythm().periodOf(day).equals(one.sentFor()))
                .toList();
    }

    void sent(Subscription subscription, LocalDate day) {
        jdbc.sql("update report_subscription set sent_for = ? where id = ?")
                .params(subscription.rhythm().periodOf(day), subscription.id())
                .update();
    }

    private static Subscription read(ResultSet row) throws SQLException {
        return new Subscription(
                row.getLong("id"),
                row.getString("username"),
                row.getString("email"),
                ReportKind.of(row.getString("report")),
                ReportForm.of(row.getString("form")),
                row.getString("area"),
                Rhythm.valueOf(row.getString("rhythm")),
                row.getObject("sent_for", LocalDate.class));
    }
}
