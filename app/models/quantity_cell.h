// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/quantity.h"

#include <QVariant>

namespace ullage {

/// Roles of a table cell that holds a quantity. The numbers are far from those of the models themselves.
enum QuantityRole {
    IntervalRole = Qt::UserRole + 100, ///< QString: "± 17", or empty
    SortRole,                          ///< double for sorting; invalid where the value is not known
    SoftRole,                          ///< bool: the cell says that a value is not known, or only roughly how
};

/// A quantity's share of QAbstractItemModel::data, in its own unit, which the column's head names: the value rounded to what its uncertainty
/// supports, the interval, the kind and reason as tool tip, right alignment.
[[nodiscard]] QVariant quantity_data(const Quantity& quantity, int role, int fallback_decimals);

} // namespace ullage
