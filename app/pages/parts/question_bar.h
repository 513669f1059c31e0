// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

class QHBoxLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace ullage {

/// Questions a doubtful entry inline, below the fields it is about: one sentence and an answer for each key. K keeps it as it
/// stands; C, or Escape, goes back to correct it; where the register fell, Z says that the meter was reset and W that
/// another meter took over. Takes the keyboard while it asks. Enter alone answers nothing: two hasty presses must not
/// record what was questioned. After Z it may ask for the value before, in a field: there Enter takes what is typed, N or an empty field says that
/// it is not known.
class QuestionBar final : public QFrame {
    Q_OBJECT
public:
    enum class Answer { keep, correct, zeroed, swapped, mended };

    explicit QuestionBar(QWidget* parent = nullptr);

    /// Shows the question and takes the focus. `register_fell` offers Z and W; `mended` offers with M what was probably meant, such as "431 Wh".
    void ask(const QString& question, bool register_fell, const QString& mended = {});
    /// Asks for a value instead: what the register showed just before.
    void askValue(const QString& question);
    /// Says what is wrong with the value, and goes on asking.
    void refuseValue(const QString& sentence);
    /// Hides the bar without an answer.
    void drop();
    [[nodiscard]] QString question() const;

signals:
    void answered(ullage::QuestionBar::Answer answer);
    void valueGiven(const QString& text); ///< as typed; empty where it is not known

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QPushButton* addAnswer(const QString& words, const char* name, Answer answer);
    void give(Answer answer);

    void buildValueLine();
    void show(bool value_asked);

    QLabel* question_label_;
    QWidget *answers_, *value_line_;
    QLineEdit* value_edit_ = nullptr;
    QPushButton* zeroed_button_ = nullptr;
    QPushButton* swapped_button_ = nullptr;
    QPushButton* mended_button_ = nullptr;
};

} // namespace ullage
