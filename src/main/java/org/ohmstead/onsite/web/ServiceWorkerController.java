package org.ohmstead.onsite.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;

/** The service worker, at the root so that it may answer for every page; what it does stands in {@code worker.js}. */
@RestController
class ServiceWorkerController {

    private final Shelf shelf;
    private final JsonMapper json;

    ServiceWorkerController(Shelf shelf, JsonMapper json) {
        this.shelf = shelf;
        this.json = json;
    }

    @GetMapping(path = "/service-worker.js", produces = "text/javascript;charset=UTF-8")
    String script(HttpServletRequest request) {
        String base = request.getContextPath() + "/";
        List<String> assets =
                shelf.addresses().stream().map(address -> base + address).toList();
        return "self.SHELL_VERSION = " + json.writeValueAsString(shelf.version()) + ";\nself.SHELL_ASSETS = "
                + json.writeValueAsString(assets) + ";\nimportScripts(" + json.writeValueAsString(base + "js/worker.js")
                + ");\n";
    }
}
