package org.ohmstead.reports;

import static org.ohmstead.access.Permission.EDIT_REGISTER;
import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarTypeView;
import org.ohmstead.kernel.Refused;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The user's own prices of jars, each from a day on. They are never converted from one currency into another. */
@Service
@Transactional
public class JarPrices {

    private static final BigDecimal LARGEST = new BigDecimal("9999999999.99");

    private final JdbcClient jdbc;
    private final FleetRegister register;
    private final Access access;
    private final AuditTrail audit;
    private final Clock clock;

    JarPrices(JdbcClient jdbc, FleetRegister register, Access access, AuditTrail audit, Clock clock) {
        this.jdbc = jdbc;
        this.register = register;
        this.access = access;
        this.audit = audit;
        this.clock = clock;
    }

    /** By jar type, then the latest first. */
    @Transactional(readOnly = true)
    public List<JarPrice> all() {
        access.require(SEE_ESTATE);
        return jdbc.sql("""
                        select t.code, p.* from jar_price p join jar_type t on t.id = p.jar_type_id
                        order by t.code, p.valid_from desc""").query((row, n) -> price(row)).list();
    }

    /** By jar type, what counts on that day. */
    @Transactional(readOnly = true)
    public Map<String, JarPrice> on(LocalDate day) {
        Map<String, JarPrice> found = new HashMap<>();
        all().stream()
                .filter(price -> !price.validFrom().isAfter(day))
                .forEach(price -> found.putIfAbsent(price.jarType(), price));
        return found;
    }

    /**
     * Sets a price from a day on; one that was set for the same day is corrected.
     *
     * @param amount as typed: 412.50
     * @param currency three letters, as EUR
     */
    public JarPrice set(String jarType, LocalDate validFrom, String amount, String currency) {
        access.require(EDIT_REGISTER);
        JarTypeView type = register.jarType(jarType);
        BigDecimal sum = amount(amount);
        String letters = currency.strip().toUpperCase(Locale.ROOT);
        if (!letters.matches("[A-Z]{3}")) {
            throw new Refused("\"" + currency + "\" is no currency. Write its three letters: EUR, GBP, USD.");
        }
        Timestamp now = Timestamp.from(clock.instant());
        String by = access.current().username();
        jdbc.sql("""
                        insert into jar_price (jar_type_id, valid_from, amount, currency, set_at, set_by)
                        values (?, ?, ?, ?, ?, ?)
                        on conflict (jar_type_id, valid_from) do update
                        set amount = excluded.amount, currency = excluded.currency, set_at = excluded.set_at,
                            set_by = excluded.set_by""").params(type.id(), validFrom, sum, letters, now, by).update();
        JarPrice price = new JarPrice(type.code(), validFrom, sum, letters, clock.instant(), by);
        audit.record(
                "price set",
                "jar type",
                type.code(),
                null,
                Map.of("price", price.words(), "valid from", validFrom.toString()));
        return price;
    }

    private static BigDecimal amount(String typed) {
        String text = typed.strip().replace(',', '.');
        if (!text.matches("\\d{1,10}(\\.\\d{1,2})?") || new BigDecimal(text).compareTo(LARGEST) > 0) {
            throw new Refused("\"" + typed + "\" is no price. Write it as 412.50, without the currency.");
        }
        return new BigDecimal(text).setScale(2);
    }

    private static JarPrice price(ResultSet row) throws SQLException {
        return new JarPrice(
                row.getString("code"),
                row.getObject("valid_from", LocalDate.class),
                row.getBigDecimal("amount"),
                row.getString("currency"),
                row.getTimestamp("set_at").toInstant(),
                row.getString("set_by"));
    }
}
