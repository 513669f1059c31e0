// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace ullage {

/// Questions a doubtful entry inline, below the fields it is about: one sentence and an answer for each key. K keeps it as it
/// stands; C, or Escape, goes back to correct it; where the register fell, Z says that the meter was reset and W that
/// another meter took over. Takes the keyboard while it asks. Enter alone answers nothing: two hasty presses must not
/// record what was questioned.
class QuestionBar final : public QFrame {
    Q_OBJECT
public:
    enum class Answer { keep, correct, zeroed, swapped };

    explicit QuestionBar(QWidget* parent = nullptr);

    /// Shows the question and takes the focus. `register_fell` offers Z and W.
    void ask(const QString& question, bool register_fell);
    /// Hides the bar without an answer.
    void drop();
    [[nodiscard]] QString question() const;

signals:
    void answered(ullage::QuestionBar::Answer answer);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QPushButton* addAnswer(const QString& words, const char* name, Answer answer);
    void give(Answer answer);

    QLabel* question_label_;
    QPushButton* zeroed_button_ = nullptr;
    QPushButton* swapped_button_ = nullptr;
};

} // namespace ullage
