// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/quantity_cell.h"

#include "style/numbers.h"
#include "style/words.h"

#include <QObject>
#include <QString>

#include <string_view>

namespace ullage {

namespace {

/// Value and interval; the core's own words where the interval is no plain ±.
ValueText shown(const Quantity& quantity, int fallback_decimals) {
    const bool plain = quantity.value && (quantity.kind == Kind::measured || quantity.kind == Kind::projected);
    const auto text = raw_text(quantity_text(quantity, fallback_decimals));
    if (plain && (!quantity.lower || text.contains(QChar(0x00B1)))) return shown_value(quantity.value, quantity.half_width(), {}, fallback_decimals);
    const auto unit = QLatin1Char(' ') + raw_text(quantity.unit);
    return {text.endsWith(unit) ? text.chopped(unit.size()) : text, {}, {}};
}

} // namespace

QVariant quantity_data(const Quantity& quantity, int role, int fallback_decimals) {
    switch (role) {
    case Qt::DisplayRole: return shown(quantity, fallback_decimals).value;
    case IntervalRole: return shown(quantity, fallback_decimals).interval;
    case Qt::AccessibleTextRole: return raw_text(quantity_text(quantity, fallback_decimals));
    case Qt::TextAlignmentRole: return int(Qt::AlignRight | Qt::AlignVCenter);
    case Qt::ToolTipRole: {
        const auto kind = text_of(kind_text(quantity.kind));
        if (quantity.reason.empty()) return kind;
        return QStringLiteral("%1: %2").arg(kind, text_of(quantity.reason));
    }
    case SortRole: return quantity.value ? QVariant(*quantity.value) : QVariant();
    case SoftRole: return quantity.kind == Kind::not_known;
    default: return {};
    }
}

} // namespace ullage
