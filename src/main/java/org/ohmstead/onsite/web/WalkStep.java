package org.ohmstead.onsite.web;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.onsite.JarPlace;
import org.ohmstead.onsite.LinkPlace;
import org.ohmstead.onsite.Walk;

/** One stop of the long form: a jar, or the link after it. Exactly one of the two is there. */
record WalkStep(@Nullable JarPlace jar, @Nullable LinkPlace link) {

    /** In walking order: the positive terminal link, jar 1, link 1|2, jar 2 and so on. */
    static List<WalkStep> of(Walk walk) {
        List<WalkStep> steps = new ArrayList<>();
        steps.add(new WalkStep(null, walk.links().get(0)));
        for (JarPlace jar : walk.jars()) {
            steps.add(new WalkStep(jar, null));
            steps.add(new WalkStep(null, walk.links().get(jar.position())));
        }
        return steps;
    }
}
