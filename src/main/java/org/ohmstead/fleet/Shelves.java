package org.ohmstead.fleet;

import java.util.List;
import org.ohmstead.fleet.csv.Sheets;
import org.ohmstead.kernel.NotFound;
import org.springframework.stereotype.Component;

/** All seven kinds of register entries, in the order in which they must be brought in. */
@Component
class Shelves {

    private final List<Shelf<?>> all;

    Shelves(FleetRegister register, LinkShelf links, OccupancyShelf occupancies, RemakeShelf remakes) {
        all = List.of(
                areas(register), sites(register), jarTypes(register), strings(register), links, occupancies, remakes);
    }

    List<Shelf<?>> all() {
        return all;
    }

    Shelf<?> named(String kind) {
        return all.stream()
                .filter(shelf -> shelf.sheet().name().equals(kind))
                .findFirst()
                .orElseThrow(() -> new NotFound("There is no register file " + kind + ".csv. Files are: "
                        + String.join(
                                ", ",
                                all.stream().map(shelf -> shelf.sheet().name()).toList()) + "."));
    }

    private static Shelf<?> areas(FleetRegister register) {
        return new RootShelf<>(
                Sheets.AREAS,
                () -> register.areas().stream().map(AreaView::entry).toList(),
                register::createArea,
                (before, after) -> {
                    AreaView area = register.area(before.code());
                    register.changeArea(area.id(), area.version(), after);
                });
    }

    private static Shelf<?> sites(FleetRegister register) {
        return new RootShelf<>(
                Sheets.SITES,
                () -> register.sites().stream().map(SiteView::entry).toList(),
                register::createSite,
                (before, after) -> {
                    SiteView site = register.site(before.code());
                    register.changeSite(site.id(), site.version(), after);
                });
    }

    private static Shelf<?> jarTypes(FleetRegister register) {
        return new RootShelf<>(
                Sheets.JAR_TYPES,
                () -> register.jarTypes().stream().map(JarTypeView::entry).toList(),
                register::createJarType,
                (before, after) -> {
                    JarTypeView jarType = register.jarType(before.code());
                    register.changeJarType(jarType.id(), jarType.version(), after);
                });
    }

    private static Shelf<?> strings(FleetRegister register) {
        return new RootShelf<>(
                Sheets.STRINGS,
                () -> register.strings().stream().map(StringView::entry).toList(),
                register::createString,
                (before, after) -> {
                    StringView string = register.findString(before.site(), before.name())
                            .orElseThrow(() -> NotFound.of("string", Sheets.STRINGS.keyOf(before)));
                    register.changeString(string.id(), string.version(), after);
                });
    }
}
