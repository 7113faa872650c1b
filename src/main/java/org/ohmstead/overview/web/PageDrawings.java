package org.ohmstead.overview.web;

import java.time.Instant;
import java.time.ZoneId;
import org.ohmstead.chart.Tile;
import org.ohmstead.overview.Figures;
import org.ohmstead.overview.StringTile;

/**
 * What templates ask for while they are filled.
 *
 * @param readersZone for moments that belong to no site
 */
public record PageDrawings(ZoneId readersZone) {

    public String tile(StringTile string) {
        return Tile.of(string.disc(), string.daysToDue());
    }

    public String moment(Instant moment) {
        return moment(moment, readersZone);
    }

    public String moment(Instant moment, ZoneId zone) {
        return Figures.moment(moment, zone);
    }
}
