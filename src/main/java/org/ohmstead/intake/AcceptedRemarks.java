package org.ohmstead.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ohmstead.intake.check.RemarkCode;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What was remarked on surveys that were accepted all the same. Whoever asks has seen to the reach. */
@Component
public class AcceptedRemarks {

    /** A remark and where in the survey it stands. */
    public record Made(RemarkCode code, String place) {}

    private final JdbcClient jdbc;

    AcceptedRemarks(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * In one query, however many surveys.
     *
     * @param surveyByString the survey asked about of each string
     * @return by string; strings without such a remark are left out
     */
    public Map<Long, List<Made>> of(Map<Long, Long> surveyByString, Set<RemarkCode> codes) {
        Map<Long, List<Made>> found = new HashMap<>();
        if (!surveyByString.isEmpty()) {
            Collection<Long> surveys = surveyByString.values();
            jdbc.sql("""
                            select s.string_id, r.code, r.place
                            from survey s join upload_remark r on r.upload_id = s.upload_id
                            where s.id = any (:surveys) and r.code = any (:codes)
                            order by s.string_id, r.code, r.ordinal""")
                    .param("surveys", surveys.toArray(Long[]::new))
                    .param("codes", codes.stream().map(RemarkCode::name).toArray(String[]::new))
                    .query(row -> {
                        found.computeIfAbsent(row.getLong("string_id"), id -> new ArrayList<>())
                                .add(new Made(RemarkCode.valueOf(row.getString("code")), row.getString("place")));
                    });
        }
        return found;
    }
}
