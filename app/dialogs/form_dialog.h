// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <QDialog>
#include <QString>
#include <QStringList>

#include <functional>
#include <optional>
#include <string_view>
#include <vector>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QScrollArea;
class QTabWidget;
class QVBoxLayout;

namespace ullage {

/// A form that returns values and never touches the store. On submitted() the caller stores the form's values and then
/// accepts the form, or calls refuse(), which keeps it open with the store's words. A field that cannot be understood is
/// explained in place, beneath it, before anything is submitted.
class FormDialog : public QDialog {
    Q_OBJECT
public:
    ~FormDialog() override;

    /// Shows a sentence at the form's head; the form stays open.
    void refuse(const QString& sentence);
    /// Asks whether that is right, each doubt a clause; true where there is none, or where the same was asked before, so that submitting again has
    /// answered it.
    [[nodiscard]] bool confirmed(const QStringList& doubts);

signals:
    /// Every field has been understood; the values wait to be stored.
    void submitted();

protected:
    using Parser = std::function<Result<double>(std::string_view)>;

    FormDialog(const QString& title, const QString& verb, QWidget* parent);

    /// A line of text with its label as buddy. `name` is the object name without its kind: "price" gives "priceEdit".
    QLineEdit* addLine(const QString& name, const QString& label, const QString& placeholder = {});
    QComboBox* addChoice(const QString& name, const QString& label);
    /// One field of several that share a line.
    struct GroupedLine {
        QString name, title, placeholder;
    };
    /// Fields side by side, each below its small title, in one line of the form; what is wrong with any of them is explained below all.
    std::vector<QLineEdit*> addLineGroup(const QString& name, const QString& label, const std::vector<GroupedLine>& lines);
    /// A widget of the caller's own with a label, beneath which explain() has its place.
    void addField(const QString& name, const QString& label, QWidget* field);
    /// A widget over the full width.
    void addWide(QWidget* widget);
    /// What is added after this stands in a tab of this title, beside those of the tabs before; called before anything else is added.
    void addTab(const QString& title);
    /// A small grey head above a group of fields.
    void addGroup(const QString& title);
    /// All that is added after this is hidden until its button *More* is pressed, or something there is wrong. `words` say what it shows.
    void addMore(const QString& words);
    void showMore(); ///< as the button
    /// A paragraph over the full width, below the fields.
    QLabel* addParagraph(const QString& name, const QString& rich_text);

    /// The number in a field; absent when the field is empty. A text that `parse` refuses is explained beneath the field
    /// and makes the form wait.
    [[nodiscard]] std::optional<double> number(QLineEdit* field, const Parser& parse);
    /// The text in a field without blanks around it; an empty one is explained with `what_is_missing` unless that is empty.
    [[nodiscard]] std::string text(QLineEdit* field, const QString& what_is_missing = {});
    void explain(QWidget* field, const QString& sentence);

    void showEvent(QShowEvent* event) override;
    bool event(QEvent* event) override;
    bool focusNextPrevChild(bool next) override; ///< as the form is read
    /// Reads every field into the form's value, explaining those that cannot be understood.
    virtual void read() = 0;
    /// Shows the line of a field, or takes it away with its label.
    void setLineShown(QWidget* field, bool shown);
    void unask();       ///< takes the question of confirmed() back: what it was about has changed
    void clearErrors(); ///< takes back what refuse() and explain() said
    void fit();         ///< grows to what the fields need, as far as the screen allows

private:
    struct Place {
        QWidget* field;
        QLabel* error_label;
    };
    QLabel* place(QWidget* field, const QString& name, const QString& label);
    QScrollArea* makePart(); ///< what scrolls where there is no room; rows are added to it from now on
    void submit();
    /// Of the parts, for words that do not break; with or without the hints of fields that stand side by side.
    [[nodiscard]] int leastWidth(bool with_hints);

    QVBoxLayout* outer_;
    QFormLayout *fields_ = nullptr, *rows_ = nullptr; ///< of the form or its last tab, and the one that rows are added to: that of what *More* shows
    std::vector<QLineEdit*> side_by_side_;            ///< fields of addLineGroup()
    std::vector<QScrollArea*> parts_;                 ///< the form itself, or its tabs
    QTabWidget* tabs_ = nullptr;
    QLabel *refusal_, *question_;
    QStringList asked_;
    QString verb_;
    QPushButton* submit_button_;
    QPushButton* more_button_ = nullptr;
    QWidget* more_box_ = nullptr; ///< what the button shows
    std::vector<Place> places_;
    QWidget* first_wrong_ = nullptr;
    bool painted_ = false;
};

} // namespace ullage
