// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/ended_words.h"

#include "formats/text/quantity_title.h"
#include "style/words.h"

#include <QStringList>

namespace ullage {

namespace {

QString told(const QString& name, const Quantity& quantity) {
    QString words = QStringLiteral("%1: %2").arg(name, text_of(say_quantity(quantity, quantity_decimals(quantity.key))));
    // "at least" and "not known" stand in the value itself.
    if (quantity.kind == Kind::projected || quantity.kind == Kind::bracket) words += QStringLiteral(", %1").arg(text_of(say_kind(quantity.kind)));
    if (!quantity.reason.empty()) words += QStringLiteral(" (%1)").arg(text_of(quantity.reason));
    return words;
}

} // namespace

QString ended_words(const RunRecord& ended, const RunAnalysis& analysis) {
    const EnergyAnalysis& energy = analysis.energy;
    QStringList lines{told(tr("Lasted"), energy.duration_h)};
    lines << told(ended.run.kind == RunKind::charge ? tr("Energy in") : tr("Delivered"), energy.delivered_wh);
    if (ended.run.kind == RunKind::drain) lines << told(tr("Usable"), energy.usable_fraction);
    return lines.join(QLatin1Char('\n'));
}

} // namespace ullage
