package org.ohmstead.intake.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ohmstead.intake.map.ColumnMap;
import org.ohmstead.intake.map.ColumnRule;
import org.ohmstead.intake.map.FactRule;
import org.springframework.util.MultiValueMap;

/** A column map as the fields of a form. */
final class MapForm {

    private MapForm() {}

    static ColumnMap map(MultiValueMap<String, String> form) {
        return new ColumnMap(
                sign(one(form, "delimiter")),
                one(form, "quote"),
                one(form, "encoding"),
                one(form, "decimalMark"),
                one(form, "thousandsMark"),
                one(form, "timePattern").strip(),
                facts(form),
                columns(form, "column"),
                columns(form, "quantity"),
                form.containsKey("valuesInOrder"),
                form.containsKey("linkBefore"),
                Arrays.stream(one(form, "passOver").split(","))
                        .map(String::strip)
                        .filter(word -> !word.isEmpty())
                        .toList());
    }

    static String one(MultiValueMap<String, String> form, String name) {
        String value = form.getFirst(name);
        return value == null ? "" : value;
    }

    private static String sign(String word) {
        return word.equals("tab") ? "\t" : word;
    }

    private static List<FactRule> facts(MultiValueMap<String, String> form) {
        List<FactRule> rules = new ArrayList<>();
        for (int i = 0; i < many(form, "factKey").size(); i++) {
            String label = at(form, "factLabel", i);
            String value = at(form, "factValue", i);
            if (!at(form, "factKey", i).isEmpty() && !(label.isEmpty() && value.isEmpty())) {
                rules.add(new FactRule(at(form, "factKey", i), label, value, at(form, "factUnit", i)));
            }
        }
        return rules;
    }

    private static List<ColumnRule> columns(MultiValueMap<String, String> form, String kind) {
        List<ColumnRule> rules = new ArrayList<>();
        for (int i = 0; i < many(form, kind + "Title").size(); i++) {
            String title = at(form, kind + "Title", i);
            String holds = at(form, kind + "Holds", i);
            if (!title.isEmpty() && !holds.isEmpty()) {
                rules.add(new ColumnRule(title, holds, at(form, kind + "Unit", i), at(form, kind + "LinkUnit", i)));
            }
        }
        return rules;
    }

    private static List<String> many(MultiValueMap<String, String> form, String name) {
        return form.getOrDefault(name, List.of());
    }

    private static String at(MultiValueMap<String, String> form, String name, int place) {
        List<String> values = many(form, name);
        return place < values.size() ? values.get(place).strip() : "";
    }
}
