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
    Phrase field;
    std::optional<double> value;
    NumberRange range;
};
struct Text {
    Phrase field;
    const std::string& value;
    std::size_t most;
};

/// What a check found, with its field in `where`.
Result<void> in_field(const Phrase& field, Result<void> found) {
    if (found) return found;
    Error error = found.error();
    error.where = say(field);
    return error;
}

Result<void> all_good(std::initializer_list<Text> texts, std::initializer_list<Number> numbers = {}) {
    for (const Text& text : texts)
        if (auto good = in_field(text.field, check_text({}, text.value, text.most)); !good) return good;
    for (const Number& number : numbers)
        if (auto good = in_field(number.field, check_number({}, number.value, number.range)); !good) return good;
    return {};
}

Error unnamed(const Phrase& what) { return {Failure::bad_input, say(what), say(phrase("store", "name")), say(phrase("store", "give it a name"))}; }

std::optional<double> value_of(const std::optional<PvCoefficient>& coefficient) {
    return coefficient ? std::optional(coefficient->value) : std::nullopt;
}

Result<void> check_tags(const Unit& unit) {
    const auto tags = tags_from(tags_text(unit.tags));
    if (!tags) return tags.error();
    if (tags.value() != unit.tags)
        return Error{Failure::bad_input, say(phrase("store", "the tags are not in order, or one holds a semicolon, a comma or blanks around it")),
                     say(phrase("store", "tags")), say(phrase("store", "give short words, each once"))};
    for (const std::string& tag : unit.tags)
        if (auto good = in_field(phrase("store", "tags"), check_text({}, tag, longest_tag)); !good) return good;
    return {};
}

Result<void> check_points(const Meter& meter) {
    if (auto good = in_field(phrase("store", "points of correction"), check_count({}, phrases("store", "there are %n of them", "there is %n of them"),
                                                                                  meter.points.size(), most_meter_points));
        !good)
        return good;
    for (std::size_t i = 0; i < meter.points.size(); ++i) {
        const MeterPoint& point = meter.points[i];
        if (auto good = all_good({}, {{phrase("store", "load of a point"), point.load_w, load_range},
                                      {phrase("store", "correction of a point"), point.correction, correction_range},
                                      {phrase("store", "uncertainty of a point"), point.expanded_u_percent, meter_limit_range},
                                      {phrase("store", "coverage factor of a point"), point.coverage_k, coverage_factor_range}});
            !good)
            return good;
        if (point.coverage_k && !point.expanded_u_percent)
            return Error{Failure::bad_input, say(phrase("store", "a point states a coverage factor but no uncertainty")),
                         say(phrase("store", "points of correction")), say(phrase("store", "state U with k"))};
        if (i > 0 && !(meter.points[i - 1].load_w < point.load_w))
            return Error{Failure::bad_input, say(phrase("store", "the points are not in order of rising load, or two are at one load")),
                         say(phrase("store", "points of correction")), say(phrase("store", "state each load once, the lowest first"))};
    }
    return {};
}

} // namespace

Result<void> check(const Unit& unit) {
    if (unit.name.empty()) return unnamed(phrase("store", "the unit has no name"));
    if (auto good = check_tags(unit); !good) return good;
    if (auto good = in_field(phrase("store", "day of purchase"), check_date({}, unit.purchased)); !good) return good;
    return all_good({{phrase("store", "name"), unit.name, longest_name},
                     {phrase("store", "maker"), unit.maker, longest_name},
                     {phrase("store", "model"), unit.model, longest_name},
                     {phrase("store", "serial number"), unit.serial_number, longest_name},
                     {phrase("store", "chemistry"), unit.chemistry, longest_name},
                     {phrase("store", "currency"), unit.currency, longest_short_text},
                     {phrase("store", "remark"), unit.remark, longest_remark}},
                    {{phrase("store", "rated energy"), unit.rated_energy_wh, rated_energy_range},
                     {phrase("store", "rated output"), unit.rated_output_w, rated_power_range},
                     {phrase("store", "peak output"), unit.peak_output_w, rated_power_range},
                     {phrase("store", "PV voltage limit"), unit.pv_max_v, voltage_range},
                     {phrase("store", "PV current limit"), unit.pv_max_a, current_range},
                     {phrase("store", "PV power limit"), unit.pv_max_w, rated_power_range},
                     {phrase("store", "PV start voltage"), unit.pv_start_v, voltage_range},
                     {phrase("store", "PV short-circuit current"), unit.pv_short_circuit_a, current_range},
                     {phrase("store", "charge time"), unit.charge_time_h, charge_time_range},
                     {phrase("store", "price"), unit.price, price_range},
                     {phrase("store", "price paid"), unit.paid_price, price_range},
                     {phrase("store", "mass"), unit.mass_kg, mass_range},
                     {phrase("store", "warranty"), unit.warranty_years, warranty_range},
                     {phrase("store", "cycles before"), unit.cycles_before, cycles_range},
                     {phrase("store", "gauge step"), unit.gauge_step_percent, gauge_step_range}});
}

