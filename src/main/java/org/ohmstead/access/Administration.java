package org.ohmstead.access;

import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What administrators do: every call needs the permission to administer. */
@Service
@Transactional
public class Administration {

    private final People people;
    private final AuditTrail audit;
    private final Access access;
    private final JdbcClient jdbc;

    Administration(People people, AuditTrail audit, Access access, JdbcClient jdbc) {
        this.people = people;
        this.audit = audit;
        this.access = access;
        this.jdbc = jdbc;
    }

    @Transactional(readOnly = true)
    public List<PersonView> people() {
        access.require(Permission.ADMINISTER);
        return people.all();
    }

    @Transactional(readOnly = true)
    public List<AreaName> areas() {
        access.require(Permission.ADMINISTER);
        return jdbc.sql("select id, code, name from area order by name")
                .query(AreaName.class)
                .list();
    }

    @Transactional(readOnly = true)
    public List<AuditTrail.Entry> auditBefore(long entryId, int limit) {
        access.require(Permission.ADMINISTER);
        return audit.before(entryId, limit);
    }

    /** Opens the account and returns the secret of its one-time link. */
    public String open(NewPerson person) {
        access.require(Permission.ADMINISTER);
        return people.newLink(people.open(person).id());
    }

    public PersonView change(long id, String displayName, Role role, Reach reach) {
        access.require(Permission.ADMINISTER);
        return people.change(id, displayName, role, reach);
    }

    public String newLink(long id) {
        access.require(Permission.ADMINISTER);
        return people.newLink(id);
    }

    public void close(long id) {
        access.require(Permission.ADMINISTER);
        if (access.current().userId() == id) {
            throw new org.ohmstead.kernel.Refused("Your own account is closed by another administrator.");
        }
        people.close(id);
    }

    public void reopen(long id) {
        access.require(Permission.ADMINISTER);
        people.reopen(id);
    }
}
