// SPDX-License-Identifier: GPL-3.0-or-later
#include "pv/inside/pv_words.h"

#include "base/number.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

using Outcome = PvComparison::Outcome;

constexpr std::size_t cold = 0, hot = 1, operating = 2, circuit = 3, power = 4; ///< places in PvCheck::comparisons

/// "a", "a and b", "a, b and c".
std::string listed(const std::vector<std::string>& names) {
    std::string text;
    for (std::size_t i = 0; i < names.size(); ++i) text += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
    return text;
}

std::string percent(double value) { return exact_text(value) + " %"; }

/// " with the module's tolerance of 3 %"; nothing without one.
std::string with_tolerance(const PvCheck& check) {
    return check.voc_tolerance_percent > 0 ? " with the module's tolerance of " + percent(check.voc_tolerance_percent) : std::string();
}

std::string ask_words(const PvCheck& check) {
    const PvComparison &works = check.comparisons[operating], &shorted = check.comparisons[circuit];
    std::vector<std::string> parts;
    if (works.outcome == Outcome::ask)
        parts.push_back(fmt::format("the operating current of {} is {} above the {} that the input is made for", amps_text(*works.value),
                                    amps_text(-*works.margin), amps_text(*works.limit)));
    if (shorted.outcome == Outcome::ask)
        parts.push_back(fmt::format("the short-circuit current, {} with the factor 1.25, is above the {} that are stated, and how much the input "
                                    "withstands is not",
                                    amps_text(*shorted.value), amps_text(*shorted.limit)));
    return "Do not connect before the maker has been asked: " + listed(parts) + ". More current is not clipping.";
}

std::string close_words(const PvCheck& check) {
    const PvComparison &most = check.comparisons[cold], &least = check.comparisons[hot];
    std::string text;
    if (most.outcome == Outcome::too_close)
        text = fmt::format("Do not connect: in the cold the string stays only {} below the limit of {} as calculated, and reaches {}{}.",
                           volts_text(*most.margin), volts_text(*most.limit), volts_text(*most.worst), with_tolerance(check));
    if (least.outcome == Outcome::too_close)
        text += fmt::format("{}{} the string keeps only {} above the start voltage as calculated, and falls to {}{}.", text.empty() ? "" : " ",
                            text.empty() ? "Too close to call: in the heat" : "In the heat", volts_text(*least.margin), volts_text(*least.worst),
                            with_tolerance(check));
    return text;
}

std::string clip_words(const PvCheck& check) {
    const PvComparison& each = check.comparisons[power];
    return fmt::format("{} of PV against the {} that the input takes: up to {} cannot be used.", watts_text(*each.value), watts_text(*each.limit),
                       watts_text(-*each.margin));
}

std::string room_words(const PvCheck& check) {
    const PvComparison &most = check.comparisons[cold], &least = check.comparisons[hot];
    return fmt::format("in the cold the string stays {} below the voltage limit, in the heat {} above the start voltage,{} counted",
                       volts_text(*most.limit - *most.worst), volts_text(*least.worst - *least.limit),
                       check.voc_tolerance_percent > 0 ? " the module's tolerance of " + percent(check.voc_tolerance_percent) : " no tolerance");
}

std::string lead(const PvSheet& sheet, const PvCheck& check) {
    const PvComparison &most = check.comparisons[cold], &least = check.comparisons[hot], &shorted = check.comparisons[circuit];
    switch (check.verdict) {
    case PvVerdict::over_voltage_when_cold:
        return fmt::format(
            "Danger, do not connect: at {} the string reaches {}, which is {} above the limit of {}. The input can be destroyed and catch fire.",
            degrees_text(*sheet.coldest_c), volts_text(*most.value), volts_text(-*most.margin), volts_text(*most.limit));
    case PvVerdict::over_short_circuit:
        return fmt::format("Danger, do not connect: the short-circuit current, {} with the factor 1.25, is {} above the short-circuit limit of {}.",
                           amps_text(*shorted.value), amps_text(-*shorted.margin), amps_text(*shorted.limit));
    case PvVerdict::ask_before_connecting: return ask_words(check);
    case PvVerdict::too_close: return close_words(check);
    case PvVerdict::too_low_when_hot:
        return fmt::format("Too low to start when hot: the string falls to {}, which is {} below the start voltage of {}.", volts_text(*least.value),
                           volts_text(-*least.margin), volts_text(*least.limit));
    case PvVerdict::not_known: return "Do not connect yet: whether the string suits the input is not known.";
    case PvVerdict::clips: return "Fits with clipping: " + clip_words(check) + " For the rest " + room_words(check) + ".";
    case PvVerdict::fits: return "Fits: " + room_words(check) + ".";
    }
    return {};
}

} // namespace

std::string volts_text(double value) { return fixed_text(value, 1) + " V"; }
std::string amps_text(double value) { return fixed_text(value, 1) + " A"; }
std::string watts_text(double value) { return fixed_text(value, 0) + " W"; }

std::string degrees_text(double value) {
    const int decimals = std::floor(value) == value ? 0 : 1;
    return (value < 0 ? signed_text(value, decimals) : fixed_text(value, decimals)) + " °C";
}

std::string modules_text(int count) { return count_text(count, "module", "modules"); }

std::string missing_text(const std::vector<PvMissing>& missing) {
    std::vector<std::string> groups;
    for (const char* owner : {"the module", "the place", "the PV input"}) {
        std::vector<std::string> names;
        for (const PvMissing& each : missing)
            if (each.of == owner) names.push_back(each.what);
        if (!names.empty()) groups.push_back(listed(names) + " of " + owner);
    }
    std::string text;
    for (const std::string& group : groups) text += (text.empty() ? "" : ", ") + group;
    return text + (missing.size() == 1 ? " is missing" : " are missing");
}

