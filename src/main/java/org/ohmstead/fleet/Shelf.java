package org.ohmstead.fleet;

import java.util.List;
import org.ohmstead.fleet.csv.Sheet;
import org.ohmstead.kernel.Flaw;

/** One kind of register entries, in bulk. */
interface Shelf<E> {

    Sheet<E> sheet();

    /** All within the asking person's reach, in the order of an export. */
    List<E> entries();

    /** Fulfils what it can and says why not the others; the caller undoes everything when there is a flaw. */
    List<Flaw> fulfil(List<Wish<E>> wishes);
}
