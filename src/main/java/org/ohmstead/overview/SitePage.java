package org.ohmstead.overview;

import java.time.ZoneId;
import java.util.List;

/** A site: its strings, its last visits, and what one must know before going there. */
public record SitePage(
        String code,
        String name,
        String areaName,
        ZoneId timeZone,
        String loadKind,
        String accessNotes,
        String contacts,
        Sentence sentence,
        List<StringTile> strings,
        List<EstateView.Visit> visits,
        List<EstateView.Held> held) {}
