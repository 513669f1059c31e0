// SPDX-License-Identifier: GPL-3.0-or-later
// How the entry row is put together and fits its width.
#include "pages/run/entry_row.h"

#include "pages/run/waiting_photos.h"
#include "style/reading_order.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"
#include "style/words.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

namespace ullage {

namespace {

constexpr int remark_characters = 20; ///< that stay in sight beside an unfolded mark chooser

} // namespace

void EntryRow::buildFields() {
    time_edit_ = addField("timeEdit", {}, tr("Time of the reading"), tr("Empty for now; else 02:40, -10m, yesterday 23:50, 14 May 23:50"));
    gauge_edit_ = addField("gaugeEdit", tr("gauge"), tr("Gauge in percent"), tr("What the unit's own gauge shows: 69 or 69 %"));
    register_edit_ =
        addField("registerEdit", tr("register"), tr("Register in watt hours"), tr("What the meter's register shows: 431, 431 Wh or 0.431 kWh"));
    second_register_edit_ =
        addField("secondRegisterEdit", tr("second"), tr("Second register in watt hours"), tr("What the register of the second meter shows"));
    watts_edit_ = addField("wattsEdit", tr("watts"), tr("Meter power in watts"), tr("What the meter shows: 64 or 0.064 kW"));
    display_edit_ = addField("displayWattsEdit", tr("display W"), tr("Power on the unit's display in watts"),
                             tr("What the unit's own display shows: 64 or 0.064 kW"));
    remark_edit_ = addField("remarkEdit", tr("remark"), tr("Remark"), tr("Anything worth keeping with this reading"));
    mark_combo_->setObjectName(QStringLiteral("markCombo"));
    mark_combo_->setAccessibleName(tr("Mark"));
    mark_combo_->setAccessibleDescription(mark_combo_->accessibleName()); // of a choice without a label the tree tells what is chosen as its name
    mark_combo_->setToolTip(tr("An event at this moment; a register typed beside it was read after it"));
    mark_combo_->addItem(tr("no mark"));
    for (const MarkKind mark : all_mark_kinds) mark_combo_->addItem(text_of(say_mark(mark)), static_cast<int>(mark));
    mark_combo_->installEventFilter(this);
    connect(mark_combo_, &QComboBox::currentIndexChanged, this, &EntryRow::edited);
    more_button_->setObjectName(QStringLiteral("moreButton"));
    more_button_->setText(QStringLiteral("+"));
    more_button_->setAccessibleName(tr("Mark and display watts"));
    more_button_->setToolTip(tr("Mark and display watts"));
    more_button_->setCheckable(true);
    more_button_->setFixedWidth(fontMetrics().horizontalAdvance(QLatin1Char('+')) + 18);
    more_button_->setFocusPolicy(Qt::NoFocus); // the Mark action unfolds by keyboard, and Tab must reach Record quickly
    make_quiet(*more_button_);
    connect(more_button_, &QToolButton::clicked, this, &EntryRow::setUnfolded);
    record_button_->setObjectName(QStringLiteral("recordButton"));
    record_button_->setAutoDefault(false);
    record_button_->installEventFilter(this);
    make_primary(*record_button_);
    connect(record_button_, &QPushButton::clicked, this, &EntryRow::record);
    message_label_->setObjectName(QStringLiteral("entryMessageLabel"));
    message_label_->setWordWrap(true);
    message_label_->setTextFormat(Qt::PlainText);
    message_label_->hide();
    connect(flow_, &EntryFlow::refused, this, [this](const QString& sentence, EntryField field) { showMessage(sentence, widgetOf(field)); });
    connect(flow_, &EntryFlow::failed, this, [this](const QString& sentence) {
        showMessage(sentence);
        focusGauge();
    });
    connect(flow_, &EntryFlow::asked, this, &EntryRow::keepDraft);
    connect(flow_, &EntryFlow::correctionAsked, this, &EntryRow::focusField);
    connect(flow_, &EntryFlow::recorded, this, [this](const ReadingId& reading) {
        clear();
        emit recorded(reading);
    });
    connect(photos_, &WaitingPhotos::timeTaken, this, &EntryRow::takeTime);
    connect(photos_, &WaitingPhotos::error, this, [this](const QString& sentence) { showMessage(sentence); });
}

QLineEdit* EntryRow::addField(const char* name, const QString& placeholder, const QString& label, const QString& hint) {
    auto* field = new QLineEdit(this);
    field->setObjectName(QLatin1String(name));
    field->setPlaceholderText(placeholder);
    field->setAccessibleName(label);
    field->setToolTip(hint);
    field->installEventFilter(this);
    connect(field, &QLineEdit::textChanged, this, &EntryRow::edited);
    return field;
}

void EntryRow::buildRows() {
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(spacing::grid_px, spacing::grid_px + 2, spacing::grid_px, spacing::grid_px);
    rows->setSpacing(6);
    first_line_ = new QHBoxLayout;
    first_line_->setSpacing(6);
    for (QWidget* widget : {static_cast<QWidget*>(time_edit_), static_cast<QWidget*>(gauge_edit_), static_cast<QWidget*>(register_edit_),
                            static_cast<QWidget*>(second_register_edit_), static_cast<QWidget*>(watts_edit_)})
        first_line_->addWidget(widget);
    first_line_->addWidget(remark_edit_, 1);
    first_line_->addWidget(more_button_);
    first_line_->addWidget(record_button_);
    rows->addLayout(first_line_);
    auto* extras = new QHBoxLayout(extras_);
    extras->setContentsMargins(0, 0, 0, 0);
    extras->setSpacing(6);
    extras->addWidget(mark_combo_);
    extras->addWidget(display_edit_);
    second_line_ = new QHBoxLayout;
    second_line_->addWidget(extras_);
    second_line_->addStretch();
    rows->addLayout(second_line_);
    rows->addWidget(photos_);
    rows->addWidget(message_label_);
    rows->addWidget(question_bar_);
    fitWidths();
    arrange();
}

void EntryRow::orderTabs() {
    QWidget* const order[] = {time_edit_,  gauge_edit_,   register_edit_, second_register_edit_, watts_edit_,
                              mark_combo_, display_edit_, remark_edit_,   record_button_};
    for (std::size_t i = 1; i < std::size(order); ++i) setTabOrder(order[i - 1], order[i]);
    keep_tab_order(*this);
    setFocusProxy(gauge_edit_);
}

void EntryRow::fitWidths() {
    const QFontMetrics metrics(font());
    const int frame_px = 18;
    const auto fit = [&](QLineEdit* field, const char* sample) { field->setFixedWidth(metrics.horizontalAdvance(QLatin1String(sample)) + frame_px); };
    fit(time_edit_, "00:00 x");
    fit(gauge_edit_, "gauge ");
    fit(register_edit_, "00000.00");
    fit(second_register_edit_, "00000.00");
    fit(watts_edit_, "0000 W");
    fit(display_edit_, "display W ");
    remark_edit_->setMinimumWidth(metrics.horizontalAdvance(QLatin1String("remark")) + frame_px);
    set_text_style(*message_label_, Tone::fault, TextSize::caption);
}

int EntryRow::inlineWidth() const {
    const QMargins margins = layout()->contentsMargins();
    int wanted = margins.left() + margins.right();
    const QWidget* const fixed[] = {time_edit_, gauge_edit_, register_edit_, second_register_edit_, watts_edit_};
    for (const QWidget* widget : fixed)
        if (!widget->isHidden()) wanted += widget->minimumWidth() + first_line_->spacing();
    for (const QWidget* widget : {static_cast<QWidget*>(extras_), static_cast<QWidget*>(record_button_)})
        wanted += widget->sizeHint().width() + first_line_->spacing();
    return wanted + QFontMetrics(font()).averageCharWidth() * remark_characters;
}

void EntryRow::arrange() {
    const bool wide = width() >= inlineWidth();
    const bool inline_now = first_line_->indexOf(extras_) >= 0;
    if (wide && !inline_now) {
        second_line_->removeWidget(extras_);
        first_line_->insertWidget(first_line_->indexOf(remark_edit_), extras_);
    } else if (!wide && inline_now) {
        first_line_->removeWidget(extras_);
        second_line_->insertWidget(0, extras_);
    }
    more_button_->setVisible(!wide);
    extras_->setVisible(wide || unfolded_);
}

void EntryRow::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void EntryRow::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    const bool text_changed = event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange;
    if (text_changed && layout() != nullptr) {
        fitWidths();
        arrange();
    }
}

void EntryRow::paintEvent(QPaintEvent*) { QPainter(this).fillRect(0, 0, width(), 2, current_palette().accent); }

void EntryRow::setUnfolded(bool unfolded) {
    // What holds a value stays in sight.
    unfolded_ = unfolded || mark_combo_->currentIndex() > 0 || !display_edit_->text().isEmpty();
    more_button_->setChecked(unfolded_);
    arrange();
}

} // namespace ullage
