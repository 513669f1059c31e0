// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "claims/claims.h"

#include <QWidget>

#include <optional>

class QLabel;
class QLineEdit;

namespace ullage {

/// What the runs of a unit say of its claims beside the usable fraction: a table of claims against results, the round trip with its boundary, and
/// what the unit takes for itself with its cost at a price that is typed here.
class ClaimsView final : public QWidget {
    Q_OBJECT
public:
    explicit ClaimsView(QWidget* parent = nullptr);

    void setClaims(const UnitClaims& claims, const QString& currency);
    /// The price of a kWh as typed; absent while it is empty or no number of 0 or more.
    [[nodiscard]] std::optional<double> kwhPrice() const;
    void setKwhPriceText(const QString& text);
    [[nodiscard]] QString kwhPriceText() const;

signals:
    void priceChanged();

protected:
    void changeEvent(QEvent* event) override;

private:
    void showClaims();

    UnitClaims claims_;
    QString currency_;
    QLabel *table_, *round_trip_, *draws_, *error_;
    QLineEdit* price_;
};

} // namespace ullage
