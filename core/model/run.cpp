// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/run.h"

namespace ullage {

std::string_view run_kind_text(RunKind kind) {
    switch (kind) {
    case RunKind::drain: return "drain";
    case RunKind::no_load_drain: return "no-load drain";
    case RunKind::charge: return "charge";
    case RunKind::sustained_output: return "sustained output";
    case RunKind::peak_output: return "peak output";
    case RunKind::standby: return "standby";
    }
    return "drain";
}

std::string_view run_end_text(RunEnd end) {
    switch (end) {
    case RunEnd::still_running: return "still running";
    case RunEnd::cut_off_seen: return "cut-off seen";
    case RunEnd::found_off: return "found off";
    case RunEnd::stopped_by_tester: return "stopped by tester";
    }
    return "still running";
}

Message say_run_kind(RunKind kind) {
    switch (kind) {
    case RunKind::drain: return say(phrase("model", "drain"));
    case RunKind::no_load_drain: return say(phrase("model", "no-load drain"));
    case RunKind::charge: return say(phrase("model", "charge"));
    case RunKind::sustained_output: return say(phrase("model", "sustained output"));
    case RunKind::peak_output: return say(phrase("model", "peak output"));
    case RunKind::standby: return say(phrase("model", "standby"));
    }
    return say(phrase("model", "drain"));
}

Message say_run_end(RunEnd end) {
    switch (end) {
    case RunEnd::still_running: return say(phrase("model", "still running"));
    case RunEnd::cut_off_seen: return say(phrase("model", "cut-off seen"));
    case RunEnd::found_off: return say(phrase("model", "found off"));
    case RunEnd::stopped_by_tester: return say(phrase("model", "stopped by tester"));
    }
    return say(phrase("model", "still running"));
}

std::optional<RunKind> run_kind_from(std::string_view text) {
    for (RunKind kind : all_run_kinds)
        if (run_kind_text(kind) == text) return kind;
    return std::nullopt;
}

std::optional<RunEnd> run_end_from(std::string_view text) {
    for (RunEnd end : all_run_ends)
        if (run_end_text(end) == text) return end;
    return std::nullopt;
}

std::string_view charge_source_text(ChargeSource source) { return source == ChargeSource::pv ? "PV" : "wall"; }

Message say_charge_source(ChargeSource source) { return source == ChargeSource::pv ? say(phrase("model", "PV")) : say(phrase("model", "wall")); }

std::optional<ChargeSource> charge_source_from(std::string_view text) {
    if (text == "wall") return ChargeSource::wall;
    if (text == "PV" || text == "pv") return ChargeSource::pv;
    return std::nullopt;
}

} // namespace ullage
