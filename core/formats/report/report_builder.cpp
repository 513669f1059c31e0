// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/report/inside/report_parts.h"

#include "base/version.h"
#include "formats/text/quantity_title.h"
#include "unit/advice.h"

namespace ullage {

ReportBuilder::ReportBuilder(const std::vector<ReportedRun>& runs, const ReportOptions& options)
    : speaking_(language_in_use(), options.decimal_sign) {
    form.decimal_sign = options.decimal_sign;
    own_affairs = options.own_affairs;
    for (const ReportedRun& run : runs) {
        const RunRecord& record = *run.record;
        form.names.insert({record.unit.name, record.unit.maker, record.run.load});
        for (const auto* meter : {&record.meter, &record.second_meter})
            if (*meter) form.names.insert((*meter)->name);
    }
    // A name that is only digits ("12") would keep numbers from their form.
    std::erase_if(form.names, [](const std::string& name) { return name.find_first_not_of("0123456789., ") == std::string::npos; });
    report.names.assign(form.names.begin(), form.names.end());
    report.made = say(phrase("report", "made %1, %2 (%3) by Ullage %4"), say_date(options.made_ms, options.zone),
                      clock_text(options.made_ms, options.zone), zone_exists(options.zone) ? options.zone : "UTC", program_version());
}

void ReportBuilder::heading(int level, const Message& text) {
    heading_ = text;
    report.blocks.emplace_back(ReportHeading{level, text});
}

void ReportBuilder::paragraph(const Message& sentence, const Message& lead) {
    if (!sentence.empty()) report.blocks.emplace_back(ReportParagraph{lead, text(sentence)});
}

void ReportBuilder::list(const std::vector<Message>& items) {
    ReportList list;
    for (const Message& item : items) list.items.push_back(text(item));
    if (!list.items.empty()) report.blocks.emplace_back(std::move(list));
}

void ReportBuilder::picture(std::string key, const Message& caption) { report.blocks.emplace_back(ReportPicture{std::move(key), caption}); }

Message ReportBuilder::told(const Message& words) const { return own_affairs ? words : without_advice(words); }

void ReportBuilder::table(const Table& given) {
    if (given.rows.empty()) return;
    auto whole = std::make_shared<Table>(given);
    for (TableRow& row : whole->rows)
        for (TableCell& cell : row)
            if (auto* quantity = std::get_if<Quantity>(&cell)) quantity->reason = told(quantity->reason);
    if (whole->title.empty()) whole->title = heading_;
    ReportTable block{given.title, printed_in_form(*whole, form), {}, {}};
    for (const Message& remark : given.remarks) block.remarks.push_back(text(remark));
    block.whole = std::move(whole);
    report.blocks.emplace_back(std::move(block));
}

std::string report_picture_key(const std::string& what, const std::string& uuid) { return what + ':' + uuid; }

Message run_name(const ReportedRun& run) {
    return say(phrase("report", "%1, %2"), run.record->unit.name, run_title(*run.record, run.analysis->energy));
}

Message say_value(const Quantity& quantity) { return say_quantity(quantity, quantity_decimals(quantity.key)); }

Message say_what_intervals_are() { return say(phrase("report", "After ± stands half the width of an interval meant to cover 95 %.")); }

ReportFigure figure_of(const Quantity& quantity, const NumberForm& form) {
    const QuantityParts parts = quantity_parts(quantity, quantity_decimals(quantity.key));
    ReportFigure figure;
    figure.title = quantity_title(quantity.key);
    figure.value = form.apply(parts.value);
    figure.interval = form.apply(parts.interval);
    figure.unit = parts.unit;
    // "not known" and "at least" stand in the value already.
    if (quantity.kind != Kind::not_known && quantity.kind != Kind::at_least) figure.note = say_kind(quantity.kind);
    return figure;
}

} // namespace ullage
