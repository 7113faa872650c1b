package org.ohmstead.overview;

import java.util.List;
import org.ohmstead.programme.DigestPart;
import org.springframework.stereotype.Component;

/** Held surveys, as the digest by e-mail names them. */
@Component
class HeldInDigest implements DigestPart {

    private static final int MOST = 50;

    private final HeldAtTheDoor door;

    HeldInDigest(HeldAtTheDoor door) {
        this.door = door;
    }

    @Override
    public String title() {
        return "Held surveys that wait for a decision";
    }

    @Override
    public List<String> lines() {
        return door.latest(MOST).stream()
                .map(held -> held.title() + ": " + held.why())
                .toList();
    }
}
