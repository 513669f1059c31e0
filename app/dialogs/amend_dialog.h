// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "services/entry_texts.h"

#include <QDialog>
#include <QStringList>

#include <string>

class QComboBox;
class QLabel;
class QLineEdit;

namespace ullage {

/// Changes a reading: all its values, the reason, and its history below. The old values are kept by the store.
///
/// The dialog returns values and never touches the store: on submitted() the caller stores values() with reason(), then
/// accepts the dialog, or calls refuse(), which keeps it open with the store's words.
class AmendDialog final : public QDialog {
    Q_OBJECT
public:
    /// `history` holds one line a version; times are read and written in `zone`, seen from `now_ms`.
    /// With `two_meters`, or where the reading has one, the second register can be changed too.
    AmendDialog(const ReadingValues& values, const QStringList& history, UtcMs now_ms, std::string zone, bool two_meters, QWidget* parent = nullptr);

    [[nodiscard]] ReadingValues values() const { return values_; }
    [[nodiscard]] QString reason() const;
    /// Shows why the values were not taken.
    void refuse(const QString& sentence);

signals:
    /// The texts are read and wait to be stored.
    void submitted();

private:
    [[nodiscard]] EntryTexts texts() const;
    void submit();

    ReadingValues values_;
    UtcMs now_ms_;
    std::string zone_;
    QLineEdit *time_edit_, *gauge_edit_, *register_edit_, *second_register_edit_ = nullptr, *watts_edit_, *display_edit_, *remark_edit_,
                                                          *reason_edit_;
    QComboBox* mark_combo_;
    QLabel* message_label_;
};

} // namespace ullage
