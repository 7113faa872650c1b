package org.ohmstead.onsite;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.fleet.StringView;
import org.ohmstead.intake.file.SheetReader;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;

/** What a typed walk becomes, and that the reader of survey sheets takes it without a finding. */
@ServiceTest
@Import(WalkedEstate.class)
class WalkSheetTest {

    @Autowired
    private WalkedEstate estate;

    @Autowired
    private Walks walks;

    @Autowired
    private Access access;

    private Walk walk;

    @BeforeEach
    void aWalk() {
        StringView string = estate.stringOfSix();
        walk = access.asSystem("test", () -> walks.walk(string.id()));
    }

    @Test
    void aTypedWalkIsTheSheetOfRecord() throws IOException {
        Map<String, String> typed = WalkedEstate.typed();
        typed.put("note", "Posts of jar 2 cleaned,\n vents clear");
        typed.put("remade-link-3", "40.1");

        assertThat(WalkSheet.of(walk, typed)).isEqualTo(WalkedEstate.sheetOfRecord(walk.siteCode()));
    }

    @Test
    void theReaderTakesItWithoutAFinding() throws IOException {
        SurveySheet sheet = read(WalkSheet.of(walk, WalkedEstate.typed()));

        assertThat(sheet.findings()).isEmpty();
        assertThat(sheet.facts().rippleAmps()).isEqualTo(1.2);
        assertThat(sheet.rows()).hasSize(8);
        assertThat(sheet.rows().get(6).ohmic()).isEqualTo(0.421);
        assertThat(sheet.rows().get(7).linkMicroohms()).containsExactly(0.2);
    }

    @Test
    void whatWasLeftOutStandsInTheNoteAndItsCellsAreEmpty() throws IOException {
        Map<String, String> typed = WalkedEstate.typed();
        typed.put("jar-4-ohmic", "");
        typed.put("skip-jar-4", "post covered");
        typed.put("link-0-1", "");
        typed.put("skip-link-0", "cable lug \"taped\"");
        typed.put("closing", "");
        typed.put("skip-closing", "the test set needs none");

        SurveySheet sheet = read(WalkSheet.of(walk, typed));

        assertThat(sheet.findings()).isEmpty();
        assertThat(sheet.facts().note())
                .isEqualTo("Not read: positive terminal link (cable lug \"taped\"); jar 4 (post covered)."
                        + " No closing reading: the test set needs none.");
        assertThat(sheet.rows()).hasSize(7);
        assertThat(sheet.rows().get(4).ohmic()).isNaN();
    }

    @Test
    void whatIsNoNumberIsHandedInAsTypedAndFoundThere() throws IOException {
        Map<String, String> typed = WalkedEstate.typed();
        typed.put("jar-2-ohmic", "O.41 \"3\"");

        SurveySheet sheet = read(WalkSheet.of(walk, typed));

        assertThat(sheet.findings()).hasSize(1);
        assertThat(sheet.findings().get(0).flaw().value()).isEqualTo("O.41 \"3\"");
    }

    private static SurveySheet read(String text) throws IOException {
        List<SurveySheet> sheets = new ArrayList<>();
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        SheetReader.read(() -> new ByteArrayInputStream(bytes), sheets::add);
        assertThat(sheets).hasSize(1);
        return sheets.get(0);
    }
}
