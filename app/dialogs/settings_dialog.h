// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"
#include "forecast/reading_due.h"
#include "model/meter.h"
#include "model/publisher.h"
#include "model/run.h"
#include "style/theme.h"

#include <map>
#include <optional>
#include <vector>

class QCheckBox;
class QPlainTextEdit;

namespace ullage {

/// All that a person sets, in one place.
struct ChosenSettings {
    QString language; ///< as Settings::language()
    Theme theme = Theme::system;
    int text_step = 0; ///< as Settings::textStep()
    std::optional<MeterId> meter;
    std::map<RunKind, ReadingRule> rules; ///< of every kind
    bool reminder_on_desktop = true, reminder_sound = false;
    QString paper; ///< as Settings::paper()
    Publisher publisher;
    bool backup_on = true;
    QString backup_folder; ///< empty: beside each logbook
    int backup_days = 1;
};

/// What the dialog shows besides.
struct SettingsSurroundings {
    std::vector<Meter> meters; ///< of the open logbook
    bool logbook_open = false;
    bool logbook_fixed = false; ///< it is only looked at
    QString desktop_paper;      ///< as people say it
};

/// The settings of the program, in tabs by meaning. The look is shown at once: lookChosen() says what is chosen; who closes the dialog without
/// accepting it has the look taken back by the caller.
class SettingsDialog final : public FormDialog {
    Q_OBJECT
public:
    SettingsDialog(const ChosenSettings& chosen, const SettingsSurroundings& around, QWidget* parent = nullptr);

    /// As submitted.
    [[nodiscard]] const ChosenSettings& chosen() const { return chosen_; }
    void setBackupFolder(const QString& folder); ///< that was chosen

signals:
    void lookChosen(ullage::Theme theme, int textStep);
    void backupFolderAsked(const QString& present);

protected:
    void read() override;
    void changeEvent(QEvent* event) override;

private:
    void addLook();
    void addTests(const SettingsSurroundings& around);
    void addReports(const SettingsSurroundings& around);
    void addBackup();
    void tellLook();
    void showRule();               ///< of the kind that is chosen
    [[nodiscard]] bool readRule(); ///< of the kind that is shown; false where a field is not understood
    void fitText();                ///< as wide as the text needs

    ChosenSettings chosen_;
    QString given_folder_; ///< for copies, as it was
    RunKind shown_kind_ = RunKind::drain;
    QComboBox *language_ = nullptr, *theme_ = nullptr, *text_size_ = nullptr, *meter_ = nullptr, *kind_ = nullptr, *paper_ = nullptr;
    QLineEdit *every_ = nullptr, *drop_ = nullptr, *before_ = nullptr;
    QLineEdit *publisher_name_ = nullptr, *publisher_title_ = nullptr, *licence_ = nullptr, *backup_folder_ = nullptr, *backup_days_ = nullptr;
    QPlainTextEdit* introduction_ = nullptr;
    QCheckBox *on_desktop_ = nullptr, *sound_ = nullptr, *backup_ = nullptr;
};

} // namespace ullage
