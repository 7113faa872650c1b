package org.ohmstead.onsite.web;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.ResourcePatternResolver;
import org.springframework.stereotype.Component;

/** The files of the shell that a device keeps, and a version that changes whenever one of them does. */
@Component
class Shelf {

    private static final String STATIC = "/static/";
    private static final String WEBJARS = "/META-INF/resources/";

    private final List<String> addresses;
    private final String version;

    Shelf(ResourcePatternResolver resources) throws IOException {
        List<Resource> found = new ArrayList<>();
        for (String pattern : new String[] {"css/*.css", "js/*.js", "fonts/*.woff2", "images/*"}) {
            found.addAll(List.of(resources.getResources("classpath*:static/" + pattern)));
        }
        found.addAll(
                List.of(resources.getResources("classpath*:META-INF/resources/webjars/htmx.org/*/dist/htmx.min.js")));
        found.sort(Comparator.comparing(Shelf::address));
        addresses = found.stream().map(Shelf::address).distinct().toList();
        version = fingerprint(found);
    }

    /** Relative to the context path. */
    List<String> addresses() {
        return addresses;
    }

    String version() {
        return version;
    }

    private static String address(Resource resource) {
        try {
            String url = resource.getURL().toString();
            int at = url.lastIndexOf(STATIC);
            return at >= 0
                    ? url.substring(at + STATIC.length())
                    : url.substring(url.lastIndexOf(WEBJARS) + WEBJARS.length());
        } catch (IOException e) {
            throw new IllegalStateException("A file of the shell has no address: " + resource, e);
        }
    }

    private static String fingerprint(List<Resource> files) throws IOException {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (Resource file : files) {
                try (InputStream bytes = file.getInputStream()) {
                    digest.update(bytes.readAllBytes());
                }
            }
            return HexFormat.of().formatHex(digest.digest(), 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }
}
