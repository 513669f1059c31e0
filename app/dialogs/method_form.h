// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"
#include "measure/options.h"

#include <map>
#include <string>
#include <vector>

class QComboBox;

namespace ullage {

/// The figures that a logbook's method takes for granted: an empty field stands for the program's own, which it shows in grey.
class MethodForm final : public FormDialog {
    Q_OBJECT
public:
    /// `stated`: those that the logbook states, by key (measure/method_settings.h). `in_force`: what the analyses go by now, with a pooled scatter.
    MethodForm(const std::map<std::string, double>& stated, const MeasureOptions& in_force, QWidget* parent = nullptr);

    /// As submitted.
    [[nodiscard]] const std::map<std::string, double>& stated() const { return stated_; }

protected:
    void read() override;

private:
    std::map<std::string, double> stated_;
    std::vector<QLineEdit*> fields_; ///< in the order of all_method_settings(), null for the rule
    QComboBox* rule_;
};

} // namespace ullage
