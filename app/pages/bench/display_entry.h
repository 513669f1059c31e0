// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "pages/parts/entry_flow.h"
#include "style/palette.h"

#include <QFrame>
#include <QTimer>

class QLabel;
class QLineEdit;

namespace ullage {

/// The entry over a card of the bench display: gauge and register in large fields, for one run. What is typed goes the way of every entry
/// (EntryFlow), with the same questions, and is kept as the run's half-typed row, which comes back here and on the run page. What else stands in that
/// row, such as a remark, is named and recorded with it.
class DisplayEntry final : public QFrame {
    Q_OBJECT
public:
    DisplayEntry(Document& document, QWidget* parent);

    /// Shows what the run keeps as half typed, with the keyboard in the gauge.
    void open(const RunId& runUuid, const QString& title);
    /// Colours and the size of the digits in the fields, pixels.
    void setLook(const Palette& colours, int digit_px);
    /// Keeps what is typed and hides.
    void leave();
    [[nodiscard]] const RunId& runUuid() const { return run_uuid_; }

signals:
    void left(const RunId& runUuid); ///< it hides: recorded, or with what is half typed kept
    void resized();                  ///< a question or a message needs another size

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] EntryTexts texts() const;
    void keepDraft();
    void showMessage(const QString& message, QWidget* field);
    [[nodiscard]] QLineEdit* fieldOf(EntryField field) const;
    void edited();
    QLineEdit* addField(const char* name, const QString& label);

    Document& document_;
    RunId run_uuid_;
    EntryTexts kept_; ///< what of the half-typed row has no field here
    QTimer draft_timer_;
    bool filling_ = false;
    QLabel *title_label_, *rest_label_, *message_label_;
    QLineEdit *gauge_edit_, *register_edit_, *second_edit_;
    QLabel* second_label_ = nullptr;
    QuestionBar* question_bar_;
    EntryFlow* flow_;
};

} // namespace ullage
