package org.ohmstead.assessment.model.forecast;

/** Whether a whole string was renewed, or all its links remade, since the last survey without a record. */
final class RenewalCheck {
    private static final int LINKS_NEEDED = 8;
    private static final int SURVEYS_NEEDED = 2;
    private static final double TRUST = .7;
    private static final double CLIP = 4;
    private static final double REMADE_PER_YEAR = .02;

    private final GroupState group;
    private final ForecastParameters parameters;
    private final double years;
    private final double sinceLast;

    RenewalCheck(GroupState group, ForecastParameters parameters, double years, double sinceLast) {
        this.group = group;
        this.parameters = parameters;
        this.years = years;
        this.sinceLast = sinceLast;
    }

    /** @return whether everything was started anew */
    boolean apply(double[] logs, Centre centre) {
        boolean links = group.constants.startsGoing() > 0;
        boolean renewed = sinceLast > 0 && (links ? allRemade(logs) : fellTogether(centre));
        if (renewed) {
            restartAll();
        }
        return renewed;
    }

    private boolean fellTogether(Centre centre) {
        double fall = group.common.expected() - centre.value();
        return group.surveys > 0 && fall > parameters.renewalFall() && group.common.rise() > parameters.renewalFall();
    }

    /** Adds up over the links how much better "all as new" explains the readings than "all as predicted". */
    private boolean allRemade(double[] logs) {
        double evidence = Math.log(REMADE_PER_YEAR * sinceLast);
        int readings = 0;
        for (int i = 0; i < logs.length; i++) {
            if (Double.isFinite(logs[i]) && group.units[i].readings > 0) {
                evidence += TRUST * clip(logRatio(group.units[i], logs[i]));
                readings++;
            }
        }
        return group.surveys >= SURVEYS_NEEDED && readings >= LINKS_NEEDED && evidence > 0;
    }

    private double logRatio(UnitState unit, double log) {
        CommonState common = group.common;
        double survey = common.surveyVariance + group.readingVariance;
        double share = group.share(unit, years, parameters.shareExponent());
        double own = unit.ownLevel ? unit.healthy.level : 0;
        double level = common.state.mean[CommonState.LEVEL];
        double levelVariance = common.state.cov(CommonState.LEVEL, CommonState.LEVEL);
        double spread = unit.constants.levelSpread() * unit.constants.levelSpread();
        double asNew = Normal.density(log - level - own, spread + levelVariance + survey);
        double asPredicted = unit.density(log - level - share * common.rise(), survey + common.expectedVariance());
        return Math.log((asNew + Double.MIN_NORMAL) / (asPredicted + Double.MIN_NORMAL));
    }

    private static double clip(double value) {
        return Math.max(-CLIP, Math.min(CLIP, value));
    }

    private void restartAll() {
        double when = years - sinceLast / 2;
        group.suspectedRenewalYears = when;
        group.restartCommon(when);
        group.common.predict(years - when);
        for (UnitState unit : group.units) {
            unit.remake(when);
            unit.suspectedRestartYears = when;
            unit.predict(years - when);
        }
    }
}
