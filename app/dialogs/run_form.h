// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"
#include "model/meter.h"
#include "model/run.h"
#include "model/unit.h"

#include <vector>

namespace ullage {

/// Edits what is stated about a run: with which meter, from which state, how it ended. Runs are started by StartForm.
class RunForm final : public FormDialog {
    Q_OBJECT
public:
    /// Starts from `run`, which stays with its unit. Precondition: its unit is among `units`.
    RunForm(const Run& run, const std::vector<Unit>& units, const std::vector<Meter>& meters, QWidget* parent = nullptr);

    /// The run as submitted.
    [[nodiscard]] const Run& run() const { return run_; }

protected:
    void read() override;

private:
    Run run_;
    QComboBox *unit_, *kind_, *meter_, *second_meter_, *full_, *end_, *source_, *zone_;
    QLineEdit *load_, *noticed_, *ambient_, *ambient_end_;
};

} // namespace ullage
