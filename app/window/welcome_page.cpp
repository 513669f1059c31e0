// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/welcome_page.h"

#include "pages/parts/page_parts.h"
#include "style/icons.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"
#include "style/wrapped_label.h"

#include <QDir>
#include <QEvent>
#include <QFileInfo>
#include <QFrame>
#include <QHBoxLayout>
#include <QIcon>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr int widest_letters = 150, door_letters = 27, path_letters = 96; ///< mean ones of the text
constexpr double head_picture_factor = 2.6, door_picture_factor = 1.5;    ///< of a line's height

/// An icon as high as the text around it is large.
class TextHighPicture final : public QWidget {
public:
    TextHighPicture(QIcon icon, double factor) : icon_(std::move(icon)), factor_(factor) { setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed); }

    [[nodiscard]] QSize sizeHint() const override {
        const int side_px = static_cast<int>(fontMetrics().height() * factor_);
        return {side_px, side_px};
    }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        icon_.paint(&painter, rect());
    }
    void changeEvent(QEvent* event) override {
        QWidget::changeEvent(event);
        if (event->type() == QEvent::FontChange) updateGeometry();
    }

private:
    QIcon icon_;
    double factor_;
};

QLabel* wrapped(const QString& text, Tone tone, TextSize size = TextSize::body) {
    auto* label = new WrappedLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    set_text_style(*label, tone, size);
    return label;
}

/// Below the person's own folder as people write it.
QString short_path(const QString& path) {
    const QString home = QDir::homePath();
    return shown_path(path.startsWith(home + QLatin1Char('/')) ? QLatin1Char('~') + path.mid(home.size()) : path);
}

} // namespace

WelcomePage::WelcomePage(QWidget* parent)
    : QWidget(parent), lead_(wrapped({}, Tone::soft)), middle_(new QWidget), doors_(new QHBoxLayout), recent_(new QWidget),
      recent_list_(new QVBoxLayout(recent_)) {
    setObjectName(QStringLiteral("welcomePage"));
    lead_->setObjectName(QStringLiteral("leadLabel"));
    doors_->setSpacing(spacing::page_margin_px);
    const Door sample = makeDoor(glyph_icon(Glyph::chart, GlyphTone::accent), tr("Open the sample"),
                                 tr("A finished logbook of invented units. Look round and change what you like: it is a copy of your own."));
    sample_ = sample.card;
    addButton(*sample.buttons, "sampleLogbookButton", tr("Open the sample logbook"), When::always, &WelcomePage::sampleLogbookAsked);
    const Door guide =
        makeDoor(glyph_icon(Glyph::run, GlyphTone::accent), tr("Guided first run"),
                 tr("One test from the unit to its result, in the forms that you will use. The guide says the next step, and you may leave "
                    "it at any time."));
    guide_ = guide.card;
    addButton(*guide.buttons, "guideButton", tr("Begin the guided run"), When::always, &WelcomePage::guideAsked);
    const Door first = makeDoor(glyph_icon(Glyph::unit, GlyphTone::accent), tr("Begin yourself"),
                                tr("Write down what the maker claims of the unit, and what the meter's data sheet says of its error."));
    first_ = first.card;
    addButton(*first.buttons, "addUnitButton", tr("Add unit"), When::always, &WelcomePage::addUnitAsked);
    addButton(*first.buttons, "addMeterButton", tr("Add meter"), When::always, &WelcomePage::addMeterAsked);
    const Door own =
        makeDoor(glyph_icon(Glyph::import_in, GlyphTone::accent), tr("Bring your own table"),
                 tr("Notes in a spreadsheet, a CSV file or copied cells. You see how each column is understood before anything is kept."));
    own_ = own.card;
    addButton(*own.buttons, "ownTableButton", tr("Choose a table"), When::always, &WelcomePage::tableAsked);
    addButton(*own.buttons, "importSheetButton", tr("Import run sheet"), When::with_logbook, &WelcomePage::importAsked);

    auto* recent_head = new QLabel(tr("Lately open"));
    set_text_style(*recent_head, Tone::soft, TextSize::group);
    recent_list_->setContentsMargins(0, 0, 0, 0);
    recent_list_->setSpacing(0);
    recent_list_->addWidget(recent_head);

    auto* column = new QVBoxLayout(middle_);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::group_gap_px);
    column->addWidget(makeHead());
    column->addLayout(doors_);
    column->addWidget(other_ways_ = makeOtherWays());
    column->addWidget(recent_);
    auto* content = new QWidget;
    auto* across = new QHBoxLayout;
    across->addStretch(1);
    across->addWidget(middle_, 100);
    across->addStretch(1);
    auto* page = new QVBoxLayout(content);
    page->setContentsMargins(spacing::group_gap_px, spacing::page_margin_px, spacing::group_gap_px, spacing::page_margin_px);
    page->addStretch(1);
    page->addLayout(across);
    page->addStretch(2);
    auto* area = scrolling(*content, this);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(area);
    setLogbookOpen(false);
    setRecentFiles({});
    arrange();
}

