// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"
#include "model/meter.h"
#include "model/run.h"
#include "model/unit.h"

#include <vector>

namespace ullage {

/// Starts or edits a run: what is tested, with which meter, from which state. Shows the cautions where a run is started.
class RunForm final : public FormDialog {
    Q_OBJECT
public:
    /// Starts from `run`; one without uuid is a new run, in the machine's time zone unless it names another.
    /// Precondition: `units` is not empty.
    RunForm(const Run& run, const std::vector<Unit>& units, const std::vector<Meter>& meters, QWidget* parent = nullptr);

    /// The run as submitted.
    [[nodiscard]] const Run& run() const { return run_; }

protected:
    void read() override;

private:
    void fill_units(const std::vector<Unit>& units);
    void fill_meters(const std::vector<Meter>& meters);
    void fill_zones();

    Run run_;
    QComboBox *unit_, *kind_, *meter_, *full_, *end_ = nullptr, *zone_;
    QLineEdit *load_, *ambient_;
};

} // namespace ullage
