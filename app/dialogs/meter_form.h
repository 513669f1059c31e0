// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"
#include "model/meter.h"

namespace ullage {

/// What is known of an energy meter.
class MeterForm final : public FormDialog {
    Q_OBJECT
public:
    /// Starts from `meter`; one without uuid is a new meter.
    explicit MeterForm(const Meter& meter, QWidget* parent = nullptr);

    /// The meter as submitted.
    [[nodiscard]] const Meter& meter() const { return meter_; }

protected:
    void read() override;

private:
    Meter meter_;
    QLineEdit *name_, *step_, *limit_, *load_part_, *span_, *correction_, *remark_;
};

} // namespace ullage