QWidget* WelcomePage::makeHead() {
    auto* head = new QWidget;
    auto* title = new QLabel(tr("Ullage"));
    set_text_style(*title, Tone::ink, TextSize::figure);
    auto* words = new QVBoxLayout;
    words->setSpacing(spacing::half_px);
    words->addWidget(title);
    words->addWidget(lead_);
    auto* line = new QHBoxLayout(head);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(spacing::page_margin_px);
    line->addWidget(new TextHighPicture(QIcon(QStringLiteral(":/ullage/desktop/ullage.svg")), head_picture_factor), 0, Qt::AlignTop);
    line->addLayout(words, 1);
    return head;
}

WelcomePage::Door WelcomePage::makeDoor(const QIcon& picture, const QString& title, const QString& words) {
    auto* card = new QFrame;
    make_panel(*card);
    auto* head = new QHBoxLayout;
    head->setSpacing(spacing::grid_px);
    head->addWidget(new TextHighPicture(picture, door_picture_factor), 0, Qt::AlignTop);
    head->addWidget(wrapped(title, Tone::ink, TextSize::title), 1);
    auto* buttons = new QVBoxLayout;
    buttons->setSpacing(spacing::grid_px);
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(spacing::page_margin_px, spacing::page_margin_px, spacing::page_margin_px, spacing::page_margin_px);
    column->setSpacing(spacing::grid_px);
    column->addLayout(head);
    column->addWidget(wrapped(words, Tone::soft));
    column->addSpacing(spacing::grid_px);
    column->addStretch();
    column->addLayout(buttons);
    doors_->addWidget(card, 1);
    return {card, buttons};
}

QPushButton* WelcomePage::addButton(QBoxLayout& line, const char* name, const QString& text, When when, void (WelcomePage::*asked)()) {
    auto* made = new_button(name, text);
    connect(made, &QPushButton::clicked, this, asked);
    if (when == When::with_logbook) with_logbook_.append(made);
    if (when == When::without_logbook) without_logbook_.append(made);
    line.addWidget(made);
    return made;
}

QWidget* WelcomePage::makeOtherWays() {
    auto* box = new QWidget;
    auto* steps =
        wrapped(tr("The job in three steps: 1. Add the unit and the meter. 2. Start a run and note readings. 3. Read the usable fraction and "
                   "compare."),
                Tone::soft);
    steps->setObjectName(QStringLiteral("stepsLabel"));
    auto* line = new QHBoxLayout;
    line->setSpacing(spacing::grid_px);
    addButton(*line, "newLogbookButton", tr("New logbook"), When::without_logbook, &WelcomePage::newLogbookAsked);
    addButton(*line, "openLogbookButton", tr("Open logbook"), When::without_logbook, &WelcomePage::openLogbookAsked);
    line->addStretch();
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::page_margin_px);
    column->addLayout(line);
    column->addWidget(steps);
    return box;
}

void WelcomePage::setLogbookOpen(bool open) {
    open_ = open;
    for (auto* shown : without_logbook_) shown->setVisible(!open);
    for (auto* shown : with_logbook_) shown->setVisible(open);
    showDoors();
}

void WelcomePage::setGuideShown(bool shown) {
    guide_shown_ = shown;
    showDoors();
}

void WelcomePage::showDoors() {
    lead_->setText(!open_ ? tr("How much of the energy printed on a battery storage unit reaches the socket, how sure is that, "
                               "and can its gauge be trusted?")
                   : guide_shown_
                       ? tr("This logbook is empty. The guide above says the next step.")
                       : tr("This logbook is empty. Begin with the unit under test, be guided through a first run, or bring in a table that "
                            "you have."));
    sample_->setVisible(!open_);
    first_->setVisible(open_);
    guide_->setVisible(!guide_shown_);
    recent_->setVisible(!open_ && any_recent_);
    // What the page is for, with and without a logbook.
    for (QFrame* door : {sample_, first_}) make_primary(*door->findChild<QPushButton*>());
}

void WelcomePage::setRecentFiles(const QStringList& files) {
    while (recent_list_->count() > 1) {
        auto* item = recent_list_->takeAt(1);
        delete item->widget();
        delete item;
    }
    const int most_px = fontMetrics().averageCharWidth() * path_letters;
    for (const auto& file : files) {
        const QString words = QStringLiteral("%1   %2").arg(shown_path(QFileInfo(file).fileName()), short_path(QFileInfo(file).absolutePath()));
        auto* link = new_button("recentFileButton", fontMetrics().elidedText(words, Qt::ElideMiddle, most_px));
        link->setToolTip(shown_path(file));
        link->setAccessibleName(tr("open %1").arg(words));
        make_quiet(*link);
        connect(link, &QPushButton::clicked, this, [this, file] { emit recentFileAsked(file); });
        recent_list_->addWidget(link, 0, Qt::AlignLeft);
    }
    any_recent_ = !files.isEmpty();
    showDoors();
}

void WelcomePage::arrange() {
    const int letter_px = fontMetrics().averageCharWidth();
    middle_->setMaximumWidth(widest_letters * letter_px);
    const int room_px = std::min(width() - 2 * spacing::group_gap_px, widest_letters * letter_px);
    const bool beside = room_px >= 3 * door_letters * letter_px;
    doors_->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

void WelcomePage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void WelcomePage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) arrange();
}

} // namespace ullage
