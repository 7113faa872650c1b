package org.ohmstead.worklist.web;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ohmstead.worklist.WorkFilter;
import org.ohmstead.worklist.model.WorkKind;
import org.ohmstead.worklist.model.WorkState;
import org.springframework.web.util.UriComponentsBuilder;

/**
 * What somebody chose to see of the list, as it stands in the address.
 *
 * @param show "open", "all" or the word of a state
 * @param area code, empty for all in reach
 * @param kind null for all
 * @param assignee empty for everybody
 */
record WorkChoice(String show, String area, @Nullable WorkKind kind, boolean overdue, String assignee) {

    static final String OPEN = "open";
    static final String ALL = "all";

    public WorkFilter filter() {
        return new WorkFilter(
                states(),
                area.isEmpty() ? null : area,
                null,
                null,
                kind == null ? Set.of() : Set.of(kind),
                Set.of(),
                overdue,
                assignee.isBlank() ? null : assignee.strip());
    }

    private Set<WorkState> states() {
        if (show.equals(OPEN)) {
            return WorkFilter.OPEN_STATES;
        }
        if (show.equals(ALL)) {
            return Set.of(WorkState.values());
        }
        Set<WorkState> named = EnumSet.noneOf(WorkState.class);
        for (WorkState state : WorkState.values()) {
            if (state.word().equals(show)) {
                named.add(state);
            }
        }
        return named;
    }

    public WorkChoice showing(String other) {
        return new WorkChoice(other, area, kind, overdue, assignee);
    }

    /** For the address; what leaves nothing out is left out. */
    public Map<String, Object> parameters() {
        Map<String, Object> parameters = new LinkedHashMap<>();
        put(parameters, "show", show.equals(OPEN) ? "" : show);
        put(parameters, "area", area);
        put(parameters, "kind", kind == null ? "" : kind.name());
        put(parameters, "overdue", overdue ? "true" : "");
        put(parameters, "assignee", assignee.strip());
        return parameters;
    }

    /** "?area=…", or nothing where nothing was chosen. */
    public String query() {
        return query(0);
    }

    public String query(int page) {
        UriComponentsBuilder address = UriComponentsBuilder.newInstance();
        parameters().keySet().forEach(name -> address.queryParam(name, "{" + name + "}"));
        if (page > 0) {
            address.queryParam("page", page);
        }
        return address.encode().buildAndExpand(parameters()).toUriString();
    }

    /** The same choice for the file of the whole list. */
    public String fileQuery() {
        UriComponentsBuilder address = UriComponentsBuilder.newInstance();
        states().forEach(state -> address.queryParam("state", state.name()));
        Map<String, Object> rest = parameters();
        rest.remove("show");
        rest.keySet().forEach(name -> address.queryParam(name, "{" + name + "}"));
        return address.encode().buildAndExpand(rest).toUriString();
    }

    private static void put(Map<String, Object> parameters, String name, String value) {
        if (!value.isEmpty()) {
            parameters.put(name, value);
        }
    }
}
