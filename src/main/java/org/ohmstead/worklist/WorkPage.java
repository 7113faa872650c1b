package org.ohmstead.worklist;

import java.util.List;

/**
 * Some items of a list.
 *
 * @param number of the page, from 0
 * @param total items on all pages
 */
public record WorkPage(List<WorkItemView> items, int number, int size, long total) {

    public WorkPage {
        items = List.copyOf(items);
    }

    public int pages() {
        return (int) ((total + size - 1) / size);
    }
}
