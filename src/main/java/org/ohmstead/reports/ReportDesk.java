package org.ohmstead.reports;

import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.ohmstead.access.Access;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Where reports are asked for. */
@Service
public class ReportDesk {

    private final Map<ReportKind, ReportMaker> makers = new EnumMap<>(ReportKind.class);
    private final Access access;

    ReportDesk(List<ReportMaker> makers, Access access) {
        makers.forEach(maker -> this.makers.put(maker.kind(), maker));
        this.access = access;
    }

    /** Those that can be asked for. */
    public List<ReportKind> kinds() {
        access.require(SEE_ESTATE);
        return Arrays.stream(ReportKind.values()).filter(makers::containsKey).toList();
    }

    /**
     * With what is known now.
     *
     * @throws org.ohmstead.kernel.NotFound when what it is to speak of lies outside the reach
     */
    @Transactional(readOnly = true)
    public MadeReport make(ReportWish wish) {
        access.require(SEE_ESTATE);
        ReportMaker maker = makers.get(wish.kind());
        if (maker == null) {
            throw org.ohmstead.kernel.NotFound.of("report", wish.kind().code());
        }
        return maker.make(wish);
    }
}
