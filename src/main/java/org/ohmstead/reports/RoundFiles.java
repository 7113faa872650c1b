package org.ohmstead.reports;

import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import org.ohmstead.access.Access;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.programme.RoundPack;
import org.ohmstead.programme.RoundView;
import org.ohmstead.programme.Rounds;
import org.ohmstead.reports.render.PdfForm;
import org.ohmstead.reports.render.Report;
import org.ohmstead.worklist.WorkList;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What a crew takes along as files: the pack on paper, and a prefilled survey sheet of every string, in one ZIP. */
@Service
@Transactional(readOnly = true)
public class RoundFiles {

    private final Rounds rounds;
    private final RoundPack packs;
    private final WorkList work;
    private final FleetRegister register;
    private final Access access;

    RoundFiles(Rounds rounds, RoundPack packs, WorkList work, FleetRegister register, Access access) {
        this.rounds = rounds;
        this.packs = packs;
        this.work = work;
        this.register = register;
        this.access = access;
    }

    /** "round-7-MIL-01-2026-12-11-Europe-London": the day it is planned for, in the site's calendar. */
    public String name(long roundId) {
        access.require(SEE_ESTATE);
        RoundView round = rounds.round(roundId);
        SiteView site = register.site(round.siteCode());
        return "round-" + roundId + "-" + site.code() + "-" + round.plannedOn() + "-" + Scene.zoneWord(List.of(site));
    }

    /**
     * The pack on paper, as of now.
     *
     * @param address at which a telephone opens a string, by its id
     */
    public Report paper(long roundId, LongFunction<String> address) {
        access.require(SEE_ESTATE);
        RoundView round = rounds.round(roundId);
        List<RoundPack.Part> parts = packs.parts(roundId);
        return RoundPaper.of(
                round,
                register.site(round.siteCode()),
                parts,
                parts.stream()
                        .map(part -> part.string().string().id())
                        .collect(Collectors.toMap(Function.identity(), work::openOf)),
                rounds.todayAt(round.siteCode()),
                address);
    }

    /**
     * Paper and sheets with a list of their sums.
     *
     * @param address at which a telephone opens a string, by its id
     */
    public void write(long roundId, LongFunction<String> address, OutputStream out) throws IOException {
        access.require(SEE_ESTATE);
        RoundView round = rounds.round(roundId);
        SummedZip zip = new SummedZip(out, round.plannedOn());
        ByteArrayOutputStream paper = new ByteArrayOutputStream();
        PdfForm.write(paper(roundId, address), paper);
        zip.add(name(roundId) + ".pdf", paper.toByteArray());
        for (RoundPack.Part part : packs.parts(roundId)) {
            String string = part.string().string().name().replaceAll("[^A-Za-z0-9]+", "_");
            zip.add(
                    "sheets/survey-sheet-" + round.siteCode() + "-" + string + ".csv",
                    packs.sheet(roundId, part.string().string().id()).getBytes(StandardCharsets.UTF_8));
        }
        zip.finish();
    }
}
