package org.ohmstead.onsite.web;

import java.net.URI;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;

/** @param address by which people reach the service; without it, the address of whoever asks */
@ConfigurationProperties("ohmstead")
record OnSiteSettings(@Nullable URI address) {

    OnSiteSettings {
        if (address != null && address.getHost() == null) {
            throw new IllegalArgumentException(
                    "ohmstead.address needs a scheme and a host, such as https://batteries.example/, not " + address);
        }
    }
}
