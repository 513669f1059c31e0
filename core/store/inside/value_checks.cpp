// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/value_checks.h"

#include "model/limits.h"
#include "model/tags.h"

#include <algorithm>
#include <initializer_list>
#include <optional>
#include <string>

namespace ullage::store {

namespace {

struct Number {
    const char* field;
    std::optional<double> value;
    NumberRange range;
};
struct Text {
    const char* field;
    const std::string& value;
    std::size_t most;
};

Result<void> all_good(std::initializer_list<Text> texts, std::initializer_list<Number> numbers = {}) {
    for (const Text& text : texts)
        if (auto good = check_text(text.field, text.value, text.most); !good) return good;
    for (const Number& number : numbers)
        if (auto good = check_number(number.field, number.value, number.range); !good) return good;
    return {};
}

Error unnamed(const std::string& thing) { return {Failure::bad_input, "the " + thing + " has no name", "name", "give it a name"}; }

std::optional<double> value_of(const std::optional<PvCoefficient>& coefficient) {
    return coefficient ? std::optional(coefficient->value) : std::nullopt;
}

Result<void> check_tags(const Unit& unit) {
    const auto tags = tags_from(tags_text(unit.tags));
    if (!tags) return tags.error();
    if (tags.value() != unit.tags)
        return Error{Failure::bad_input, "the tags are not in order, or one holds a semicolon, a comma or blanks around it", "tags",
                     "give short words, each once"};
    for (const std::string& tag : unit.tags)
        if (auto good = check_text("tags", tag, longest_tag); !good) return good;
    return {};
}

Result<void> check_points(const Meter& meter) {
    if (auto good = check_count("points of correction", phrases("store", "there are %n of them", "there is %n of them"), meter.points.size(),
                                most_meter_points);
        !good)
        return good;
    for (std::size_t i = 0; i < meter.points.size(); ++i) {
        const MeterPoint& point = meter.points[i];
        if (auto good = all_good({}, {{"load of a point", point.load_w, load_range},
                                      {"correction of a point", point.correction, correction_range},
                                      {"uncertainty of a point", point.expanded_u_percent, meter_limit_range},
                                      {"coverage factor of a point", point.coverage_k, coverage_factor_range}});
            !good)
            return good;
        if (point.coverage_k && !point.expanded_u_percent)
            return Error{Failure::bad_input, "a point states a coverage factor but no uncertainty", "points of correction", "state U with k"};
        if (i > 0 && !(meter.points[i - 1].load_w < point.load_w))
            return Error{Failure::bad_input, "the points are not in order of rising load, or two are at one load", "points of correction",
                         "state each load once, the lowest first"};
    }
    return {};
}

} // namespace

Result<void> check(const Unit& unit) {
    if (unit.name.empty()) return unnamed("unit");
    if (auto good = check_tags(unit); !good) return good;
    if (auto good = check_date("day of purchase", unit.purchased); !good) return good;
    return all_good({{"name", unit.name, longest_name},
                     {"maker", unit.maker, longest_name},
                     {"model", unit.model, longest_name},
                     {"serial number", unit.serial_number, longest_name},
                     {"chemistry", unit.chemistry, longest_name},
                     {"currency", unit.currency, longest_short_text},
                     {"remark", unit.remark, longest_remark}},
                    {{"rated energy", unit.rated_energy_wh, rated_energy_range},
                     {"rated output", unit.rated_output_w, rated_power_range},
                     {"peak output", unit.peak_output_w, rated_power_range},
                     {"PV voltage limit", unit.pv_max_v, voltage_range},
                     {"PV current limit", unit.pv_max_a, current_range},
                     {"PV power limit", unit.pv_max_w, rated_power_range},
                     {"PV start voltage", unit.pv_start_v, voltage_range},
                     {"PV short-circuit current", unit.pv_short_circuit_a, current_range},
                     {"charge time", unit.charge_time_h, charge_time_range},
                     {"price", unit.price, price_range},
                     {"price paid", unit.paid_price, price_range},
                     {"mass", unit.mass_kg, mass_range},
                     {"warranty", unit.warranty_years, warranty_range},
                     {"cycles before", unit.cycles_before, cycles_range},
                     {"gauge step", unit.gauge_step_percent, gauge_step_range}});
}

Result<void> check(const Meter& meter) {
    if (meter.name.empty()) return unnamed("meter");
    const MeterCertificate& certificate = meter.certificate;
    if (auto good = check_date("date of the certificate", certificate.date); !good) return good;
    if (auto good = check_date("end of the certificate's validity", certificate.valid_until); !good) return good;
    if (auto good = check_points(meter); !good) return good;
    if (meter.range_low_w && meter.range_high_w && *meter.range_low_w > *meter.range_high_w)
        return Error{Failure::bad_input, "the range begins above its end", "range", "exchange the two loads"};
    return all_good({{"name", meter.name, longest_name},
                     {"remark", meter.remark, longest_remark},
                     {"number of the certificate", certificate.number, longest_name},
                     {"laboratory", certificate.laboratory, longest_name},
                     {"class", meter.accuracy_class, longest_name},
                     {"standard", meter.standard, longest_name}},
                    {{"step", meter.step_wh, register_step_range},
                     {"error limit", meter.limit_percent, meter_limit_range},
                     {"part of the error limit of each load", meter.load_part_percent, meter_limit_range},
                     {"span", meter.span_wh, register_span_range},
                     {"starting current", meter.starting_current_a, current_range},
                     {"lowest load of the range", meter.range_low_w, load_range},
                     {"highest load of the range", meter.range_high_w, load_range},
                     {"correction", meter.correction, correction_range}});
}

Result<void> check(const Run& run) {
    if (auto good =
            check_count("keys that are not known", phrases("store", "there are %n of them", "there is %n of them"), run.extra.size(), most_extras);
        !good)
        return good;
    for (const auto& [key, value] : run.extra)
        if (auto good = all_good({{"a key that is not known", key, longest_name}, {key.c_str(), value, longest_extra_value}}); !good) return good;
    if (run.second_meter_uuid && run.second_meter_uuid == run.meter_uuid)
        return Error{Failure::bad_input, "the second meter is the first one", "second meter", "choose another meter, or none"};
    // 0: filled with the present when it is added.
    if (run.created_ms != 0)
        if (auto good = check_moment("created", run.created_ms); !good) return good;
    return all_good({{"load", run.load, longest_load_text}, {"time zone", run.time_zone, longest_short_text}},
                    {{"ambient temperature", run.ambient_c, temperature_range},
                     {"ambient temperature at the end", run.ambient_end_c, temperature_range},
                     {"how late the end was noticed", run.end_noticed_within_min, noticed_within_range}});
}

Result<void> check(const ReadingValues& values) {
    if (auto good = check_moment("time", values.time_ms); !good) return good;
    return all_good({{"remark", values.remark, longest_remark}}, {{"gauge", values.gauge_percent, gauge_range},
                                                                  {"register", values.register_wh, register_range},
                                                                  {"second register", values.second_register_wh, register_range},
                                                                  {"meter power", values.meter_w, read_power_range},
                                                                  {"display power", values.display_w, read_power_range}});
}

Result<void> check(const PvSheet& sheet) {
    constexpr int most_modules = 1000;
    if (sheet.name.empty()) return unnamed("PV sheet");
    if (std::min(sheet.series, sheet.parallel) < 1 || std::max(sheet.series, sheet.parallel) > most_modules)
        return Error{Failure::bad_input, "a string has at least one module, and at most 1000", "series, parallel", "give 1 to 1000"};
    return all_good({{"name", sheet.name, longest_name}, {"module", sheet.module, longest_name}, {"remark", sheet.remark, longest_remark}},
                    {{"Voc", sheet.voc_v, voltage_range},
                     {"Vmp", sheet.vmp_v, voltage_range},
                     {"Isc", sheet.isc_a, current_range},
                     {"Imp", sheet.imp_a, current_range},
                     {"coefficient of Voc", value_of(sheet.voc_coefficient), coefficient_range},
                     {"coefficient of Vmp", value_of(sheet.vmp_coefficient), coefficient_range},
                     {"coefficient of power", value_of(sheet.power_coefficient), coefficient_range},
                     {"NOCT", sheet.noct_c, temperature_range},
                     {"coldest ambient", sheet.coldest_c, temperature_range},
                     {"hottest ambient", sheet.hottest_c, temperature_range},
                     {"hottest cell", sheet.hottest_cell_c, temperature_range},
                     {"irradiance", sheet.irradiance_w_m2, irradiance_range},
                     {"tolerance of the voltages", sheet.voc_tolerance_percent, voltage_tolerance_range}});
}

Result<void> check(const LoadList& list) { return ullage::check(list); }

Result<void> check(const Photo& photo) {
    if (photo.taken)
        if (auto good = check_moment("time of the photo", photo.taken->time_ms); !good) return good;
    return all_good({{"file name", photo.file_name, longest_file_name}});
}

Result<void> check(const Trace& trace) {
    for (const UtcMs time_ms : {trace.first_ms, trace.last_ms})
        if (auto good = check_moment("time of the log", time_ms); !good) return good;
    return all_good({{"file name", trace.file_name, longest_file_name},
                     {"fingerprint", trace.fingerprint, longest_short_text},
                     {"layout", trace.layout, longest_layout},
                     {"header", trace.signature, longest_layout},
                     {"time zone", trace.zone, longest_short_text}},
                    {{"uncertainty of the clock offset", trace.offset_u_s, clock_uncertainty_range}});
}

Result<void> check(const TraceSample& sample) {
    if (auto good = check_moment("time of a sample", sample.time_ms); !good) return good;
    return all_good({}, {{"register", sample.register_wh, sample_range},
                         {"power", sample.power_w, sample_range},
                         {"voltage", sample.voltage_v, sample_range},
                         {"current", sample.current_a, sample_range},
                         {"gauge", sample.gauge_percent, sample_range},
                         {"output power", sample.output_w, sample_range}});
}

Result<void> check_reason(std::string_view reason) { return check_text("reason", reason, longest_remark); }

Result<void> check_method_setting(std::string_view key, double value) {
    if (key.empty()) return Error{Failure::bad_input, "the option has no key", "key", "name it"};
    if (auto good = check_text("key", key, longest_short_text); !good) return good;
    return check_number(key, value, method_setting_range);
}

Result<void> check(const Publisher& publisher) {
    return all_good({{"publisher", publisher.name, longest_name},
                     {"title", publisher.title, longest_name},
                     {"introduction", publisher.introduction, longest_remark},
                     {"licence", publisher.licence, longest_name}},
                    {});
}

Result<void> check_meter_source(std::string_view source) { return check_text("source", source, longest_layout); }

Result<void> check_column_set(std::string_view name, std::string_view keys) {
    if (keys.empty()) return Error{Failure::bad_input, "no column is chosen", "columns", "choose one or more"};
    if (auto good = check_text("name of a set of columns", name, longest_short_text); !good) return good;
    return check_text("columns", keys, longest_layout);
}

Result<void> check_draft(std::string_view draft) { return check_text("half-typed entry", draft, longest_draft); }

Result<void> check_trace_answers(std::string_view signature, std::string_view answers) {
    if (auto good = check_text("header", signature, longest_layout); !good) return good;
    return check_text("answers", answers, longest_layout);
}

} // namespace ullage::store
