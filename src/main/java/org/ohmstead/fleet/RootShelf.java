package org.ohmstead.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.ohmstead.fleet.csv.Sheet;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Flaw;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;

/**
 * Areas, sites, jar types or strings: few enough to be taken one by one, by the same acts as on the pages.
 *
 * @param change takes the entry before and the entry after
 */
record RootShelf<E>(Sheet<E> sheet, Supplier<List<E>> all, Consumer<E> create, BiConsumer<E, E> change)
        implements Shelf<E> {

    @Override
    public List<E> entries() {
        return all.get();
    }

    @Override
    public List<Flaw> fulfil(List<Wish<E>> wishes) {
        List<Flaw> flaws = new ArrayList<>();
        for (Wish<E> wish : wishes) {
            try {
                fulfil(wish);
            } catch (Refused refusal) {
                refusal.flaws().forEach(flaw -> flaws.add(at(wish.line(), flaw)));
            } catch (Conflict | NotFound e) {
                flaws.add(Flaw.ofLine(
                        wish.line(), String.valueOf(e.getMessage()), "Mend the row, or the register, and try again."));
            }
        }
        return flaws;
    }

    private void fulfil(Wish<E> wish) {
        if (wish.before() == null) {
            create.accept(wish.after());
        } else {
            change.accept(wish.before(), wish.after());
        }
    }

    private static Flaw at(int line, Flaw flaw) {
        return new Flaw(line, flaw.column(), flaw.value(), flaw.message(), flaw.remedy());
    }
}
