package org.ohmstead.capacity.web;

import org.ohmstead.capacity.model.JarResult;
import org.ohmstead.kernel.Urgency;

/** A jar of a capacity test as a page shows it. */
public record JarRow(JarResult jar, Urgency asks) {

    static JarRow of(JarResult jar) {
        return new JarRow(jar, CapacityDrawings.asks(jar.finding()));
    }
}
