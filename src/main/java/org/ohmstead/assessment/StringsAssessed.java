package org.ohmstead.assessment;

import java.util.List;

/** Many strings were looked at again in one transaction, as on a walk over the estate. Published before the commit. */
public record StringsAssessed(List<StringAssessed> strings) {

    public StringsAssessed {
        strings = List.copyOf(strings);
    }
}
