// SPDX-License-Identifier: GPL-3.0-or-later
#include "pv/inside/pv_words.h"

#include "base/number.h"

#include <cmath>

namespace ullage {

namespace {

using Outcome = PvComparison::Outcome;

constexpr std::size_t cold = 0, hot = 1, operating = 2, circuit = 3, power = 4; ///< places in PvCheck::comparisons

Message tolerance_of(const PvCheck& check) { return say_digits(exact_text(check.voc_tolerance_percent)); }

Message ask_words(const PvCheck& check) {
    const PvComparison &works = check.comparisons[operating], &shorted = check.comparisons[circuit];
    std::vector<Message> parts;
    if (works.outcome == Outcome::ask)
        parts.push_back(say(phrase("pv", "the operating current of %1 is %2 above the %3 that the input is made for"), say_amps(*works.value),
                            say_amps(-*works.margin), say_amps(*works.limit)));
    if (shorted.outcome == Outcome::ask)
        parts.push_back(
            say(phrase("pv", "the short-circuit current, %1 with the factor 1.25, is above the %2 that are stated, and how much the input "
                             "withstands is not"),
                say_amps(*shorted.value), say_amps(*shorted.limit)));
    return say(phrase("pv", "Do not connect before the maker has been asked: %1. More current is not clipping."), say_list(parts));
}

/// A voltage is too close to call by the module's tolerance alone, so there is one.
Message close_words(const PvCheck& check) {
    const PvComparison &most = check.comparisons[cold], &least = check.comparisons[hot];
    std::vector<Message> sentences;
    if (most.outcome == Outcome::too_close)
        sentences.push_back(
            say(phrase("pv", "Do not connect: in the cold the string stays only %1 below the limit of %2 as calculated, and reaches %3 "
                             "with the module's tolerance of %4 %."),
                say_volts(*most.margin), say_volts(*most.limit), say_volts(*most.worst), tolerance_of(check)));
    if (least.outcome == Outcome::too_close)
        sentences.push_back(
            say(sentences.empty() ? phrase("pv", "Too close to call: in the heat the string keeps only %1 above the start voltage as calculated, and "
                                                 "falls to %2 with the module's tolerance of %3 %.")
                                  : phrase("pv", "In the heat the string keeps only %1 above the start voltage as calculated, and falls to %2 with "
                                                 "the module's tolerance of %3 %."),
                say_volts(*least.margin), say_volts(*least.worst), tolerance_of(check)));
    return say_joined(sentences, " ");
}

Message clip_words(const PvCheck& check) {
    const PvComparison& each = check.comparisons[power];
    return say(phrase("pv", "%1 of PV against the %2 that the input takes: up to %3 cannot be used."), say_watts(*each.value), say_watts(*each.limit),
               say_watts(-*each.margin));
}

Message room_clause(const PvCheck& check) {
    const PvComparison &most = check.comparisons[cold], &least = check.comparisons[hot];
    const Message below = say_volts(*most.limit - *most.worst), above = say_volts(*least.worst - *least.limit);
    if (check.voc_tolerance_percent <= 0)
        return say(
            phrase("pv", "in the cold the string stays %1 below the voltage limit, in the heat %2 above the start voltage, no tolerance counted"),
            below, above);
    return say(phrase("pv",
                      "in the cold the string stays %1 below the voltage limit, in the heat %2 above the start voltage, the module's tolerance of "
                      "%3 % counted"),
               below, above, tolerance_of(check));
}

Message lead(const PvSheet& sheet, const PvCheck& check) {
    const PvComparison &most = check.comparisons[cold], &least = check.comparisons[hot], &shorted = check.comparisons[circuit];
    switch (check.verdict) {
    case PvVerdict::over_voltage_when_cold:
        return say(phrase("pv",
                          "Danger, do not connect: at %1 the string reaches %2, which is %3 above the limit of %4. The input can be destroyed and "
                          "catch fire."),
                   say_degrees(*sheet.coldest_c), say_volts(*most.value), say_volts(-*most.margin), say_volts(*most.limit));
    case PvVerdict::over_short_circuit:
        return say(phrase("pv", "Danger, do not connect: the short-circuit current, %1 with the factor 1.25, is %2 above the short-circuit limit of "
                                "%3."),
                   say_amps(*shorted.value), say_amps(-*shorted.margin), say_amps(*shorted.limit));
    case PvVerdict::ask_before_connecting: return ask_words(check);
    case PvVerdict::too_close: return close_words(check);
    case PvVerdict::too_low_when_hot:
        return say(phrase("pv", "Too low to start when hot: the string falls to %1, which is %2 below the start voltage of %3."),
                   say_volts(*least.value), say_volts(-*least.margin), say_volts(*least.limit));
    case PvVerdict::not_known: return say(phrase("pv", "Do not connect yet: whether the string suits the input is not known."));
    case PvVerdict::clips: return say(phrase("pv", "Fits with clipping: %1 For the rest %2."), clip_words(check), room_clause(check));
    case PvVerdict::fits: return say(phrase("pv", "Fits: %1."), room_clause(check));
    }
    return {};
}

/// What a module, a place or a PV input lacks, each with its owner.
struct Owner {
    Phrase name, lacking;
};
constexpr Owner owners[] = {{phrase("pv", "the module"), phrase("pv", "%1 of the module")},
                            {phrase("pv", "the place"), phrase("pv", "%1 of the place")},
                            {phrase("pv", "the PV input"), phrase("pv", "%1 of the PV input")}};

Message suggestion_beside(const PvCheck& check, const Message& longest) {
    if (!check.largest_parallel) return say(phrase("pv", "%1; how many strings side by side is not known."), longest);
    if (*check.largest_parallel == 0) return say(phrase("pv", "%1; even one string brings more current than is stated: ask the maker."), longest);
    return say(phrase("pv", "%1; most strings within the current limit: %2."), longest, say_number(*check.largest_parallel));
}

} // namespace

Message say_volts(double value) { return say_measure(value, 1, "V"); }
Message say_amps(double value) { return say_measure(value, 1, "A"); }
Message say_watts(double value) { return say_measure(value, 0, "W"); }

Message say_degrees(double value) {
    const int decimals = std::floor(value) == value ? 0 : 1;
    return say_digits((value < 0 ? signed_text(value, decimals) : fixed_text(value, decimals)) + " °C");
}

Message say_modules(int count) { return say_count(count, phrases("pv", "%n modules", "%n module")); }

Message say_missing(const std::vector<PvMissing>& missing) {
    std::vector<Message> groups;
    for (const Owner& owner : owners) {
        std::vector<Message> names;
        for (const PvMissing& each : missing)
            if (each.of == say(owner.name)) names.push_back(each.what);
        if (!names.empty()) groups.push_back(say(owner.lacking, say_list(names)));
    }
    return say_count(missing.size(), phrases("pv", "%1 are missing", "%1 is missing"), say_joined(groups, ", "));
}

Message verdict_words(const PvCheck& check) {
    const Message unknown = check.missing.empty() ? Message() : say(phrase("pv", "not known: %1"), say_missing(check.missing));
    const auto and_unknown = [&unknown](const Message& words) { return unknown.empty() ? words : say_joined({words, unknown}, "; "); };
    switch (check.verdict) {
    case PvVerdict::over_voltage_when_cold: return say(phrase("pv", "exceeds the voltage limit when cold"));
    case PvVerdict::over_short_circuit: return say(phrase("pv", "exceeds the short-circuit limit"));
    case PvVerdict::ask_before_connecting: return and_unknown(say(phrase("pv", "ask before connecting")));
    case PvVerdict::too_close: {
        std::vector<Message> which;
        for (const PvComparison& each : check.comparisons)
            if (each.outcome == Outcome::too_close) which.push_back(each.title);
        return and_unknown(say(phrase("pv", "too close to call: %1"), say_list(which)));
    }
    case PvVerdict::too_low_when_hot: return and_unknown(say(phrase("pv", "too low to start when hot")));
    case PvVerdict::not_known: return unknown;
    case PvVerdict::clips: return say(phrase("pv", "fits with clipping"));
    case PvVerdict::fits: return say(phrase("pv", "fits"));
    }
    return unknown;
}

Message headline_words(const PvSheet& sheet, const PvCheck& check) {
    std::vector<Message> said{lead(sheet, check)};
    const auto is = [&check](std::size_t at, Outcome outcome) { return check.comparisons[at].outcome == outcome; };
    if (is_danger(check.verdict) && (is(operating, Outcome::ask) || is(circuit, Outcome::ask)))
        said.push_back(say(phrase("pv", "The current is above its limit too.")));
    if (check.verdict == PvVerdict::over_voltage_when_cold && is(circuit, Outcome::bad))
        said.push_back(say(phrase("pv", "The short-circuit current is above its limit too.")));
    if (check.verdict != PvVerdict::too_close && is(cold, Outcome::too_close))
        said.push_back(say(phrase("pv", "The voltage when cold is too close to its limit to call.")));
    if (check.verdict != PvVerdict::too_low_when_hot && is(hot, Outcome::bad))
        said.push_back(say(phrase("pv", "When hot the string is too low to start.")));
    if (check.verdict != PvVerdict::clips && !is_danger(check.verdict) && is(power, Outcome::clips)) said.push_back(clip_words(check));
    if (!check.missing.empty()) {
        std::vector<Message> unmade;
        for (const PvComparison& each : check.comparisons)
            if (each.outcome == Outcome::not_known) unmade.push_back(each.title);
        said.push_back(say(phrase("pv", "Not checked: %1, as %2."), say_list(unmade), say_missing(check.missing)));
    }
    if (!check.string_fuses.empty()) said.push_back(say(phrase("pv", "Each string needs its own fuse.")));
    return say_joined(said, " ");
}

Message suggestion_words(const PvCheck& check) {
    if (!check.largest_series)
        return say(phrase("pv", "How many modules may be in series is not known until the voltage when cold and the limit are."));
    if (*check.largest_series == 0) return say(phrase("pv", "Not even one of these modules stays within the voltage limit when cold."));
    if (check.least_series && *check.least_series > *check.largest_series)
        return say(phrase("pv", "No string fits: %1 would be needed to start when hot, but only %2 may be in series when cold."),
                   say_modules(*check.least_series), say_modules(*check.largest_series));
    if (!check.least_series)
        return suggestion_beside(check,
                                 say_count(*check.largest_series, phrases("pv", "Longest string within the voltage limit: %n modules in series",
                                                                          "Longest string within the voltage limit: %n module in series")));
    return suggestion_beside(check,
                             say_count(*check.largest_series,
                                       phrases("pv", "Longest string within the voltage limit: %n modules in series (%1 at least, to start when hot)",
                                               "Longest string within the voltage limit: %n module in series (%1 at least, to start when hot)"),
                                       say_number(*check.least_series)));
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

Message say_pv_outcome(PvComparison::Outcome outcome) {
    switch (outcome) {
    case Outcome::good: return say(phrase("pv", "inside"));
    case Outcome::clips: return say(phrase("pv", "clipped"));
    case Outcome::bad: return say(phrase("pv", "beyond"));
    case Outcome::not_known: break;
    case Outcome::ask: return say(phrase("pv", "above: ask"));
    case Outcome::too_close: return say(phrase("pv", "too close to call"));
    }
    return say(phrase("pv", "not known"));
}

Message pv_decision_rule() {
    return say(phrase("pv",
                      "Decision rule: a voltage is inside its limit where it stays so with the whole tolerance of the module, beyond it as soon as "
                      "the calculated value is, and too close to call in between (guarded acceptance, JCGM 106:2012, 8.3; NEC 690.7(A) holds the "
                      "calculated value against the limit)."));
}

std::vector<Message> pv_cautions() {
    return {
        say(phrase("pv",
                   "PV strings are live whenever there is light and can carry dangerous DC voltage; they cannot be switched off at the module.")),
        say(phrase("pv", "Connect and disconnect only without load and with the modules covered; DC arcs do not go out by themselves.")),
        say(phrase("pv", "Check polarity and measure the open-circuit voltage before connecting.")),
        say(phrase("pv", "Local electrical codes and a licensed electrician come first; this check is arithmetic on stated values, not a design.")),
    };
}

} // namespace ullage
