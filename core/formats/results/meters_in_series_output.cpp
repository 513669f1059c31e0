// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/results/meters_in_series_output.h"

#include "base/language.h"
#include "formats/text/table_unicode.h"

namespace ullage {

namespace {

Json error_json(const std::optional<ErrorRange>& error) {
    if (!error) return nullptr;
    return Json::array({number_json(error->low_percent), number_json(error->high_percent)});
}

Json load_json(const SeriesLoad& load) {
    return {{"load_w", number_json(load.load_w)},
            {"first_wh", number_json(load.first_wh)},
            {"second_wh", number_json(load.second_wh)},
            {"gain_ratio", quantity_json(load.ratio)},
            {"contradiction", load.contradiction},
            {"first_error_percent", error_json(load.first_error)},
            {"second_error_percent", error_json(load.second_error)},
            {"sentence", load.sentence}};
}

} // namespace

Json meters_in_series_json(const std::vector<MetersInSeries>& pairs) {
    const SpeakingIn for_machines(english());
    Json list = Json::array();
    for (const MetersInSeries& pair : pairs) {
        Json loads = Json::array();
        for (const SeriesLoad& load : pair.loads) loads.push_back(load_json(load));
        list.push_back({{"first", pair.first.name}, {"second", pair.second.name}, {"runs", pair.run_uuids.size()}, {"loads", std::move(loads)}});
    }
    return list;
}

std::string meters_in_series_text(const std::vector<MetersInSeries>& pairs) {
    std::string text;
    for (const MetersInSeries& pair : pairs) {
        const Message head =
            say_count(pair.run_uuids.size(), phrases("results", "Meters in series: %1 and %2 (%n runs)", "Meters in series: %1 and %2 (%n run)"),
                      pair.first.name, pair.second.name);
        text += '\n' + one_line(head.text()) + '\n';
        for (const SeriesLoad& load : pair.loads) text += "  " + one_line(load.sentence.text()) + '\n';
    }
    return text;
}

} // namespace ullage
