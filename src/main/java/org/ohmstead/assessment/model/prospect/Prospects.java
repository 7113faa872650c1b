package org.ohmstead.assessment.model.prospect;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Doubt;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.Judge;
import org.ohmstead.assessment.model.Limit;
import org.ohmstead.assessment.model.Limits;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.RiskDate;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.assessment.model.StringPlan;
import org.ohmstead.assessment.model.Trouble;
import org.ohmstead.assessment.model.UnitForecast;
import org.ohmstead.assessment.model.forecast.NextVisit;
import org.ohmstead.assessment.model.forecast.StringForecast;
import org.ohmstead.kernel.Urgency;

/** Joins what the forecast says to a judgement by the practitioner's rules, which it never makes milder. */
public final class Prospects {

    private final StringPlan plan;
    private final Limits limits;

    public Prospects(StringPlan plan, Limits limits) {
        this.plan = plan;
        this.limits = limits;
    }

    /**
     * The judgement with the forecast in it; as it was while there is no survey.
     *
     * @param forecast as of the same survey
     */
    public StringJudgement join(StringJudgement byRules, StringForecast forecast) {
        if (byRules.surveyId() == null) {
            return byRules;
        }
        RiskRules risks = new RiskRules(byRules.asOf(), isOnFloat(byRules), limits);
        List<LinkJudgement> links = links(byRules.links(), forecast, risks);
        List<JarJudgement> jars = jars(byRules.jars(), links, forecast, risks);
        List<Doubt> doubts = new ArrayList<>(byRules.doubts());
        doubts.addAll(ForecastDoubts.of(forecast));
        return new Judge(limits).with(byRules, jars, links, doubts, riskDate(forecast));
    }

    private static boolean isOnFloat(StringJudgement judgement) {
        return judgement.doubts().stream().noneMatch(doubt -> doubt.kind() == Doubt.Kind.OFF_FLOAT);
    }

    private List<JarJudgement> jars(
            List<JarJudgement> jars, List<LinkJudgement> links, StringForecast forecast, RiskRules risks) {
        Troubles troubles = new Troubles(plan.jarType().technology(), forecast.commonRise(), links);
        return IntStream.range(0, jars.size())
                .mapToObj(i -> {
                    JarJudgement jar = jars.get(i);
                    var said = forecast.jars().get(i);
                    List<Reason> more = risks.of(jar, said);
                    boolean asks = asks(jar.reasons()) || asks(more);
                    return jar.with(jar(said, troubles.of(jar, said, asks)), more);
                })
                .toList();
    }

    private List<LinkJudgement> links(List<LinkJudgement> links, StringForecast forecast, RiskRules risks) {
        Troubles troubles = new Troubles(plan.jarType().technology(), forecast.commonRise(), links);
        return IntStream.range(0, links.size())
                .mapToObj(i -> {
                    LinkJudgement link = links.get(i);
                    var said = forecast.links().get(i);
                    List<Reason> more = risks.of(link, said);
                    boolean asks = asks(link.reasons()) || asks(more);
                    return link.with(link(said, troubles.of(link, said, asks)), more);
                })
                .toList();
    }

    private static boolean asks(List<Reason> reasons) {
        return reasons.stream().anyMatch(reason -> reason.asks() != Urgency.CLEAR);
    }

    private static UnitForecast jar(
            org.ohmstead.assessment.model.forecast.UnitForecast said, @Nullable Trouble trouble) {
        return new UnitForecast(
                said.probability(),
                said.score(),
                said.beyondLimit(),
                said.early(),
                said.median(),
                said.late(),
                said.riseOverNew(),
                said.ratePerYear(),
                trouble);
    }

    private static UnitForecast link(
            org.ohmstead.assessment.model.forecast.UnitForecast said, @Nullable Trouble trouble) {
        return new UnitForecast(
                said.probability(),
                said.score(),
                said.beyondLimit(),
                null,
                null,
                null,
                said.riseOverNew(),
                said.ratePerYear(),
                trouble);
    }

    /** A pending reading speaks through its own reason; the first surveys of a string rest on its like alone. */
    private @Nullable RiskDate riskDate(StringForecast forecast) {
        NextVisit next = forecast.next();
        int readings =
                forecast.jars().stream().mapToInt(jar -> jar.readings()).max().orElse(0);
        if (next.governs() != NextVisit.Governs.RISK || readings < limits.countOf(Limit.RISK_READINGS)) {
            return null;
        }
        String most =
                next.unit() < 0 ? "" : " Most of it comes from " + (next.link() ? "link " : "jar ") + next.unit() + ".";
        return new RiskDate(
                next.on(),
                "The chances that a jar or link not yet flagged passes its limit add up to what may be risked in a string of "
                        + plan.positions() + " jars." + most);
    }
}
