// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/findings_items.h"

#include "formats/text/quantity_title.h"
#include "measure/register_correction_acceptance.h"
#include "style/numbers.h"
#include "style/words.h"

#include <algorithm>
#include <iterator>

namespace ullage {

namespace {

/// With a capital at the beginning and a full stop at the end.
QString sentence(QString text) {
    if (text.isEmpty()) return text;
    text[0] = text[0].toUpper();
    if (!text.endsWith(QLatin1Char('.'))) text += QLatin1Char('.');
    return text;
}

FindingItem::Sort sort_of(Weight weight) {
    switch (weight) {
    case Weight::fault: return FindingItem::Sort::fault;
    case Weight::doubt: return FindingItem::Sort::doubt;
    case Weight::note: return FindingItem::Sort::note;
    }
    return FindingItem::Sort::note;
}

void add_unknown(std::vector<FindingItem>& items, const QString& name, const Quantity& quantity) {
    if (quantity.kind != Kind::not_known || quantity.reason.empty()) return;
    items.push_back({FindingItem::Sort::not_known, sentence(name + QStringLiteral(": ") + text_of(quantity.reason)), {}, {}});
}

/// A sentence of the core, unless an item says it already.
void add_said(std::vector<FindingItem>& items, const std::string& text, bool known) {
    const QString said = sentence(text_of(text));
    const auto same = [&said](const FindingItem& item) { return item.sentence == said; };
    if (said.isEmpty() || std::any_of(items.begin(), items.end(), same)) return;
    items.push_back({known ? FindingItem::Sort::note : FindingItem::Sort::not_known, said, {}, {}});
}

/// Whether a linear gauge explains the readings; slope and Wh per gauge point stand below as its evidence.
void add_line_test(std::vector<FindingItem>& items, const RunAnalysis& analysis) {
    QStringList evidence;
    for (const char* key : {"line_slope", "wh_per_gauge_point"}) {
        const auto quantity = std::ranges::find(analysis.quantities, key, &Quantity::key);
        if (quantity == analysis.quantities.end() || !quantity->value) continue;
        const QString text = shown_quantity(*quantity, quantity_decimals(key)).plain();
        evidence << (quantity->key == "line_slope" ? tr("slope %1, delivered per gauge-implied energy").arg(text)
                                                   : tr("%1 %2").arg(text, text_of(quantity->reason)));
    }
    items.push_back({FindingItem::Sort::note, sentence(text_of(analysis.gauge.line->sentence)), evidence.join(QStringLiteral("; ")), {}});
}

/// Faults, doubts, what was assumed, notes, and at last what is not known; within each as they came.
void put_first_what_matters(std::vector<FindingItem>& items) {
    constexpr FindingItem::Sort order[] = {FindingItem::Sort::fault, FindingItem::Sort::doubt, FindingItem::Sort::assumed, FindingItem::Sort::note,
                                           FindingItem::Sort::not_known};
    std::ranges::stable_sort(items, {}, [&order](const FindingItem& item) { return std::ranges::find(order, item.sort) - std::begin(order); });
}

} // namespace

QString finding_word(FindingItem::Sort sort) {
    switch (sort) {
    case FindingItem::Sort::fault: return tr("fault");
    case FindingItem::Sort::doubt: return tr("doubt");
    case FindingItem::Sort::note: return tr("note");
    case FindingItem::Sort::assumed: return tr("assumed");
    case FindingItem::Sort::not_known: return tr("not known");
    }
    return {};
}

std::vector<FindingItem> finding_items(const RunAnalysis& analysis, const std::optional<LossSplit>& split, RunKind kind) {
    std::vector<FindingItem> items;
    for (const Finding& finding : analysis.gauge.findings) {
        items.push_back({sort_of(finding.weight), sentence(text_of(finding.sentence)), text_of(finding.evidence), finding.readings});
    }
    const bool drains = kind == RunKind::drain || kind == RunKind::no_load_drain;
    if (drains && analysis.gauge.findings.empty() && !analysis.energy.points.empty() && !analysis.gauge.verdict.empty())
        items.push_back({FindingItem::Sort::note, sentence(tr("Gauge: %1").arg(text_of(analysis.gauge.verdict))), {}, {}});
    for (const Message& remark : analysis.energy.meter_remarks) items.push_back({FindingItem::Sort::note, text_of(remark), {}, {}});
    if (!analysis.energy.log_sentence.empty()) items.push_back({FindingItem::Sort::note, text_of(analysis.energy.log_sentence), {}, {}});
    for (const RegisterCorrection& register_correction : analysis.energy.track.register_corrections) {
        FindingItem item{
            FindingItem::Sort::assumed,
            sentence(QStringLiteral("%1: %2").arg(text_of(say_register_correction(register_correction.kind)), text_of(register_correction.reason))),
            {},
            {register_correction.reading_uuid}};
        item.acceptable = can_be_accepted(register_correction.kind);
        if (register_correction.missing_wh) item.evidence = tr("about %1 Wh may be missing").arg(*register_correction.missing_wh, 0, 'f', 0);
        items.push_back(std::move(item));
    }
    // Before the first reading nothing is known, and saying so in four lines helps nobody.
    if (analysis.energy.points.empty() && analysis.energy.track.points.empty()) return items;
    add_unknown(items, tr("Delivered energy"), analysis.energy.delivered_wh);
    if (!drains) {
        items.push_back({FindingItem::Sort::not_known,
                         tr("Usable fraction, the gauge's errors and losses: this kind of run (%1) does not tell them; make a drain.")
                             .arg(text_of(say_run_kind(kind))),
                         {},
                         {}});
        put_first_what_matters(items);
        return items;
    }
    add_unknown(items, tr("Usable fraction"), analysis.energy.usable_fraction);
    add_unknown(items, tr("Wh per gauge point"), analysis.energy.wh_per_gauge_point);
    // Where few readings give a bound, that is the answer; that no line is tested is no lack.
    const bool bounded = analysis.gauge.feasibility.least_error_pt.kind != Kind::not_known;
    if (!analysis.gauge.line && !analysis.gauge.line_reason.empty() && !bounded)
        items.push_back(
            {FindingItem::Sort::not_known, sentence(tr("Whether a linear gauge fits: %1").arg(text_of(analysis.gauge.line_reason))), {}, {}});
    if (analysis.gauge.line) add_line_test(items, analysis);
    if (split) add_said(items, split->sentence, split->rest_wh.kind != Kind::not_known);
    add_said(items, analysis.gauge.losses.sentence, analysis.gauge.losses.known());
    add_said(items, analysis.gauge.feasibility.sentence, bounded);
    put_first_what_matters(items);
    return items;
}

} // namespace ullage
