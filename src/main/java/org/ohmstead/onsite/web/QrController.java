package org.ohmstead.onsite.web;

import java.net.URI;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.http.CacheControl;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import org.springframework.web.util.UriComponentsBuilder;

/** The code on a string's rack or paper: a phone that reads it opens the walk. */
@Controller
@EnableConfigurationProperties(OnSiteSettings.class)
class QrController {

    private final FleetRegister register;
    private final OnSiteSettings settings;

    QrController(FleetRegister register, OnSiteSettings settings) {
        this.register = register;
        this.settings = settings;
    }

    @GetMapping(path = "/strings/{stringId}/qr.svg", produces = "image/svg+xml;charset=UTF-8")
    ResponseEntity<String> code(@PathVariable long stringId) {
        StringView string = register.string(stringId);
        String svg = QrCode.of(walkOf(stringId)).svg("Opens the walk of " + string.title());
        return ResponseEntity.ok()
                .cacheControl(CacheControl.noCache().cachePrivate())
                .body(svg);
    }

    private String walkOf(long stringId) {
        URI address = settings.address();
        UriComponentsBuilder base = address == null
                ? ServletUriComponentsBuilder.fromCurrentContextPath()
                : UriComponentsBuilder.fromUri(address);
        return base.pathSegment("strings", String.valueOf(stringId), "walk")
                .build()
                .toUriString();
    }
}
