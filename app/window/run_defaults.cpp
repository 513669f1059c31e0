// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/run_defaults.h"

#include "services/reading_rules.h"
#include "services/settings.h"
#include "style/words.h"

#include <string_view>

namespace ullage {

namespace {

QString kind_name(const UnitId& unit_uuid) { return QStringLiteral("start/kind/%1").arg(raw_text(unit_uuid)); }
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
    return defaults;
}

void keep_run_defaults(Settings& settings, const RunStart& start) {
    settings.remember(kind_name(start.run.unit_uuid), text_of(run_kind_text(start.run.kind)));
    settings.remember(rule_name(start.run.kind), kept_rule(start.rule));
}

} // namespace ullage
