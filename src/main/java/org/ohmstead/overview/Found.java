package org.ohmstead.overview;

import java.util.List;

/** What the find box found: sites by code or name, strings by site and name. */
public record Found(String words, List<Site> sites, List<StringTile> strings) {

    public record Site(String code, String name, String areaName) {}

    public boolean nothing() {
        return sites.isEmpty() && strings.isEmpty();
    }
}
