// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "pages/parts/entry_flow.h"

#include <QTimer>
#include <QWidget>

class QComboBox;
class QHBoxLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QToolButton;

namespace ullage {

class WaitingPhotos;

/// The row that is always ready for the next reading of one run. Tab moves on, Enter records from any field, Escape clears.
///
/// A text that cannot be read gets its message below and stays. A doubtful value (see measure/entry_doubts.h) is questioned
/// inline. The reading is on the disk before the row clears; when the store refuses it the text stays and the store's
/// words stand below. What is half typed is kept with the run and comes back with it, and so are the photos that wait for the
/// reading. Mark and display watts fold away where the row is narrow.
class EntryRow final : public QWidget {
    Q_OBJECT
public:
    explicit EntryRow(Document& document, QWidget* parent = nullptr);

    /// Keeps the half-typed row of the run before and brings back that of this one. An unknown run disables the row.
    void setRun(const RunId& runUuid);
    [[nodiscard]] EntryTexts texts() const;
    [[nodiscard]] std::vector<PhotoId> waitingPhotos() const; ///< for the next reading, by uuid
    /// The message below the fields; empty when there is none.
    [[nodiscard]] QString message() const;

public slots:
    void record();
    void clear();
    /// Writes the present time into the time field's placeholder.
    void showNow();
    /// Keeps what is half typed with the run, at once.
    void keepDraft();
    /// Shows what the run keeps as half typed, which was changed elsewhere.
    void takeDraft();
    void focusGauge();
    /// Unfolds the mark chooser and moves there.
    void askMark();
    /// Records a mark of this moment at once; what is half typed in the row is recorded with it.
    void recordMark(ullage::MarkKind mark);

signals:
    void recorded(const ReadingId& readingUuid);
    /// Pictures were pasted into a field.
    void photoPasteAsked();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    QLineEdit* addField(const char* name, const QString& placeholder, const QString& label, const QString& hint);
    void buildFields();
    void buildRows();
    void orderTabs();
    void setTexts(const EntryTexts& texts);
    void edited();
    void focusField(EntryField field);
    void showMessage(const QString& message, QWidget* field = nullptr);
    void setUnfolded(bool unfolded);
    void takeTime(const QString& text);
    void fitWidths();
    void showSecondRegister();             ///< where the run names a second meter, or something is typed there
    [[nodiscard]] int inlineWidth() const; ///< from which mark and display watts stand in the first line
    void arrange();
    [[nodiscard]] QWidget* widgetOf(EntryField field) const;

    Document& document_;
    RunId run_uuid_;
    QTimer minute_timer_, draft_timer_;
    bool filling_ = false;  ///< texts are being set by the program, not typed
    bool unfolded_ = false; ///< mark and display watts were asked for
    QLineEdit *time_edit_, *gauge_edit_, *register_edit_, *second_register_edit_, *watts_edit_, *display_edit_, *remark_edit_;
    QComboBox* mark_combo_;
    QToolButton* more_button_;
    QPushButton* record_button_;
    QWidget* extras_; ///< mark and display watts
    QHBoxLayout *first_line_ = nullptr, *second_line_ = nullptr;
    QLabel* message_label_;
    QuestionBar* question_bar_;
    EntryFlow* flow_;
    WaitingPhotos* photos_;
};

} // namespace ullage
