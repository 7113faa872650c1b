package org.ohmstead.assessment;

import java.util.List;
import java.util.Map;
import org.ohmstead.assessment.model.estate.TestedJar;

/** What capacity tests found of jars, beside their readings before. */
interface TestedJars {

    /** By jar type, over the whole estate. */
    Map<String, List<TestedJar>> byJarType();
}