Result<void> check(const Meter& meter) {
    if (meter.name.empty()) return unnamed(phrase("store", "the meter has no name"));
    const MeterCertificate& certificate = meter.certificate;
    if (auto good = in_field(phrase("store", "date of the certificate"), check_date({}, certificate.date)); !good) return good;
    if (auto good = in_field(phrase("store", "end of the certificate's validity"), check_date({}, certificate.valid_until)); !good) return good;
    if (auto good = check_points(meter); !good) return good;
    if (meter.range_low_w && meter.range_high_w && *meter.range_low_w > *meter.range_high_w)
        return Error{Failure::bad_input, say(phrase("store", "the range begins above its end")), say(phrase("store", "range")),
                     say(phrase("store", "exchange the two loads"))};
    return all_good({{phrase("store", "name"), meter.name, longest_name},
                     {phrase("store", "remark"), meter.remark, longest_remark},
                     {phrase("store", "number of the certificate"), certificate.number, longest_name},
                     {phrase("store", "laboratory"), certificate.laboratory, longest_name},
                     {phrase("store", "class"), meter.accuracy_class, longest_name},
                     {phrase("store", "standard"), meter.standard, longest_name}},
                    {{phrase("store", "step"), meter.step_wh, register_step_range},
                     {phrase("store", "error limit"), meter.limit_percent, meter_limit_range},
                     {phrase("store", "part of the error limit of each load"), meter.load_part_percent, meter_limit_range},
                     {phrase("store", "span"), meter.span_wh, register_span_range},
                     {phrase("store", "starting current"), meter.starting_current_a, current_range},
                     {phrase("store", "lowest load of the range"), meter.range_low_w, load_range},
                     {phrase("store", "highest load of the range"), meter.range_high_w, load_range},
                     {phrase("store", "correction"), meter.correction, correction_range}});
}

Result<void> check(const Run& run) {
    if (auto good = in_field(phrase("store", "keys that are not known"),
                             check_count({}, phrases("store", "there are %n of them", "there is %n of them"), run.extra.size(), most_extras));
        !good)
        return good;
    for (const auto& [key, value] : run.extra) {
        if (auto good = all_good({{phrase("store", "a key that is not known"), key, longest_name}}); !good) return good;
        if (auto good = check_text(key, value, longest_extra_value); !good) return good;
    }
    if (run.second_meter_uuid && run.second_meter_uuid == run.meter_uuid)
        return Error{Failure::bad_input, say(phrase("store", "the second meter is the first one")), say(phrase("store", "second meter")),
                     say(phrase("store", "choose another meter, or none"))};
    // 0: filled with the present when it is added.
    if (run.created_ms != 0)
        if (auto good = in_field(phrase("store", "created"), check_moment({}, run.created_ms)); !good) return good;
    return all_good({{phrase("store", "load"), run.load, longest_load_text}, {phrase("store", "time zone"), run.time_zone, longest_short_text}},
                    {{phrase("store", "ambient temperature"), run.ambient_c, temperature_range},
                     {phrase("store", "ambient temperature at the end"), run.ambient_end_c, temperature_range},
                     {phrase("store", "how late the end was noticed"), run.end_noticed_within_min, noticed_within_range}});
}

Result<void> check(const ReadingValues& values) {
    if (auto good = in_field(phrase("store", "time"), check_moment({}, values.time_ms)); !good) return good;
    return all_good({{phrase("store", "remark"), values.remark, longest_remark}},
                    {{phrase("store", "gauge"), values.gauge_percent, gauge_range},
                     {phrase("store", "register"), values.register_wh, register_range},
                     {phrase("store", "second register"), values.second_register_wh, register_range},
                     {phrase("store", "meter power"), values.meter_w, read_power_range},
                     {phrase("store", "display power"), values.display_w, read_power_range}});
}

