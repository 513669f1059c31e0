// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"
#include "model/unit.h"

namespace ullage {

/// The claims of a unit. Empty fields are claims that the maker does not state.
class UnitForm final : public FormDialog {
    Q_OBJECT
public:
    /// Starts from `unit`; one without uuid is a new unit.
    explicit UnitForm(const Unit& unit, QWidget* parent = nullptr);

    /// The unit as submitted.
    [[nodiscard]] const Unit& unit() const { return unit_; }

protected:
    void read() override;

private:
    void readClaims();
    void readPrice();

    Unit unit_;
    QLineEdit *name_, *maker_, *model_, *rated_energy_, *rated_output_, *peak_output_, *gauge_step_;
    QLineEdit *price_, *currency_, *mass_, *warranty_, *pv_volts_, *pv_amps_, *pv_watts_, *pv_start_, *pv_short_circuit_, *charge_time_, *paid_price_,
        *tags_, *remark_;
    QLineEdit *serial_number_, *chemistry_, *purchased_, *cycles_before_;
};

} // namespace ullage
