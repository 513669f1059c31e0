// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"
#include "live/live_source.h"
#include "model/meter.h"
#include "sources/live_session.h"

#include <QTimer>

#include <memory>
#include <optional>

class QCheckBox;
class QPlainTextEdit;
class QPushButton;

namespace ullage {

class LiveFace;

/// How a meter is read live: kind, address, what is read. *Try* shows what comes; nothing is recorded by it. A password that is typed is used for
/// trying alone.
class SourceForm final : public FormDialog {
    Q_OBJECT
public:
    SourceForm(const Meter& meter, const std::optional<LiveSource>& source, QWidget* parent = nullptr);
    ~SourceForm() override;

    /// As submitted; absent: the meter is no longer read live.
    [[nodiscard]] const std::optional<LiveSource>& source() const { return source_; }

    /// The desktop keeps the password of the source as given: Try takes it where none is typed, and a button has it forgotten.
    void setKeptPassword(const QString& password);
    void passwordForgotten();

    /// What speaks against it, for confirmed(): it was never tried.
    [[nodiscard]] QStringList doubts() const;

signals:
    void forgetAsked(); ///< the kept password

protected:
    void read() override;

private:
    void buildAddress();
    void buildTrial();
    void showSource(const LiveSource& source);
    void fitKind();
    [[nodiscard]] SourceKind kind() const;
    /// What the fields say; what is wrong with them is explained.
    [[nodiscard]] std::optional<LiveSource> stated();
    void tryIt();
    void endTrial();

    std::optional<LiveSource> source_;
    std::optional<LiveSource> tried_; ///< the last one of which something came
    QComboBox* kind_;
    QLineEdit *address_, *station_, *line_, *interval_, *user_, *password_;
    QCheckBox* tls_;
    QPlainTextEdit* fields_;
    LiveFace* face_;
    QPushButton *try_, *forget_;
    std::optional<LiveSource> given_;
    QString kept_password_;
    std::unique_ptr<LiveSession> trial_;
    LiveSource trial_of_;
    QTimer look_timer_;
};

} // namespace ullage
