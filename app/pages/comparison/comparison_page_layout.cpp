// SPDX-License-Identifier: GPL-3.0-or-later
// How the comparison page is laid out.
#include "pages/comparison/comparison_page.h"

#include "charts/bar_chart.h"
#include "charts/line_chart.h"
#include "charts/vessel_row.h"
#include "formats/text/quantity_title.h"
#include "models/pairs_model.h"
#include "models/table_model.h"
#include "pages/comparison/answer_view.h"
#include "pages/comparison/comparing_bar.h"
#include "pages/comparison/comparison_choice.h"
#include "pages/comparison/models_view.h"
#include "pages/comparison/other_logbooks_line.h"
#include "pages/parts/late_tabs.h"
#include "pages/parts/page_head.h"
#include "pages/parts/page_parts.h"
#include "pages/parts/vessel_key.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QFrame>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>
#include <QTabWidget>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include <functional>
#include <utility>

namespace ullage {

namespace {

constexpr int key_width_px = 300;
constexpr int least_vessels_lines = 9, least_tabs_lines = 11; ///< of text; a page with less room scrolls
constexpr int many_rows = 200;                                ///< from which on what is typed may settle before the page follows
constexpr int settle_ms = 250;

/// Remarks and key: never less high than their lines, which a scroll area would not ask for.
class WordsColumn final : public QWidget {
public:
    using QWidget::QWidget;
    [[nodiscard]] QSize minimumSizeHint() const override { return {key_width_px, layout()->totalHeightForWidth(key_width_px)}; }
};

} // namespace

void ComparisonPage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::page_margin_px, spacing::page_margin_px - 2, spacing::page_margin_px, spacing::grid_px);
    column->setSpacing(spacing::grid_px + 2);
    column->addWidget(buildHead());
    // With large text the line is wider than a small screen: it scrolls rather than hold the window wide.
    QScrollArea* choice_area = scrolling(*choice_, this);
    choice_area->setObjectName(QStringLiteral("choiceArea"));
    choice_area->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    choice_area->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    connect(choice_area->horizontalScrollBar(), &QScrollBar::rangeChanged, choice_area, [this, choice_area](int, int most) {
        choice_area->setMinimumHeight(choice_->sizeHint().height() + (most > 0 ? choice_area->horizontalScrollBar()->sizeHint().height() : 0));
    });
    auto* content = new QWidget(this);
    auto* parts = new QVBoxLayout(content);
    parts->setContentsMargins(0, 0, 0, 0);
    parts->setSpacing(spacing::grid_px + 2);
    parts->addWidget(choice_area);
    // While a filter is being typed, very many rows need not follow each letter.
    refresh_timer_->setSingleShot(true);
    connect(refresh_timer_, &QTimer::timeout, this, &ComparisonPage::refresh);
    connect(choice_, &ComparisonChoice::changed, this, [this] {
        load_settled_ = true;
        stale_ = true;
        if (model_->rowCount() > many_rows) refresh_timer_->start(settle_ms);
        else refresh();
    });
    auto* others = new OtherLogbooksLine(comparer(), this);
    connect(others, &OtherLogbooksLine::removeAsked, this, [this](const QString& path) {
        comparer().removeLogbook(path);
        tellChosenLogbooks();
    });
    parts->addWidget(others);
    parts->addWidget(comparing_bar_);
    parts->addWidget(answer_);
    buildTable();
    auto* levels = new QSplitter(Qt::Vertical, this);
    levels->setObjectName(QStringLiteral("comparisonSplitter"));
    levels->setChildrenCollapsible(false);
    QWidget* vessels = buildVessels();
    levels->addWidget(vessels);
    QFrame* table_panel = new_panel(levels);
    auto* table_column = new QVBoxLayout(table_panel);
    table_column->setContentsMargins(1, 1, 1, 1);
    table_column->addWidget(table_);
    unknown_label_->setObjectName(QStringLiteral("unknownLabel"));
    unknown_label_->setWordWrap(true);
    unknown_label_->setTextFormat(Qt::PlainText);
    unknown_label_->setContentsMargins(spacing::grid_px, 0, spacing::grid_px, spacing::half_px);
    set_text_style(*unknown_label_, Tone::soft, TextSize::caption);
    table_column->addWidget(unknown_label_);
    levels->addWidget(table_panel);
    levels->addWidget(buildTabs());
    levels->setStretchFactor(0, 3);
    levels->setStretchFactor(1, 2);
    levels->setStretchFactor(2, 3);
    keep_lines(*vessels, least_vessels_lines);
    keep_lines(*tabs_, least_tabs_lines);
    parts->addWidget(levels, 1);
    column->addWidget(scrolling(*content, this), 1);
}

