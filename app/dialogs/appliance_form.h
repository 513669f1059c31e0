// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"
#include "model/load_list.h"

#include <string>

namespace ullage {

/// One line of a load list: an appliance, or several alike.
class ApplianceForm final : public FormDialog {
    Q_OBJECT
public:
    /// Starts from `appliance`; one without name is a new line of the list called `list_name`.
    ApplianceForm(const Appliance& appliance, const std::string& list_name, QWidget* parent = nullptr);

    /// The appliance as submitted; check() has found it sound.
    [[nodiscard]] const Appliance& appliance() const { return appliance_; }

protected:
    void read() override;

private:
    void readPower();
    void readUse();

    Appliance appliance_;
    QLineEdit *name_, *count_, *power_, *duty_, *measured_, *over_, *hours_, *night_, *start_;
    QComboBox* connected_;
};

} // namespace ullage
