// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"
#include "model/meter.h"

#include <string>

namespace ullage {

/// What is known of an energy meter.
class MeterForm final : public FormDialog {
    Q_OBJECT
public:
    /// Starts from `meter`; one without uuid is a new meter.
    explicit MeterForm(const Meter& meter, QWidget* parent = nullptr);

    /// The meter as submitted.
    [[nodiscard]] const Meter& meter() const { return meter_; }
    /// Why a known meter's data changes; empty where nothing was said.
    [[nodiscard]] const std::string& reason() const { return reason_; }

protected:
    void read() override;

private:
    void buildCertificate();
    void showValues();
    void readCertificate();

    Meter meter_;
    std::string reason_;
    QLineEdit *name_, *step_, *limit_, *load_part_, *span_, *correction_, *remark_;
    QLineEdit *class_, *standard_, *starting_current_, *range_low_, *range_high_;
    QLineEdit *certificate_, *date_, *laboratory_, *valid_until_, *points_;
    QLineEdit* why_ = nullptr; ///< of a meter that is known
};

} // namespace ullage
