package org.ohmstead.testbed;

import java.util.List;
import org.ohmstead.assessment.model.StringHistory;

/** One invented string: what an engineer would see, and what is true. */
record SimulatedString(StringHistory history, List<Truth> truths) {}