Result<void> check(const PvSheet& sheet) {
    constexpr int most_modules = 1000;
    if (sheet.name.empty()) return unnamed(phrase("store", "the PV sheet has no name"));
    if (std::min(sheet.series, sheet.parallel) < 1 || std::max(sheet.series, sheet.parallel) > most_modules)
        return Error{Failure::bad_input, say(phrase("store", "a string has at least one module, and at most 1000")),
                     say(phrase("store", "series, parallel")), say(phrase("store", "give 1 to 1000"))};
    return all_good({{phrase("store", "name"), sheet.name, longest_name},
                     {phrase("store", "module"), sheet.module, longest_name},
                     {phrase("store", "remark"), sheet.remark, longest_remark}},
                    {{phrase("store", "Voc"), sheet.voc_v, voltage_range},
                     {phrase("store", "Vmp"), sheet.vmp_v, voltage_range},
                     {phrase("store", "Isc"), sheet.isc_a, current_range},
                     {phrase("store", "Imp"), sheet.imp_a, current_range},
                     {phrase("store", "coefficient of Voc"), value_of(sheet.voc_coefficient), coefficient_range},
                     {phrase("store", "coefficient of Vmp"), value_of(sheet.vmp_coefficient), coefficient_range},
                     {phrase("store", "coefficient of power"), value_of(sheet.power_coefficient), coefficient_range},
                     {phrase("store", "NOCT"), sheet.noct_c, temperature_range},
                     {phrase("store", "coldest ambient"), sheet.coldest_c, temperature_range},
                     {phrase("store", "hottest ambient"), sheet.hottest_c, temperature_range},
                     {phrase("store", "hottest cell"), sheet.hottest_cell_c, temperature_range},
                     {phrase("store", "irradiance"), sheet.irradiance_w_m2, irradiance_range},
                     {phrase("store", "tolerance of the voltages"), sheet.voc_tolerance_percent, voltage_tolerance_range}});
}

Result<void> check(const LoadList& list) { return ullage::check(list); }

Result<void> check(const Photo& photo) {
    if (photo.taken)
        if (auto good = in_field(phrase("store", "time of the photo"), check_moment({}, photo.taken->time_ms)); !good) return good;
    return all_good({{phrase("store", "file name"), photo.file_name, longest_file_name}});
}

Result<void> check(const Trace& trace) {
    for (const UtcMs time_ms : {trace.first_ms, trace.last_ms})
        if (auto good = in_field(phrase("store", "time of the log"), check_moment({}, time_ms)); !good) return good;
    return all_good({{phrase("store", "file name"), trace.file_name, longest_file_name},
                     {phrase("store", "fingerprint"), trace.fingerprint, longest_short_text},
                     {phrase("store", "layout"), trace.layout, longest_layout},
                     {phrase("store", "header"), trace.signature, longest_layout},
                     {phrase("store", "time zone"), trace.zone, longest_short_text}},
                    {{phrase("store", "uncertainty of the clock offset"), trace.offset_u_s, clock_uncertainty_range}});
}

Result<void> check(const TraceSample& sample) {
    if (auto good = in_field(phrase("store", "time of a sample"), check_moment({}, sample.time_ms)); !good) return good;
    return all_good({}, {{phrase("store", "register"), sample.register_wh, sample_range},
                         {phrase("store", "power"), sample.power_w, sample_range},
                         {phrase("store", "voltage"), sample.voltage_v, sample_range},
                         {phrase("store", "current"), sample.current_a, sample_range},
                         {phrase("store", "gauge"), sample.gauge_percent, sample_range},
                         {phrase("store", "output power"), sample.output_w, sample_range}});
}

Result<void> check_reason(std::string_view reason) { return in_field(phrase("store", "reason"), check_text({}, reason, longest_remark)); }

Result<void> check_method_setting(std::string_view key, double value) {
    if (key.empty())
        return Error{Failure::bad_input, say(phrase("store", "the option has no key")), say(phrase("store", "key")), say(phrase("store", "name it"))};
    if (auto good = in_field(phrase("store", "key"), check_text({}, key, longest_short_text)); !good) return good;
    return check_number(key, value, method_setting_range);
}

Result<void> check(const Publisher& publisher) {
    return all_good({{phrase("store", "publisher"), publisher.name, longest_name},
                     {phrase("store", "title"), publisher.title, longest_name},
                     {phrase("store", "introduction"), publisher.introduction, longest_remark},
                     {phrase("store", "licence"), publisher.licence, longest_name}},
                    {});
}

Result<void> check_meter_source(std::string_view source) { return in_field(phrase("store", "source"), check_text({}, source, longest_layout)); }

Result<void> check_column_set(std::string_view name, std::string_view keys) {
    if (keys.empty())
        return Error{Failure::bad_input, say(phrase("store", "no column is chosen")), say(phrase("store", "columns")),
                     say(phrase("store", "choose one or more"))};
    if (auto good = in_field(phrase("store", "name of a set of columns"), check_text({}, name, longest_short_text)); !good) return good;
    return in_field(phrase("store", "columns"), check_text({}, keys, longest_layout));
}

Result<void> check_draft(std::string_view draft) { return in_field(phrase("store", "half-typed entry"), check_text({}, draft, longest_draft)); }

Result<void> check_trace_answers(std::string_view signature, std::string_view answers) {
    if (auto good = in_field(phrase("store", "header"), check_text({}, signature, longest_layout)); !good) return good;
    return in_field(phrase("store", "answers"), check_text({}, answers, longest_layout));
}

} // namespace ullage::store