QWidget* ComparisonPage::buildHead() {
    auto* words = new QWidget(this);
    auto* words_line = new QHBoxLayout(words);
    words_line->setContentsMargins(0, 0, 0, 0);
    words_line->setSpacing(spacing::grid_px);
    auto* title = new QLabel(tr("Comparison"), words);
    set_text_style(*title, Tone::ink, TextSize::title);
    set_text_style(*about_label_, Tone::soft);
    about_label_->setObjectName(QStringLiteral("comparisonAboutLabel"));
    words_line->addWidget(title);
    words_line->addWidget(about_label_, 1);
    auto* buttons = new QWidget(this);
    auto* line = new QHBoxLayout(buttons);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(spacing::grid_px);
    auto* rows_label = new QLabel(tr("rows"), buttons);
    set_text_style(*rows_label, Tone::soft);
    line->addWidget(rows_label);
    const std::pair<CompareRows, QString> choices[] = {{CompareRows::one_per_unit, tr("one for each unit")},
                                                       {CompareRows::every_drain, tr("every drain")}};
    for (const auto& [rows, name] : choices) {
        auto* button = new QPushButton(name, buttons);
        button->setCheckable(true);
        button->setObjectName(rows == CompareRows::one_per_unit ? QStringLiteral("onePerUnitButton") : QStringLiteral("everyDrainButton"));
        rows_group_->addButton(button, static_cast<int>(rows));
        line->addWidget(button);
    }
    rows_group_->button(static_cast<int>(CompareRows::one_per_unit))->setChecked(true);
    connect(rows_group_, &QButtonGroup::idClicked, this, &ComparisonPage::refresh);
    columns_button_->setObjectName(QStringLiteral("columnsButton"));
    columns_button_->setToolTip(tr("Which columns the table has, here and in all that leaves the page"));
    connect(columns_button_, &QPushButton::clicked, this, &ComparisonPage::chooseColumns);
    line->addWidget(columns_button_);
    copy_button_->setObjectName(QStringLiteral("copyTableButton"));
    copy_button_->setToolTip(tr("The table as it is shown, for a spreadsheet"));
    connect(copy_button_, &QPushButton::clicked, this, &ComparisonPage::copyTable);
    line->addWidget(copy_button_);
    export_button_->setObjectName(QStringLiteral("exportButton"));
    make_primary(*export_button_);
    connect(export_button_, &QPushButton::clicked, this, &ComparisonPage::exportComparison);
    line->addWidget(export_button_);
    head_ = new PageHead(words, buttons, this);
    return head_;
}

