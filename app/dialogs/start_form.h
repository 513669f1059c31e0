// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/clock.h"
#include "dialogs/form_dialog.h"
#include "forecast/reading_due.h"
#include "model/meter.h"
#include "model/reading.h"
#include "model/run.h"
#include "model/unit.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

class QButtonGroup;
class QPushButton;

namespace ullage {

/// What the form that starts a run begins with, and what it offers. Nothing of another unit is filled in.
struct RunDefaults {
    UnitId unit_uuid;
    std::optional<MeterId> meter_uuid;           ///< chosen at first; absent: the only one, where there is but one
    std::map<UnitId, Run> last_of_unit;          ///< the last run of each unit that has one: its kind, meter, load and state are offered as such
    std::string time_zone;                       ///< the machine's where it is empty or unknown
    std::map<UnitId, RunKind> kind_of_unit;      ///< a drain where there is none
    std::map<RunKind, ReadingRule> rule_of_kind; ///< usual_rule() where there is none
};

/// What the form hands back.
struct RunStart {
    Run run;
    std::optional<ReadingValues> first;       ///< the first reading, where anything was typed
    std::optional<double> gauge_step_percent; ///< where it differs from the unit's
    ReadingRule rule;
};

/// Starts a run: a preset says what is tested and brings its cautions, its usual state and load, and how often to read. A field that
/// was typed into keeps its text when the preset changes.
class StartForm final : public FormDialog {
    Q_OBJECT
public:
    /// Precondition: `units` is not empty. The clock must outlive the form; it says what "now" is when the form is submitted.
    StartForm(const RunDefaults& defaults, const std::vector<Unit>& units, const std::vector<Meter>& meters, const Clock& clock,
              QWidget* parent = nullptr);

    /// As submitted.
    [[nodiscard]] const RunStart& start() const { return start_; }

protected:
    void read() override;

private:
    void addPresets();
    void addFields(const std::vector<Meter>& meters);
    void applyPreset(RunKind kind);
    void unitChosen();
    void takeLast();         ///< the choices of the unit's last run
    void sayWhatIsMissing(); ///< before the run is started, not after
    void readFirst();
    void readRule();
    [[nodiscard]] const Unit& unit() const;

    RunDefaults defaults_;
    std::vector<Unit> units_;
    const Clock& clock_;
    RunStart start_;
    RunKind kind_ = RunKind::drain;
    bool kind_by_hand_ = false, full_by_hand_ = false;
    QButtonGroup* presets_;
    QLabel *preset_label_, *cautions_label_, *missing_label_;
    QPushButton* last_button_;
    QComboBox *unit_, *meter_, *second_meter_, *full_, *source_, *zone_;
    QLineEdit *load_, *gauge_step_, *ambient_;
    QLineEdit *gauge_, *register_, *second_register_, *watts_, *time_;
    QLineEdit *every_, *drop_, *before_;
};

} // namespace ullage
