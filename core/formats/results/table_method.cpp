// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/results/table_method.h"

#include "base/number.h"
#include "unit/repeats.h"

namespace ullage {

std::vector<std::pair<Message, Message>> comparison_method(const MeasureOptions& options) {
    return {
        {say(phrase("results", "Delivered energy")),
         say(phrase("results",
                    "The difference of the external meter's register from the first to the last reading of the run, times the meter's "
                    "correction factor. Marked zeroings and exchanges of the meter and rollovers of its register are joined; whatever else was "
                    "assumed about the register is listed with the run."))},
        {say(phrase("results", "Usable fraction")),
         say(phrase("results",
                    "Delivered energy from full to cut-off, divided by the rated energy, which is the maker's claim and carries no "
                    "uncertainty. It holds at the load and duration of the run: a slower drain feeds the unit's own consumption for longer."))},
        {say(phrase("results", "At one load")),
         say(phrase(
             "results",
             "Where a common load is named, a unit is moved to it by D = E* - P* T - c Q, fitted to all its full drains (E*: deliverable at no time "
             "cost, P*: no-load draw seen from the socket, T: hours of output on, Q: the squared load over time). A unit whose drains do not tell E* "
             "from P* stays as tested and says so."))},
        {say(phrase("results", "Repeats")),
         say(phrase(
             "results",
             "Drains of one unit from full to cut-off at loads within a factor of 1.25 and temperatures within 8 °C repeat one another. Their mean stands "
             "for the unit, with the scatter of its drains and Student's t of n - 1 degrees of freedom (JCGM 100:2008, 4.2), or with the repeatability "
             "below where that says more. A unit that is moved far beyond its tested loads, by more than a factor of 1.5, has no rank."))},
        {say(phrase("results", "Taken for granted")),
         say(phrase("results",
                    "Drains repeat within %1, standard uncertainty. A battery holds at most %2 % of its label. The quadratic loss is at most "
                    "%3 of the load at the rated output. A moment is noted within %4 min."),
             repeatability_words(options), say_number(100 * options.most_of_label, 0), say_digits(exact_text(options.most_quadratic_loss)),
             say_digits(exact_text(options.moment_doubt_min)))},
        {say(phrase("results", "Differences")),
         say(phrase(
             "results",
             "Two units are clearly different when the 95 % interval of their difference does not hold 0; else they are too close to call. The gain of a meter that measured both is "
             "counted once and cancels as far as the figures are alike; gains of different meters do not (JCGM 100:2008, 5.2). Between loads that "
             "differ by more than a factor of two a part of a meter's error limit does not cancel: a quarter of it, unless the meter states another."))},
        {say(phrase("results", "Interval")),
         say(phrase("results", "After ± stands half the width of an interval meant to cover 95 %. The meter's error limit counts as a rectangular "
                               "distribution common to all its readings; register steps, interpolation and noted times count as independent "
                               "(JCGM 100:2008, 4.3 and 5.1). The half-width comes from the distribution of their sum (JCGM 101:2008). Figures are "
                               "rounded so that the half-width keeps two significant digits (JCGM 100:2008, 7.2.6)."))},
        {say(phrase("results", "Kinds")),
         say(phrase("results",
                    "measured: from full to the unit's own cut-off. projected: extended from part of a drain on the assumption named. at least: "
                    "energy may be missing. bracket: between two limits, nothing said within. not known: the reason says what is lacking."))},
        {say(phrase("results", "Sources")),
         say(phrase("results", "JCGM 100:2008, Guide to the expression of uncertainty in measurement. JCGM 101:2008, Supplement 1: propagation of "
                               "distributions using a Monte Carlo method."))},
        {say(phrase("results", "What the figures are")),
         say(phrase("results", "Results are measurements of one specimen, not a safety certification."))},
    };
}

std::vector<std::pair<Message, Message>> readings_method() {
    return {
        {say(phrase("results", "Readings")),
         say(phrase("results",
                    "As the tester noted them, amended ones as they stand now, withdrawn ones left out. An empty cell was not noted. Times "
                    "are local with their offset from UTC (ISO 8601)."))},
        {say(phrase("results", "Delivered")),
         say(phrase("results",
                    "The difference of the external meter's register since the first reading, times the meter's correction factor, with marked "
                    "zeroings, exchanges and rollovers joined. Load since: that difference from one register reading to the next, over time."))},
        {say(phrase("results", "Gauge error")),
         say(phrase("results", "Gauge minus what is truly left, in percentage points; its limits come from the gauge's and the register's steps, the "
                               "noted times and the meter's error limit, and are meant to cover 95 % (JCGM 100:2008, 5.1)."))},
        {say(phrase("results", "What the figures are")),
         say(phrase("results", "Results are measurements of one specimen, not a safety certification."))},
    };
}

std::vector<std::pair<Message, Message>> gauge_steps_method() {
    return {
        {say(phrase("results", "Steps")),
         say(phrase(
             "results",
             "Each change of the gauge in its log, half-way between the last sample before it and the first after it; of a gauge that flickers, "
             "before and after that. Times are local with their offset from UTC (ISO 8601)."))},
        {say(phrase("results", "Gauge")),
         say(phrase("results", "The mean of what it showed before and after: what it showed on average at that moment, however it rounds."))},
        {say(phrase("results", "Delivered")),
         say(phrase("results", "By the external meter at that moment. What the unit says of its own output enters nothing."))},
        {say(phrase("results", "What the figures are")),
         say(phrase("results", "Results are measurements of one specimen, not a safety certification."))},
    };
}

std::vector<std::pair<Message, Message>> intervals_method() {
    return {
        {say(phrase("results", "Intervals")),
         say(phrase("results", "From one reading of gauge and register to the next. Times are local with their offset from UTC (ISO 8601)."))},
        {say(phrase("results", "Gauge-implied")),
         say(phrase("results", "Rated energy times the fall of the gauge; empty where the rated energy is not stated."))},
        {say(phrase("results", "Delivered")),
         say(phrase("results",
                    "The difference of the external meter's register, times the meter's correction factor, with marked zeroings, exchanges and "
                    "rollovers joined. Mean load: that over the time. Energy per point: that over the fall of the gauge."))},
        {say(phrase("results", "What the figures are")),
         say(phrase("results", "Results are measurements of one specimen, not a safety certification."))},
    };
}

} // namespace ullage
