// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/run_record.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QPushButton;
class QAction;

namespace ullage {

class ElidedLabel;

/// The head of a run page: unit, what the run is, its state, and the actions. Where one line does not hold it all, the buttons
/// stand below.
class RunHead final : public QWidget {
    Q_OBJECT
public:
    explicit RunHead(QWidget* parent = nullptr);

    void setRun(const RunRecord& record);
    /// Whether Amend and Withdraw have a reading to work on. Amend works on the last reading where none is chosen.
    void setReadingChosen(bool amendable, bool withdrawable);
    /// Whether anything can be entered: not while another program records into the logbook. Amend and Withdraw follow setReadingChosen().
    void setEnterable(bool enterable);
    /// Whether reminders are at hand; at first they are not.
    void setRemindersOffered(bool offered);
    /// The actions, for menus: mark, end run, attach photo, amend, withdraw, edit run, next reading.
    [[nodiscard]] QList<QAction*> runActions() const;

    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void markAsked();
    void endAsked();
    void amendAsked();
    void withdrawAsked();
    void editAsked();
    void ruleAsked(); ///< when to be reminded of the next reading
    void photoAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QAction* addAction(const char* name, const QString& text, const QString& hint);
    QPushButton* addButton(const char* name, QAction& action);
    void applyFonts();
    void fit();

    ElidedLabel* title_label_;
    ElidedLabel* about_label_;
    QLabel* state_label_;
    QWidget *titles_, *buttons_;
    QGridLayout* grid_;
    QAction *mark_action_, *end_action_, *amend_action_, *withdraw_action_, *edit_action_, *rule_action_, *photo_action_;
    bool running_ = false, reminders_offered_ = false;
};

/// "drain, 14 May, socket meter A ±1 %, projector and work lights".
[[nodiscard]] QString run_about(const RunRecord& record);

} // namespace ullage
