package org.ohmstead.reports;

import java.util.List;

/** What whoever goes must know before touching anything; word for word what the pages say. */
final class Cautions {

    static final List<String> BEFORE = List.of(
            "This is live work: a cell cannot be switched off. Shock, arc flash and acid are all present.",
            "Face shield, acid-resistant gloves and apron; eyewash and drench within 7.6 m (25 ft).",
            "No jewellery, insulated tools only, no flame; discharge static first. Two people, with a clear way out.",
            "Never make or break a connection while current flows: charger and load off first.",
            "Hydrogen: ventilate before you start, keep it under 2 %, treat 0.1 m around every vent as explosive.",
            "Arc energy at the terminals must be worked out by an engineer for this string; no figure here replaces that.");

    static final String RULES =
            "Follow your employer’s rules and local codes; the work is for trained, authorised people.";

    private Cautions() {}
}
