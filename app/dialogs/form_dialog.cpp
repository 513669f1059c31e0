// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/form_dialog.h"

#include "base/number.h"
#include "style/clauses.h"
#include "style/reading_order.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/spoken_areas.h"
#include "style/words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QTabWidget>
#include <QTimer>
#include <QVBoxLayout>

#include <utility>

namespace ullage {

namespace {

/// What describes a field with which nothing is wrong. The tree calls a choice by what is chosen, and finds no label outside its box.
QString described(const QWidget& field) { return qobject_cast<const QComboBox*>(&field) ? field.accessibleName() : QString(); }

constexpr int narrowest_px = 460;
constexpr int narrowest_letters = 66; ///< the same at larger text

} // namespace

FormDialog::FormDialog(const QString& title, const QString& verb, QWidget* parent)
    : QDialog(parent), outer_(new QVBoxLayout(this)), refusal_(new QLabel), question_(new QLabel), verb_(verb),
      submit_button_(new QPushButton(verb)) {
    setWindowTitle(title);
    setModal(true);
    setAttribute(Qt::WA_DeleteOnClose);
    outer_->setContentsMargins(spacing::group_gap_px, spacing::page_margin_px, spacing::group_gap_px, spacing::page_margin_px);
    outer_->setSpacing(spacing::page_margin_px);

    auto* head = new QLabel(title);
    set_text_style(*head, Tone::ink, TextSize::title);
    outer_->addWidget(head);

    refusal_->setObjectName(QStringLiteral("refusalLabel"));
    refusal_->setWordWrap(true);
    set_text_style(*refusal_, Tone::fault);
    refusal_->hide();
    outer_->addWidget(refusal_);

    outer_->addWidget(makePart(), 1);

    question_->setObjectName(QStringLiteral("formQuestionLabel"));
    question_->setWordWrap(true);
    question_->setTextFormat(Qt::PlainText);
    set_text_style(*question_, Tone::fault);
    question_->hide();
    outer_->addWidget(question_);

    auto* cancel = new QPushButton(tr("Cancel"));
    cancel->setObjectName(QStringLiteral("cancelButton"));
    cancel->setAutoDefault(false);
    submit_button_->setObjectName(QStringLiteral("submitButton"));
    submit_button_->setDefault(true);
    make_primary(*submit_button_);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch();
    buttons->addWidget(cancel);
    buttons->addWidget(submit_button_);
    outer_->addLayout(buttons);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    // And nobody gives it back.
    if (parent != nullptr) connect(this, &QDialog::finished, parent->window(), &QWidget::activateWindow, Qt::QueuedConnection);
    connect(submit_button_, &QPushButton::clicked, this, &FormDialog::submit);
    setMinimumWidth(qMax(narrowest_px, fontMetrics().averageCharWidth() * narrowest_letters));
}

QScrollArea* FormDialog::makePart() {
    fields_ = rows_ = new QFormLayout;
    fields_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    fields_->setLabelAlignment(Qt::AlignLeft);
    fields_->setHorizontalSpacing(spacing::page_margin_px);
    fields_->setVerticalSpacing(spacing::grid_px);
    // A form taller than the screen scrolls; head and buttons stay in sight.
    auto* content = new QWidget;
    content->setLayout(fields_);
    content->setProperty("page", true);
    fields_->setContentsMargins(0, 0, spacing::grid_px, 0);
    speak_scroll_areas();
    auto* part = new QScrollArea;
    part->setObjectName(QStringLiteral("fieldsScroll"));
    part->setAccessibleName(windowTitle());
    part->setWidgetResizable(true);
    part->setFrameShape(QFrame::NoFrame);
    part->setFocusPolicy(Qt::NoFocus);
    part->setWidget(content);
    parts_.push_back(part);
    return part;
}

void FormDialog::addTab(const QString& title) {
    if (tabs_ == nullptr) {
        tabs_ = new QTabWidget;
        tabs_->setObjectName(QStringLiteral("formTabs"));
        tabs_->setAccessibleName(windowTitle());
        QScrollArea* whole = parts_.front();
        parts_.clear();
        delete outer_->replaceWidget(whole, tabs_);
        delete whole;
        // A choice takes these keys for letters, so the tabs do not see them.
        const auto turn = [this](QKeySequence::StandardKey keys, int by) {
            auto* shortcut = new QShortcut(QKeySequence(keys), this);
            connect(shortcut, &QShortcut::activated, tabs_,
                    [this, by] { tabs_->setCurrentIndex((tabs_->currentIndex() + by + tabs_->count()) % tabs_->count()); });
        };
        turn(QKeySequence::NextChild, 1);
        turn(QKeySequence::PreviousChild, -1);
    }
    QScrollArea* part = makePart();
    part->setAccessibleName(title);
    tabs_->addTab(part, title);
    fields_->setContentsMargins(0, spacing::panel_gap_px, spacing::grid_px, 0);
}

/// A field that loses the focus as the dialog goes has finished editing, when there is no form left to look at it.
FormDialog::~FormDialog() {
    for (QLineEdit* edit : findChildren<QLineEdit*>()) edit->disconnect(this);
}

void FormDialog::showEvent(QShowEvent* event) {
    fit();
    QDialog::showEvent(event);
}

bool FormDialog::event(QEvent* event) {
    // Without a window manager nobody else gives the keyboard to a form that opens. It can have it once it stands there.
    if (event->type() == QEvent::Paint && !std::exchange(painted_, true) && !isActiveWindow()) QTimer::singleShot(0, this, &QWidget::activateWindow);
    return QDialog::event(event);
}

bool FormDialog::focusNextPrevChild(bool next) { return move_as_read(*this, next) || QDialog::focusNextPrevChild(next); }

int FormDialog::leastWidth(bool with_hints) {
    constexpr int sides_letters = 4; // what a field keeps free beside its text
    for (QLineEdit* edit : side_by_side_) {
        const QFontMetrics letters = edit->fontMetrics();
        edit->setMinimumWidth(with_hints ? letters.horizontalAdvance(edit->placeholderText()) + sides_letters * letters.averageCharWidth() : 0);
    }
    int least_px = 0;
    for (const QScrollArea* part : parts_) {
        part->widget()->ensurePolished();
        part->widget()->layout()->activate();
        least_px = qMax(least_px, part->widget()->minimumSizeHint().width() + part->verticalScrollBar()->sizeHint().width());
    }
    return least_px;
}

void FormDialog::fit() {
    const QSize most_px = screen() ? screen()->availableGeometry().size() * 9 / 10 : QSize(1150, 700);
    const auto margins = outer_->contentsMargins();
    const int beside_px = margins.left() + margins.right();
    int least_px = leastWidth(true);
    if (least_px + beside_px > most_px.width()) least_px = leastWidth(false);
    const int wide_px = qMin(qMax(width(), least_px + beside_px), qMax(width(), most_px.width()));
    int fields_px = 0;
    for (QScrollArea* part : parts_) {
        const QLayout& rows = *part->widget()->layout();
        // A form without a line that breaks has no height for a width.
        fields_px = qMax(fields_px, rows.hasHeightForWidth() ? rows.heightForWidth(wide_px - beside_px) : rows.sizeHint().height());
        part->setHorizontalScrollBarPolicy(least_px + beside_px > wide_px ? Qt::ScrollBarAsNeeded : Qt::ScrollBarAlwaysOff);
    }
    const int chrome_px = outer_->minimumSize().height() - parts_.front()->minimumSizeHint().height();
    resize(wide_px, qMin(qMax(height(), fields_px + chrome_px), most_px.height()));
}

void FormDialog::refuse(const QString& sentence) {
    refusal_->setText(sentence);
    refusal_->show();
    fit();
}

bool FormDialog::confirmed(const QStringList& doubts) {
    if (doubts.isEmpty() || doubts == asked_) return true;
    asked_ = doubts;
    QString question = joined_clauses(doubts);
    question[0] = question[0].toUpper();
    question_->setText(question + tr(". Is that right? Change a field, or go on all the same."));
    question_->setAccessibleName(question_->text());
    question_->show();
    submit_button_->setText(tr("%1 all the same").arg(verb_));
    fit();
    return false;
}

void FormDialog::unask() {
    asked_.clear();
    question_->hide();
    submit_button_->setText(verb_);
}

void FormDialog::clearErrors() {
    first_wrong_ = nullptr;
    refusal_->hide();
    for (const auto& known : places_) {
        known.error_label->hide();
        set_wrong(*known.field, false);
        known.field->setAccessibleDescription(described(*known.field));
    }
}

QLabel* FormDialog::place(QWidget* field, const QString& name, const QString& label) {
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    auto* error_label = new QLabel;
    error_label->setObjectName(name + QStringLiteral("ErrorLabel"));
    error_label->setWordWrap(true);
    set_text_style(*error_label, Tone::fault, TextSize::caption);
    error_label->hide();
    column->addWidget(field);
    column->addWidget(error_label);
    auto* words = new QLabel(label);
    words->setBuddy(field);
    rows_->addRow(words, box);
    field->setAccessibleName(label.toLower().remove(QLatin1Char('&')));
    field->setAccessibleDescription(described(*field));
    places_.push_back({field, error_label});
    return words;
}

QLineEdit* FormDialog::addLine(const QString& name, const QString& label, const QString& placeholder) {
    auto* edit = new QLineEdit;
    edit->setObjectName(name + QStringLiteral("Edit"));
    edit->setPlaceholderText(placeholder);
    place(edit, name, label);
    return edit;
}

QComboBox* FormDialog::addChoice(const QString& name, const QString& label) {
    auto* combo = new QComboBox;
    combo->setObjectName(name + QStringLiteral("Combo"));
    // A long choice must not push the form beyond its window.
    combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    place(combo, name, label);
    return combo;
}

std::vector<QLineEdit*> FormDialog::addLineGroup(const QString& name, const QString& label, const std::vector<GroupedLine>& lines) {
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    auto* line = new QHBoxLayout;
    line->setSpacing(spacing::grid_px);
    column->addLayout(line);
    auto* error_label = new QLabel;
    error_label->setObjectName(name + QStringLiteral("ErrorLabel"));
    error_label->setWordWrap(true);
    set_text_style(*error_label, Tone::fault, TextSize::caption);
    error_label->hide();
    column->addWidget(error_label);
    std::vector<QLineEdit*> edits;
    for (const auto& each : lines) {
        auto* title = new QLabel(each.title);
        title->setWordWrap(true);
        set_text_style(*title, Tone::soft, TextSize::caption);
        auto* edit = new QLineEdit;
        edit->setObjectName(each.name + QStringLiteral("Edit"));
        edit->setPlaceholderText(each.placeholder);
        edit->setAccessibleName(QStringLiteral("%1, %2").arg(QString(label).toLower().remove(QLatin1Char('&')), each.title));
        auto* cell = new QVBoxLayout;
        cell->setSpacing(2);
        cell->addStretch();
        cell->addWidget(title);
        cell->addWidget(edit);
        line->addLayout(cell, 1);
        places_.push_back({edit, error_label});
        edits.push_back(edit);
        side_by_side_.push_back(edit);
    }
    auto* words = new QLabel(label);
    words->setWordWrap(true);
    if (!edits.empty()) words->setBuddy(edits.front());
    rows_->addRow(words, box);
    return edits;
}

void FormDialog::setLineShown(QWidget* field, bool shown) {
    QWidget* box = field->parentWidget();
    static_cast<QFormLayout*>(box->parentWidget()->layout())->setRowVisible(box, shown);
}

void FormDialog::addField(const QString& name, const QString& label, QWidget* field) { place(field, name, label); }

void FormDialog::addWide(QWidget* widget) { rows_->addRow(widget); }

void FormDialog::addGroup(const QString& title) {
    auto* head = new QLabel(title);
    set_text_style(*head, Tone::soft, TextSize::group);
    head->setContentsMargins(0, spacing::grid_px, 0, 0);
    rows_->addRow(head);
}

void FormDialog::addMore(const QString& words) {
    more_button_ = new QPushButton(tr("More…"));
    more_button_->setToolTip(words);
    more_button_->setAccessibleDescription(words);
    more_button_->setObjectName(QStringLiteral("moreFieldsButton"));
    more_button_->setAutoDefault(false);
    connect(more_button_, &QPushButton::clicked, this, &FormDialog::showMore);
    auto* line = new QHBoxLayout;
    line->addWidget(more_button_);
    line->addStretch();
    fields_->addRow(line);
    // A part of its own: rows of a form that come and go one by one are laid out half changed.
    more_box_ = new QWidget;
    rows_ = new QFormLayout(more_box_);
    rows_->setContentsMargins(0, 0, 0, 0);
    rows_->setFieldGrowthPolicy(fields_->fieldGrowthPolicy());
    rows_->setLabelAlignment(fields_->labelAlignment());
    rows_->setHorizontalSpacing(fields_->horizontalSpacing());
    rows_->setVerticalSpacing(fields_->verticalSpacing());
    fields_->addRow(more_box_);
    more_box_->hide();
}

void FormDialog::showMore() {
    if (more_box_ == nullptr || !more_box_->isHidden()) return;
    more_box_->show();
    more_button_->hide(); // the keyboard goes on to the first field
    fit();
}

QLabel* FormDialog::addParagraph(const QString& name, const QString& rich_text) {
    auto* words = new QLabel(rich_text);
    words->setObjectName(name + QStringLiteral("Label"));
    words->setTextFormat(Qt::RichText);
    words->setWordWrap(true);
    set_text_style(*words, Tone::soft, TextSize::caption);
    rows_->addRow(words);
    return words;
}

std::optional<double> FormDialog::number(QLineEdit* field, const Parser& parse) {
    const auto typed = field->text().trimmed();
    if (typed.isEmpty()) return std::nullopt;
    const auto parsed = parse(utf8_of(typed));
    if (parsed) return parsed.value();
    explain(field, text_of(parsed.error().sentence()));
    return std::nullopt;
}

std::string FormDialog::text(QLineEdit* field, const QString& what_is_missing) {
    const auto typed = field->text().trimmed();
    if (typed.isEmpty() && !what_is_missing.isEmpty()) explain(field, what_is_missing);
    return utf8_of(typed);
}

void FormDialog::explain(QWidget* field, const QString& sentence) {
    for (const auto& known : places_) {
        if (known.field != field) continue;
        // Fields of one line share the label; what was said about another of them stays.
        known.error_label->setText(known.error_label->isHidden() ? sentence : known.error_label->text() + QLatin1Char('\n') + sentence);
        known.error_label->show();
        set_wrong(*field, true);
        const QString what = described(*field);
        field->setAccessibleDescription(what.isEmpty() ? sentence : what + QStringLiteral(": ") + sentence);
        if (more_box_ != nullptr && more_box_->isAncestorOf(field)) showMore();
        if (!first_wrong_) first_wrong_ = field;
    }
}

void FormDialog::submit() {
    clearErrors();
    read();
    if (!first_wrong_) {
        emit submitted();
        return;
    }
    fit();
    for (QScrollArea* part : parts_) {
        if (!part->isAncestorOf(first_wrong_)) continue;
        if (tabs_ != nullptr) tabs_->setCurrentWidget(part);
        first_wrong_->setFocus();
        part->ensureWidgetVisible(first_wrong_);
    }
}

} // namespace ullage
