package org.ohmstead.worklist;

import java.util.List;

/** An item with all that happened to it, oldest first. */
public record WorkItemLife(WorkItemView item, List<WorkEventView> events) {

    public WorkItemLife {
        events = List.copyOf(events);
    }
}
