package org.ohmstead.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;

/** All strings of the invented utility, as of a day: the same for every start on that day. */
record DemoEstate(LocalDate today, List<DemoString> strings) {

    static DemoEstate on(LocalDate today) {
        List<DemoString> strings = IntStream.range(0, Places.siteCount())
                .boxed()
                .flatMap(site -> IntStream.range(0, Design.of(site).strings())
                        .mapToObj(number -> DemoString.of(site, number, today)))
                .toList();
        return new DemoEstate(today, strings);
    }

    DemoString string(int site, String name) {
        return strings.stream()
                .filter(string -> string.site() == site && string.entry().name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
