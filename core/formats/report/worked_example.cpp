// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/report/worked_example.h"

#include "base/number.h"
#include "formats/report/report_numbers.h"
#include "formats/text/quantity_title.h"
#include "unit/advice.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace ullage {

namespace {

constexpr double example_load_w = 120; ///< between the tested loads of both units that change places
constexpr double close_load_w = 180;   ///< the third unit was tested there
constexpr const char *first_name = "Osk 1200", *second_name = "Pelm 900", *third_name = "Tarrow 2k";

Message shown(const Quantity& quantity) { return say_quantity(quantity, quantity_decimals(quantity.key)); }

Message about(const Quantity& quantity, int decimals) { return say_number(quantity.value.value_or(0), decimals); }

const ComparisonRow* row_of(const Comparison& comparison, const char* name) {
    const auto at = std::ranges::find(comparison.rows, name, [](const ComparisonRow& row) { return row.unit.name; });
    return at == comparison.rows.end() ? nullptr : &*at;
}

std::size_t place_of(const Comparison& comparison, const ComparisonRow* row) { return static_cast<std::size_t>(row - comparison.rows.data()); }

/// What the two fractions differ by, and whether that is resolved.
Message verdict(const Comparison& comparison, const FairComparison& fair, std::size_t one, std::size_t other) {
    const PairVerdict pair = compare_pair(comparison, fair, one, other);
    const std::optional<double> half = pair.difference.half_width(), first = fair.rows[one].usable_fraction.half_width(),
                                second = fair.rows[other].usable_fraction.half_width();
    const bool cancels = pair.shared_meter && half && first && second && *half < std::hypot(*first, *second);
    std::vector<Message> sentences{
        say(pair.resolved
                ? phrase("report", "%1 less %2 is %3: its interval does not hold 0, so the two are clearly different.")
                : phrase("report", "%1 less %2 is %3: its interval holds 0, so the two are too close to call with these meters and neither may be "
                                   "called better."),
            comparison.rows[one].unit.name, comparison.rows[other].unit.name, shown(pair.difference))};
    if (cancels)
        sentences.push_back(
            say(phrase("report", "Its ± is less than those of the two fractions suggest: one meter measured both, and the error of its gain "
                                 "cancels.")));
    return say_joined(sentences, " ");
}

ExampleStep tested_step(const Comparison& tested, const ComparisonRow& first, const ComparisonRow& second) {
    const FairComparison as_tested = compare_at(tested, std::nullopt);
    ExampleStep step{say(phrase("report", "As tested")), {}, "as-tested"};
    for (const ComparisonRow* row : {&first, &second})
        step.sentences.push_back(say(phrase("report", "%1 was drained at %2 W for %3 h and delivered %4 of %5 rated: usable %6."), row->unit.name,
                                     about(row->mean_load_w, 0), about(row->duration_h, 1), shown(row->delivered_wh), shown(row->rated_wh),
                                     shown(row->usable_fraction)));
    step.sentences.push_back(say(phrase("report", "One drain stands for each of them, so each ± also counts that drains repeat only within %1 %."),
                                 say_digits(exact_text(tested.fits.front().options.repeatability_percent))));
    step.sentences.push_back(verdict(tested, as_tested, place_of(tested, &first), place_of(tested, &second)));
    return step;
}

ExampleStep slow_step(const ComparisonRow& fast, const ComparisonRow& slow) {
    const double longer_h = slow.duration_h.value.value_or(0) - fast.duration_h.value.value_or(0);
    const double draw_w = slow.no_load_draw_w.value.value_or(0);
    ExampleStep step{say(phrase("report", "Why a slow drain delivers less")), {}, "against-load"};
    step.sentences.push_back(say(phrase("report", "%1 delivered %2 in %3 h at %4 W, but %5 in %6 h at %7 W."), first_name, shown(fast.delivered_wh),
                                 about(fast.duration_h, 1), about(fast.mean_load_w, 0), shown(slow.delivered_wh), about(slow.duration_h, 1),
                                 about(slow.mean_load_w, 0)));
    step.sentences.push_back(
        say(phrase("report",
                   "While its output is on, a unit also feeds itself. The run times of all drains of %1 give a no-load draw of %2. The slow drain "
                   "lasted %3 h longer, in which that draw takes about %4 Wh; it delivered %5 Wh less."),
            first_name, shown(slow.no_load_draw_w), say_number(longer_h, 1), say_number(draw_w * longer_h, 0),
            say_number(fast.delivered_wh.value.value_or(0) - slow.delivered_wh.value.value_or(0), 0)));
    step.sentences.push_back(say(phrase("report", "So a usable fraction belongs to the load of its run, and units have an order at one load only.")));
    return step;
}

ExampleStep moved_step(const WorkedExample& example, std::size_t first, std::size_t second, std::size_t third) {
    const FairComparison& fair = example.fair;
    ExampleStep step{say(phrase("report", "At one load")), {}, "at-load"};
    for (const std::size_t row : {first, second})
        step.sentences.push_back(say(phrase("report", "At %1 %2 would deliver %3 in %4 h: usable %5 (%6)."), say_common_load(*fair.load),
                                     example.tested.rows[row].unit.name, shown(fair.rows[row].deliverable_wh), about(fair.rows[row].run_time_h, 1),
                                     shown(fair.rows[row].usable_fraction), say_kind(fair.rows[row].usable_fraction.kind)));
    step.sentences.push_back(verdict(example.tested, fair, first, second));
    if (!fair.remarks.empty()) step.sentences.push_back(fair.remarks.front());
    if (fair.rows[third].standing == Standing::as_tested)
        step.sentences.push_back(
            say(phrase("report", "%1 cannot be converted and stays as tested: %2."), third_name, without_advice(fair.rows[third].reason)));
    return step;
}

ExampleStep close_step(const Comparison& tested, std::size_t first, std::size_t third) {
    const FairComparison close = compare_at(tested, CommonLoad{close_load_w, 1, {}});
    ExampleStep step{say(phrase("report", "What these meters leave open")), {}, {}};
    step.sentences.push_back(
        say_joined({say(phrase("report", "At %1 %2 can stand beside %3 (%4 and %5)."), say_common_load(*close.load), third_name, first_name,
                        shown(close.rows[third].usable_fraction), shown(close.rows[first].usable_fraction)),
                    verdict(tested, close, first, third), say(phrase("report", "Meters with a smaller error limit would narrow it."))},
                   " "));
    return step;
}

} // namespace

