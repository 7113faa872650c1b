package org.ohmstead.fleet.web;

import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.StringView;
import org.ohmstead.fleet.csv.LinkEntry;
import org.ohmstead.kernel.Conductor;
import org.ohmstead.kernel.LinkKind;

/** How a link is built, as a program states it. */
record LinkBody(LinkKind kind, int straps, @Nullable Conductor conductor) {

    LinkEntry in(StringView string, int ordinal) {
        return new LinkEntry(string.siteCode(), string.name(), ordinal, kind, straps, conductor);
    }
}