QWidget* ComparisonPage::buildVessels() {
    QFrame* frame = new_panel(this);
    auto* line = new QHBoxLayout(frame);
    line->setContentsMargins(spacing::grid_px, spacing::grid_px, spacing::page_margin_px, spacing::grid_px);
    line->setSpacing(spacing::page_margin_px);
    vessels_->setObjectName(QStringLiteral("vesselsWidget"));
    line->addWidget(scrolling(*vessels_, frame), 1);
    auto* rule = new QFrame(frame);
    make_rule(*rule, true);
    line->addWidget(rule);
    // What is remarked on the units comes first; the key below it is soon known by heart and may be scrolled to.
    auto* words = new WordsColumn(frame);
    auto* side = new QVBoxLayout(words);
    side->setContentsMargins(0, 0, 0, 0);
    remarks_label_->setObjectName(QStringLiteral("comparisonRemarksLabel"));
    remarks_label_->setWordWrap(true);
    remarks_label_->setTextFormat(Qt::PlainText);
    remarks_label_->setFixedWidth(key_width_px);
    set_text_style(*remarks_label_, Tone::soft, TextSize::caption);
    side->addWidget(remarks_label_);
    side->addSpacing(spacing::grid_px);
    auto* key = new VesselKey(words);
    key->setFixedWidth(key_width_px);
    side->addWidget(key);
    side->addStretch();
    QScrollArea* side_scroll = scrolling(*words, frame);
    side_scroll->setObjectName(QStringLiteral("vesselWordsArea"));
    side_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    side_scroll->setFixedWidth(key_width_px + 2 * spacing::page_margin_px);
    line->addWidget(side_scroll);
    return frame;
}

QTabWidget* ComparisonPage::buildTabs() {
    tabs_ = new QTabWidget(this);
    tabs_->setObjectName(QStringLiteral("comparisonTabs"));
    tabs_->setAccessibleName(tr("Pictures of the comparison"));
    late_ = new LateTabs(*tabs_, this);
    const auto add = [this](QWidget* page, const QString& title, std::function<void()> fill) {
        tabs_->addTab(page, title);
        late_->add(*page, std::move(fill));
    };
    add(scrolling(*bars_, tabs_), tr("Usable fraction"), [this] { bars_->setContent(presenter_.bars()); });
    add(buildPairs(), tr("Differences"), [this] { showPairs(); });
    add(models_view_, tr("Models"), [this] { models_view_->setModels(presenter_.modelsTable(), presenter_.modelSentences()); });
    fractions_->setObjectName(QStringLiteral("fractionsChart"));
    add(fractions_, tr("Against load"), [this] { fractions_->setContent(presenter_.fractions()); });
    errors_->setObjectName(QStringLiteral("errorsChart"));
    add(errors_, tr("Gauge errors"), [this] { errors_->setContent(presenter_.gaugeErrors()); });
    return tabs_;
}

QWidget* ComparisonPage::buildPairs() {
    auto* part = new QWidget(this);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(spacing::grid_px, spacing::half_px, 0, 0);
    column->setSpacing(spacing::half_px);
    auto* line = new QHBoxLayout;
    auto* label = new QLabel(tr("how much more or less the unit of a row has in"), part);
    set_text_style(*label, Tone::soft);
    figure_combo_->setObjectName(QStringLiteral("pairFigureCombo"));
    figure_combo_->setAccessibleName(tr("Figure in which units are held against each other"));
    figure_combo_->setAccessibleDescription(figure_combo_->accessibleName()); // of a choice without a label the tree tells what is chosen as its name
    for (const PairFigure figure : all_pair_figures)
        figure_combo_->addItem(text_of(quantity_title(pair_figure_key(figure))), static_cast<int>(figure));
    connect(figure_combo_, &QComboBox::currentIndexChanged, this, &ComparisonPage::showPairs);
    label->setBuddy(figure_combo_);
    line->addWidget(label);
    line->addWidget(figure_combo_);
    pairs_label_->setObjectName(QStringLiteral("pairsLabel"));
    pairs_label_->setWordWrap(true);
    set_text_style(*pairs_label_, Tone::soft, TextSize::caption);
    line->addSpacing(spacing::page_margin_px);
    line->addWidget(pairs_label_, 1);
    column->addLayout(line);
    pairs_->setObjectName(QStringLiteral("pairsView"));
    pairs_->setAccessibleName(tr("Differences between units"));
    pairs_->setTabKeyNavigation(false);
    pairs_->setModel(pairs_model_);
    make_table(*pairs_);
    pairs_->setWordWrap(true); // why two are not comparable
    pairs_->setSelectionBehavior(QAbstractItemView::SelectItems);
    pairs_->verticalHeader()->show();
    column->addWidget(pairs_, 1);
    return part;
}

} // namespace ullage
