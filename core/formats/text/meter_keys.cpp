// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/inside/meter_keys.h"

#include "base/number.h"
#include "formats/text/inside/key_values.h"
#include "formats/text/meter_points_text.h"

#include <functional>
#include <string>
#include <utility>

namespace ullage::sheet {

namespace {

using MeterOf = std::optional<Meter> RunRecord::*;

class MeterKeys {
public:
    MeterKeys(std::string_view prefix, MeterOf meter) : prefix_(prefix), meter_(meter) {}

    /// `place` gives the text of a meter.
    template <class Place>
    void text(std::string_view name, std::size_t most, Place place) {
        add(
            name, [place](const Meter& meter) { return std::invoke(place, meter); },
            [place, most](Meter& meter, std::string_view value) { return put(std::invoke(place, meter), value, most); });
    }

    void number(std::string_view name, NumberRange range, std::optional<double> Meter::*member) {
        add(
            name, [member](const Meter& meter) { return text_of(meter.*member); },
            [member, range](Meter& meter, std::string_view value) -> Result<void> {
                const Result<double> number = number_in(value, range);
                if (!number) return number.error();
                meter.*member = number.value();
                return {};
            });
    }

    void date(std::string_view name, std::string MeterCertificate::*member) {
        add(
            name, [member](const Meter& meter) { return meter.certificate.*member; },
            [member](Meter& meter, std::string_view value) -> Result<void> {
                if (auto good = check_date({}, value); !good) return good;
                meter.certificate.*member = value;
                return {};
            });
    }

    template <class Text, class Read>
    void add(std::string_view name, Text text, Read read) {
        keys_.push_back({prefix_ + std::string(name),
                         [of = meter_, text](const RunRecord& record) { return record.*of ? std::string(text(*(record.*of))) : std::string(); },
                         [of = meter_, read](RunRecord& record, std::string_view value) -> Result<void> {
                             if (!(record.*of)) (record.*of).emplace();
                             return read(*(record.*of), value);
                         }});
    }

    std::vector<SheetKey> take() { return std::move(keys_); }

private:
    std::string prefix_;
    MeterOf meter_;
    std::vector<SheetKey> keys_;
};

Result<void> read_correction(Meter& meter, std::string_view value) {
    const Result<double> number = number_in(value, correction_range);
    if (!number) return number.error();
    meter.correction = number.value();
    return {};
}

Result<void> read_points(Meter& meter, std::string_view value) {
    auto points = meter_points_from(value);
    if (!points) return points.error();
    meter.points = std::move(points).value();
    return {};
}

auto of_certificate(std::string MeterCertificate::*member) {
    return [member](auto& meter) -> auto& { return meter.certificate.*member; };
}

} // namespace

std::vector<SheetKey> meter_keys(std::string_view prefix, std::optional<Meter> RunRecord::*meter) {
    MeterKeys keys(prefix, meter);
    keys.text("meter", longest_name, &Meter::name);
    keys.number("meter_step_wh", register_step_range, &Meter::step_wh);
    keys.number("meter_limit_percent", meter_limit_range, &Meter::limit_percent);
    keys.number("meter_load_part_percent", meter_limit_range, &Meter::load_part_percent);
    keys.number("meter_span_wh", register_span_range, &Meter::span_wh);
    keys.add(
        "meter_correction", [](const Meter& of) { return of.correction != 1 ? exact_text(of.correction) : std::string(); }, read_correction);
    keys.add(
        "meter_points", [](const Meter& of) { return meter_points_text(of.points); }, read_points);
    keys.text("meter_class", longest_name, &Meter::accuracy_class);
    keys.text("meter_standard", longest_name, &Meter::standard);
    keys.number("meter_starting_current_a", current_range, &Meter::starting_current_a);
    keys.number("meter_range_low_w", load_range, &Meter::range_low_w);
    keys.number("meter_range_high_w", load_range, &Meter::range_high_w);
    keys.text("meter_certificate", longest_name, of_certificate(&MeterCertificate::number));
    keys.date("meter_certificate_date", &MeterCertificate::date);
    keys.text("meter_laboratory", longest_name, of_certificate(&MeterCertificate::laboratory));
    keys.date("meter_valid_until", &MeterCertificate::valid_until);
    keys.text("meter_remark", longest_remark, &Meter::remark);
    return keys.take();
}

} // namespace ullage::sheet
