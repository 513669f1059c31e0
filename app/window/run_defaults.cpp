// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/run_defaults.h"

#include "services/reading_rules.h"
#include "services/settings.h"
#include "style/words.h"

#include <QLocale>

#include <string_view>

namespace ullage {

namespace {

const QString is_default = QStringLiteral("default");
const QString publisher_name = QStringLiteral("publisher/name"), licence_name = QStringLiteral("publisher/licence");

QString kind_name(const UnitId& unit_uuid) { return QStringLiteral("start/kind/%1").arg(raw_text(unit_uuid)); }
QString meter_name(const MeterId& meter_uuid) { return QStringLiteral("start/meter/%1").arg(raw_text(meter_uuid)); }
QString rule_name(RunKind kind) { return QStringLiteral("start/rule/%1").arg(static_cast<int>(kind)); }

} // namespace

RunDefaults run_defaults(const Settings& settings, const Document& document) {
    RunDefaults defaults;
    for (const auto* record : document.runs()) {
        const auto known = defaults.last_of_unit.find(record->unit.uuid);
        if (known == defaults.last_of_unit.end() || known->second.created_ms <= record->run.created_ms)
            defaults.last_of_unit.insert_or_assign(record->unit.uuid, record->run);
    }
    for (const auto& unit : document.units())
        if (const auto kind = run_kind_from(utf8_of(settings.remembered(kind_name(unit.uuid))))) defaults.kind_of_unit[unit.uuid] = *kind;
    for (const auto kind : all_run_kinds)
        if (const auto kept = settings.remembered(rule_name(kind)); !kept.isEmpty()) defaults.rule_of_kind[kind] = rule_from_kept(kept);
    defaults.meter_uuid = default_meter(settings, document);
    return defaults;
}

void keep_run_defaults(Settings& settings, const RunStart& start) {
    settings.remember(kind_name(start.run.unit_uuid), text_of(say_run_kind(start.run.kind)));
    keep_default_rule(settings, start.run.kind, start.rule);
}

ReadingRule default_rule(const Settings& settings, RunKind kind) {
    const auto kept = settings.remembered(rule_name(kind));
    return kept.isEmpty() ? usual_rule(kind) : rule_from_kept(kept);
}

void keep_default_rule(Settings& settings, RunKind kind, const ReadingRule& rule) { settings.remember(rule_name(kind), kept_rule(rule)); }

std::optional<MeterId> default_meter(const Settings& settings, const Document& document) {
    for (const Meter& meter : document.meters())
        if (settings.remembered(meter_name(meter.uuid)) == is_default) return meter.uuid;
    return std::nullopt;
}

void keep_default_meter(Settings& settings, const Document& document, const std::optional<MeterId>& meter) {
    for (const Meter& each : document.meters()) {
        const bool wanted = meter == each.uuid;
        if (wanted || settings.remembered(meter_name(each.uuid)) == is_default)
            settings.remember(meter_name(each.uuid), wanted ? is_default : QString());
    }
}

Paper chosen_paper(const Settings& settings) {
    const QString chosen = settings.paper();
    return chosen.isEmpty() ? paper_of(QLocale()) : chosen == QLatin1String("letter") ? Paper::letter : Paper::a4;
}

Publisher publisher_of(const Settings& settings, const Document& document) {
    if (document.isOpen() && document.publisher() != Publisher()) return document.publisher();
    Publisher known;
    known.name = utf8_of(settings.remembered(publisher_name));
    known.licence = utf8_of(settings.remembered(licence_name));
    return known;
}

Result<void> keep_publisher(Settings& settings, Document& document, const Publisher& publisher) {
    if (document.isOpen() && !document.isLooking())
        if (auto put = document.setPublisher(publisher); !put) return put;
    settings.remember(publisher_name, raw_text(publisher.name));
    settings.remember(licence_name, raw_text(publisher.licence));
    return {};
}

} // namespace ullage
