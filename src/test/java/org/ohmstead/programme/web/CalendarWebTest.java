package org.ohmstead.programme.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.NewPerson;
import org.ohmstead.access.People;
import org.ohmstead.access.Person;
import org.ohmstead.access.PersonAuthentication;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.fleet.Entries;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.ledger.NewSurvey;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.programme.ProgrammeKeeping;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** A crew that reaches one area of two; today is 10 March 2026. */
@ServiceTest
class CalendarWebTest {

    private static int count;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private FleetRegister register;

    @Autowired
    private SurveyLedger ledger;

    @Autowired
    private ProgrammeKeeping keeping;

    @Autowired
    private People people;

    @Autowired
    private Access access;

    private String code;
    private StringView own;
    private StringView others;
    private Person crew;

    @BeforeEach
    void aCrewOfOneArea() {
        code = "CAL-" + ++count;
        access.asSystem("test", () -> {
            register.createJarType(Entries.jarType(code));
            own = string(code);
            others = string(code + "X");
            String name = "calendar.crew." + count;
            people.open(new NewPerson(name, "Crew", Role.CREW, new Reach(false, Set.of(own.areaId()))));
            crew = people.findEnabled(name).orElseThrow();
        });
    }

    private StringView string(String place) {
        register.createArea(Entries.area(place));
        register.createSite(Entries.site(place, place));
        StringView string = register.createString(Entries.string(place, "A", code, 6, 6));
        keeping.assign(string.id(), null, LocalDate.parse("2026-01-10"));
        double[] ohmic = new double[12];
        Arrays.fill(ohmic, 0.41);
        double[] none = {};
        SurveyFacts facts = SurveyFacts.of(
                string.id(), Instant.parse("2026-02-20T09:00:00Z"), LocalDate.parse("2026-02-20"), OhmicKind.IMPEDANCE);
        ledger.accept(NewSurvey.of(facts, new Readings(ohmic, none, none, none, new double[0][])));
        return string;
    }

    private String address() throws Exception {
        Object address = mvc.perform(post("/account/calendar")
                        .with(authentication(new PersonAuthentication(crew)))
                        .with(csrf()))
                .andReturn()
                .getFlashMap()
                .get("address");
        return String.valueOf(address).replaceFirst("^https?://[^/]+", "");
    }

    private String uid(StringView string) {
        return "UID:next-visit-of-string-" + string.id() + "@ohmstead";
    }

    private String read(String address) throws Exception {
        return mvc.perform(get(address))
                .andExpect(status().isOk())
                .andExpect(content().contentType("text/calendar;charset=UTF-8"))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    @Test
    void theAddressShowsWhatItsOwnerMaySeeWithoutSigningIn() throws Exception {
        assertThat(read(address()))
                .contains(uid(own), "DTSTART;VALUE=DATE:20260531", "SEQUENCE:")
                .doesNotContain(uid(others));
    }

    @Test
    void aDateThatMovesKeepsItsNameAndGrowsItsSequence() throws Exception {
        String address = address();
        int before = sequence(read(address));
        access.asSystem("test", () -> keeping.shorten(own.id(), "grounds", 2, LocalDate.parse("2026-01-10")));
        String after = read(address);
        assertThat(after).contains(uid(own), "DTSTART;VALUE=DATE:20260331");
        assertThat(sequence(after)).isEqualTo(before + 1);
        assertThat(sequence(read(address))).isEqualTo(before + 1);
    }

    private int sequence(String calendar) {
        String event = calendar.substring(calendar.indexOf(uid(own)));
        return Integer.parseInt(event.replaceAll("(?s)^.*?SEQUENCE:(\\d+).*$", "$1"));
    }

    @Test
    void aNewAddressTakesThePlaceOfTheOldAndARevokedOneOpensNothing() throws Exception {
        String first = address();
        String second = address();
        mvc.perform(get(first)).andExpect(status().isNotFound());
        read(second);
        mvc.perform(post("/account/calendar/revoke")
                        .with(authentication(new PersonAuthentication(crew)))
                        .with(csrf()))
                .andExpect(status().is3xxRedirection());
        mvc.perform(get(second)).andExpect(status().isNotFound());
        mvc.perform(get("/account/calendar").with(authentication(new PersonAuthentication(crew))))
                .andExpect(content().string(containsString("You have none.")))
                .andExpect(content().string(not(containsString("Revoke"))));
    }
}
