package org.ohmstead.fleet.web;

import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.web.servlet.ModelAndView;

/** The one page that shows any entry's form. */
final class EntryPage {

    private EntryPage() {}

    /**
     * @param action where the form is sent; also the page's own address
     * @param trail words and addresses of the pages above
     */
    static ModelAndView of(EntryForm form, String title, String action, List<Map.Entry<String, String>> trail) {
        ModelAndView page = new ModelAndView("register/entry");
        page.addObject("form", form);
        page.addObject("heading", title);
        page.addObject("action", action);
        page.addObject(
                "trail",
                trail.stream()
                        .map(step -> Map.of("words", step.getKey(), "address", step.getValue()))
                        .toList());
        page.addObject("back", trail.get(trail.size() - 1).getValue());
        if (form.isFlawed()) {
            page.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        return page;
    }
}