std::string verdict_words(const PvCheck& check) {
    const std::string unknown = check.missing.empty() ? std::string() : "not known: " + missing_text(check.missing);
    const auto and_unknown = [&unknown](std::string words) { return unknown.empty() ? words : words + "; " + unknown; };
    switch (check.verdict) {
    case PvVerdict::over_voltage_when_cold: return "exceeds the voltage limit when cold";
    case PvVerdict::over_short_circuit: return "exceeds the short-circuit limit";
    case PvVerdict::ask_before_connecting: return and_unknown("ask before connecting");
    case PvVerdict::too_close: {
        std::vector<std::string> which;
        for (const PvComparison& each : check.comparisons)
            if (each.outcome == Outcome::too_close) which.push_back(each.title);
        return and_unknown("too close to call: " + listed(which));
    }
    case PvVerdict::too_low_when_hot: return and_unknown("too low to start when hot");
    case PvVerdict::not_known: return unknown;
    case PvVerdict::clips: return "fits with clipping";
    case PvVerdict::fits: return "fits";
    }
    return unknown;
}

std::string headline_words(const PvSheet& sheet, const PvCheck& check) {
    std::string text = lead(sheet, check);
    const auto add = [&text](const std::string& sentence) { text += ' ' + sentence; };
    const auto is = [&check](std::size_t at, Outcome outcome) { return check.comparisons[at].outcome == outcome; };
    if (is_danger(check.verdict) && (is(operating, Outcome::ask) || is(circuit, Outcome::ask))) add("The current is above its limit too.");
    if (check.verdict == PvVerdict::over_voltage_when_cold && is(circuit, Outcome::bad)) add("The short-circuit current is above its limit too.");
    if (check.verdict != PvVerdict::too_close && is(cold, Outcome::too_close)) add("The voltage when cold is too close to its limit to call.");
    if (check.verdict != PvVerdict::too_low_when_hot && is(hot, Outcome::bad)) add("When hot the string is too low to start.");
    if (check.verdict != PvVerdict::clips && !is_danger(check.verdict) && is(power, Outcome::clips)) add(clip_words(check));
    if (!check.missing.empty()) {
        std::vector<std::string> unmade;
        for (const PvComparison& each : check.comparisons)
            if (each.outcome == Outcome::not_known) unmade.push_back(each.title);
        add(fmt::format("Not checked: {}, as {}.", listed(unmade), missing_text(check.missing)));
    }
    if (!check.string_fuses.empty()) add("Each string needs its own fuse.");
    return text;
}

std::string suggestion_words(const PvCheck& check) {
    if (!check.largest_series) return "How many modules may be in series is not known until the voltage when cold and the limit are.";
    if (*check.largest_series == 0) return "Not even one of these modules stays within the voltage limit when cold.";
    if (check.least_series && *check.least_series > *check.largest_series)
        return fmt::format("No string fits: {} would be needed to start when hot, but only {} may be in series when cold.",
                           modules_text(*check.least_series), modules_text(*check.largest_series));
    std::string text = fmt::format("Longest string within the voltage limit: {} in series", modules_text(*check.largest_series));
    if (check.least_series) text += fmt::format(" ({} at least, to start when hot)", *check.least_series);
    if (!check.largest_parallel) return text + "; how many strings side by side is not known.";
    if (*check.largest_parallel == 0) return text + "; even one string brings more current than is stated: ask the maker.";
    return text + fmt::format("; most strings within the current limit: {}.", *check.largest_parallel);
}

std::string_view pv_verdict_key(PvVerdict verdict) {
    switch (verdict) {
    case PvVerdict::over_voltage_when_cold: return "over_voltage_when_cold";
    case PvVerdict::over_short_circuit: return "over_short_circuit";
    case PvVerdict::ask_before_connecting: return "ask_before_connecting";
    case PvVerdict::too_close: return "too_close";
    case PvVerdict::too_low_when_hot: return "too_low_when_hot";
    case PvVerdict::not_known: return "not_known";
    case PvVerdict::clips: return "clips";
    case PvVerdict::fits: return "fits";
    }
    return "not_known";
}

std::string_view pv_outcome_text(PvComparison::Outcome outcome) {
    switch (outcome) {
    case Outcome::good: return "inside";
    case Outcome::clips: return "clipped";
    case Outcome::bad: return "beyond";
    case Outcome::not_known: return "not known";
    case Outcome::ask: return "above: ask";
    case Outcome::too_close: return "too close to call";
    }
    return "not known";
}

std::string_view pv_decision_rule() {
    return "Decision rule: a voltage is inside its limit where it stays so with the whole tolerance of the module, beyond it as soon as the "
           "calculated value is, and too close to call in between (guarded acceptance, JCGM 106:2012, 8.3; NEC 690.7(A) holds the calculated value "
           "against the limit).";
}

std::vector<std::string> pv_cautions() {
    return {
        "PV strings are live whenever there is light and can carry dangerous DC voltage; they cannot be switched off at the module.",
        "Connect and disconnect only without load and with the modules covered; DC arcs do not go out by themselves.",
        "Check polarity and measure the open-circuit voltage before connecting.",
        "Local electrical codes and a licensed electrician come first; this check is arithmetic on stated values, not a design.",
    };
}

} // namespace ullage
