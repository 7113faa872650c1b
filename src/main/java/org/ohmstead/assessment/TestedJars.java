package org.ohmstead.assessment;

import java.util.List;
import org.ohmstead.assessment.model.estate.TestedJar;

/** What capacity tests found of jars, beside their readings before; told by whoever keeps the tests. */
interface TestedJars {

    /** Over the whole estate. */
    List<TestedJar> of(String jarTypeCode);
}
