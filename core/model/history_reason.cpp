// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/history_reason.h"

namespace ullage {
namespace {

struct ReasonWords {
    HistoryReason reason;
    Phrase words; ///< %1: a name, at the end
};

constexpr ReasonWords all_words[] = {{HistoryReason::undone, phrase("history", "undone")},
                                     {HistoryReason::redone, phrase("history", "redone")},
                                     {HistoryReason::not_all_recorded, phrase("history", "not all of it could be recorded")},
                                     {HistoryReason::run_not_ended, phrase("history", "the run was not ended")},
                                     {HistoryReason::joined, phrase("history", "joined with %1")}};

} // namespace

std::string kept_reason(HistoryReason reason, const std::string& name) {
    for (const ReasonWords& each : all_words)
        if (each.reason == reason) return say(each.words, name).english();
    return {};
}

Message say_reason(const std::string& kept) {
    for (const ReasonWords& each : all_words) {
        const std::string before_name = kept_reason(each.reason);
        const bool has_name = before_name != each.words.english;
        if (has_name && kept.size() > before_name.size() && kept.starts_with(before_name)) return say(each.words, kept.substr(before_name.size()));
        if (!has_name && kept == before_name) return say(each.words);
    }
    return kept;
}

} // namespace ullage