Result<WorkedExample> worked_example(const std::vector<RunRecord>& records) {
    WorkedExample example{compare_as_tested(records), compare_as_tested(records, CompareRows::every_drain), {}, {}};
    const ComparisonRow *first = row_of(example.tested, first_name), *second = row_of(example.tested, second_name),
                        *third = row_of(example.tested, third_name);
    const ComparisonRow *fast = nullptr, *slow = nullptr;
    for (const ComparisonRow& row : example.drains.rows) {
        if (row.unit.name != first_name || row.usable_fraction.kind != Kind::measured || !row.mean_load_w.value || !row.duration_h.value) continue;
        if (!fast || *row.mean_load_w.value > *fast->mean_load_w.value) fast = &row;
        if (!slow || *row.mean_load_w.value < *slow->mean_load_w.value) slow = &row;
    }
    if (!first || !second || !third || !fast || fast == slow)
        return Error{Failure::not_found, say(phrase("report", "the units and drains of the worked example are not all there")),
                     say(phrase("report", "sample data")), say(phrase("report", "use the sample data that come with the program"))};
    example.fair = compare_at(example.tested, CommonLoad{example_load_w, 1, {}});
    const std::size_t a = place_of(example.tested, first), b = place_of(example.tested, second), c = place_of(example.tested, third);
    example.steps = {tested_step(example.tested, *first, *second), slow_step(*fast, *slow), moved_step(example, a, b, c),
                     close_step(example.tested, a, c)};
    const NumberForm form; // true minus signs
    for (ExampleStep& step : example.steps)
        for (std::string& sentence : step.sentences) sentence = form.apply(sentence);
    return example;
}

} // namespace ullage
