// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/quantity_cell.h"

#include "style/numbers.h"
#include "style/words.h"

#include <QObject>
#include <QString>

namespace ullage {

QVariant quantity_data(const Quantity& quantity, int role, int fallback_decimals) {
    switch (role) {
    case Qt::DisplayRole: return shown_as_it_is(quantity, fallback_decimals).value;
    case IntervalRole: return shown_as_it_is(quantity, fallback_decimals).interval;
    case Qt::AccessibleTextRole: return shown_as_it_is(quantity, fallback_decimals).plain();
    case Qt::TextAlignmentRole: return int(Qt::AlignRight | Qt::AlignVCenter);
    case Qt::ToolTipRole: {
        const auto kind = text_of(say_kind(quantity.kind));
        if (quantity.reason.empty()) return kind;
        return QStringLiteral("%1: %2").arg(kind, text_of(quantity.reason));
    }
    case SortRole: return quantity.value ? QVariant(*quantity.value) : QVariant();
    case SoftRole: return quantity.kind == Kind::not_known;
    default: return {};
    }
}

} // namespace ullage
