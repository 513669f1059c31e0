// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/entry_texts.h"

#include "base/number.h"
#include "formats/entry/entry_text.h"
#include "style/words.h"

#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

namespace ullage {

namespace {

struct NamedText {
    const char* name;
    QString EntryTexts::*text;
};

constexpr NamedText named_texts[] = {{"time", &EntryTexts::time},
                                     {"gauge", &EntryTexts::gauge},
                                     {"register", &EntryTexts::register_value},
                                     {"second_register", &EntryTexts::second_register},
                                     {"watts", &EntryTexts::watts},
                                     {"display_watts", &EntryTexts::display_watts},
                                     {"remark", &EntryTexts::remark}};

QString number(const std::optional<double>& value) { return value ? raw_text(exact_text(*value)) : QString(); }

using Parse = Result<double> (*)(std::string_view);

struct NumberField {
    EntryField field;
    Phrase name;
    QString EntryTexts::*text;
    std::optional<double> ReadingValues::*value;
    Parse parse;
};

constexpr NumberField number_fields[] = {
    {EntryField::gauge, phrase("services", "gauge"), &EntryTexts::gauge, &ReadingValues::gauge_percent, parse_gauge_percent},
    {EntryField::register_value, phrase("services", "register"), &EntryTexts::register_value, &ReadingValues::register_wh, parse_energy_wh},
    {EntryField::second_register, phrase("services", "second register"), &EntryTexts::second_register, &ReadingValues::second_register_wh,
     parse_energy_wh},
    {EntryField::watts, phrase("services", "watts"), &EntryTexts::watts, &ReadingValues::meter_w, parse_power_w},
    {EntryField::display_watts, phrase("services", "display watts"), &EntryTexts::display_watts, &ReadingValues::display_w, parse_power_w}};

/// "14 May 2027 23:50", with seconds where there are any.
QString local_time_text(UtcMs time_ms, const std::string& zone) {
    const int second = to_local(time_ms, zone).second;
    const QString clock =
        raw_text(clock_text(time_ms, zone)) + (second == 0 ? QString() : QStringLiteral(":%1").arg(second, 2, 10, QLatin1Char('0')));
    return raw_text(date_text(time_ms, zone)) + QLatin1Char(' ') + clock;
}

EntryReading refused(EntryField field, const QString& message) { return {std::nullopt, field, message}; }

} // namespace

QString EntryTexts::draft() const {
    QJsonObject kept;
    for (const NamedText& part : named_texts)
        if (const QString& text = this->*part.text; !text.isEmpty()) kept[QLatin1String(part.name)] = text;
    if (mark) kept[QLatin1String("mark")] = raw_text(mark_text(*mark));
    return kept.isEmpty() ? QString() : QString::fromUtf8(QJsonDocument(kept).toJson(QJsonDocument::Compact));
}

EntryTexts EntryTexts::fromDraft(const QString& draft) {
    const QJsonObject kept = QJsonDocument::fromJson(draft.toUtf8()).object();
    EntryTexts texts;
    for (const NamedText& part : named_texts) texts.*part.text = kept[QLatin1String(part.name)].toString();
    texts.mark = mark_from(utf8_of(kept[QLatin1String("mark")].toString()));
    return texts;
}

EntryTexts EntryTexts::of(const ReadingValues& values, const std::string& zone) {
    return {local_time_text(values.time_ms, zone),
            number(values.gauge_percent),
            number(values.register_wh),
            number(values.meter_w),
            number(values.display_w),
            raw_text(values.remark),
            values.mark,
            number(values.second_register_wh)};
}

RegisterSteps steps_of(const RunRecord& record) {
    RegisterSteps steps;
    if (record.meter) steps.first_wh = record.meter->step_wh;
    if (record.second_meter) steps.second_wh = record.second_meter->step_wh;
    return steps;
}

EntryReading read_entry(const EntryTexts& texts, UtcMs now_ms, const std::string& zone, const RegisterSteps& steps) {
    ReadingValues values;
    const auto moment = parse_moment(utf8_of(texts.time.trimmed()), now_ms, zone);
    if (!moment) return refused(EntryField::time, text_of(say(phrase("services", "time: %1"), moment.error().message())));
    values.time_ms = moment.value();
    for (const NumberField& part : number_fields) {
        const QString text = (texts.*part.text).trimmed();
        if (text.isEmpty()) continue;
        const std::string typed = utf8_of(text);
        const auto parsed = part.field == EntryField::register_value    ? parse_register_wh(typed, steps.first_wh)
                            : part.field == EntryField::second_register ? parse_register_wh(typed, steps.second_wh)
                                                                        : part.parse(typed);
        if (!parsed) return refused(part.field, QStringLiteral("%1: %2").arg(text_of(say(part.name)), text_of(parsed.error().sentence())));
        values.*part.value = parsed.value();
    }
    values.mark = texts.mark;
    values.remark = utf8_of(texts.remark.trimmed());
    ReadingValues nothing;
    nothing.time_ms = values.time_ms;
    if (values == nothing)
        return refused(EntryField::gauge, text_of(say(phrase("services", "There is nothing to record yet: type what the gauge or the "
                                                                         "meter shows, choose a mark, or write a remark."))));
    return {values, EntryField::gauge, {}};
}

} // namespace ullage
