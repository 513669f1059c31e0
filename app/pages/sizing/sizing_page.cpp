// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/sizing/sizing_page.h"

#include "base/number.h"
#include "chart_content/sizing_chart.h"
#include "charts/line_chart.h"
#include "delegates/quantity_delegate.h"
#include "formats/results/comparison_table.h"
#include "formats/results/sizing_output.h"
#include "models/table_model.h"
#include "pages/parts/page_parts.h"
#include "pages/sizing/sizing_form.h"
#include "services/background_work.h"
#include "style/numbers.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <functional>

namespace ullage {

namespace {

constexpr int sizing_form_px = 336;

QTableView* sizing_view(const char* name, const QString& about, TableModel* model) {
    auto* table = new QTableView;
    table->setObjectName(QLatin1String(name));
    table->setAccessibleName(about);
    table->setModel(model);
    table->setItemDelegate(new QuantityDelegate(table));
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setTabKeyNavigation(false);
    table->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    make_table(*table);
    return table;
}

/// As high as its rows, so that the page scrolls and not the table.
void fit_rows(QTableView& table) {
    table.resizeColumnsToContents();
    for (int column = 0; column < table.model()->columnCount(); ++column) table.setColumnWidth(column, table.columnWidth(column) + spacing::grid_px);
    const int row_px = table.verticalHeader()->defaultSectionSize();
    table.setFixedHeight(table.horizontalHeader()->sizeHint().height() + row_px * table.model()->rowCount() + 2 * spacing::grid_px);
}

QString joined_lines(const std::vector<std::string>& lines) {
    QStringList words;
    for (const std::string& line : lines) words << text_of(line);
    return words.join(QLatin1Char(' '));
}

} // namespace

SizingPage::SizingPage(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), sizer_(new UnitSizer(document, this)), lists_(new QComboBox),
      report_(new_button("sizingReportButton", tr("Make report"))), export_(new_button("exportSizingButton", tr("Export"))),
      body_(new QStackedWidget), form_(new SizingForm), form_panel_(new_panel(nullptr)), units_model_(new TableModel(this)),
      rules_model_(new TableModel(this)), months_model_(new TableModel(this)),
      units_(sizing_view("sizingUnitsTable", tr("units for the load list"), units_model_)),
      rules_(sizing_view("sizingRulesTable", tr("PV array and battery by rule"), rules_model_)),
      months_(sizing_view("sizingMonthsTable", tr("PV array by month"), months_model_)), totals_(new_paragraph("sizingTotalsLabel", Tone::ink)),
      course_(new_paragraph("sizingCourseLabel", Tone::ink)), assumed_(new_paragraph("sizingAssumedLabel", Tone::soft, TextSize::caption)),
      rule_words_(new_paragraph("sizingRuleLabel", Tone::soft, TextSize::caption)),
      no_months_(new_paragraph("noMonthsLabel", Tone::soft, TextSize::caption)),
      cautions_(new_paragraph("sizingCautionsLabel", Tone::ink, TextSize::caption)),
      all_cautions_(new_paragraph("sizingAllCautionsLabel", Tone::ink, TextSize::caption)), chart_(new LineChart) {
    setObjectName(QStringLiteral("sizingPage"));
    auto* whole = new QWidget;
    auto* halves = new QHBoxLayout(whole);
    halves->setContentsMargins(0, 0, 0, 0);
    halves->setSpacing(spacing::panel_gap_px);
    auto* panel_column = new QVBoxLayout(form_panel_);
    panel_column->setContentsMargins(1, 1, 1, 1);
    panel_column->addWidget(scrolling(*form_, form_panel_));
    halves->addWidget(form_panel_, 0);
    halves->addWidget(scrolling(*makeAnswer(), whole), 1);
    body_->addWidget(whole);
    body_->addWidget(makeEmpty());
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(spacing::page_margin_px, spacing::page_margin_px - 2, spacing::page_margin_px, spacing::grid_px);
    page->setSpacing(spacing::grid_px + 2);
    page->addWidget(makeHead());
    page->addWidget(body_, 1);
    // The gravest stay in sight; all of them end the page.
    const std::vector<Message> cautions = sizing_cautions();
    std::vector<Message> in_sight{cautions.front()};
    for (const Message& caution : cautions)
        if (caution.english().find("licensed electrician") != std::string::npos) in_sight.push_back(caution);
    cautions_->setText(joined_lines(texts(in_sight)));
    all_cautions_->setText(joined_lines(texts(cautions)));
    fitToText();
    page->addWidget(cautions_);
    connect(form_, &SizingForm::changed, this, [this] {
        if (isVisible()) refresh();
        emit choicesChanged(form_->text());
    });
    connect(units_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        if (!refreshing_) showUnit();
    });
    for (auto signal : {&Document::opened, &Document::closed, &Document::unitsChanged, &Document::metersChanged, &Document::loadListsChanged,
                        &Document::runsChanged})
        connect(&document_, signal, this, [this] {
            if (isVisible()) refresh();
        });
    connect(&document_, &Document::readingsChanged, this, [this] {
        if (isVisible()) refresh();
    });
    connect(sizer_, &UnitSizer::sized, this, &SizingPage::showSizing);
    connect(sizer_, &UnitSizer::error, this, [this](const QString& sentence) {
        sizing_ = {};
        totals_->setText(sentence);
    });
}

QWidget* SizingPage::makeHead() {
    auto* head = new QWidget;
    auto* title = new QLabel(tr("Sizing"));
    set_text_style(*title, Tone::ink, TextSize::title);
    lists_->setObjectName(QStringLiteral("sizingListCombo"));
    lists_->setAccessibleName(tr("Load list"));
    lists_->setAccessibleDescription(lists_->accessibleName()); // of a choice without a label the tree tells what is chosen as its name
    lists_->setMinimumContentsLength(12);
    lists_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(lists_, &QComboBox::activated, this, [this] { showLoadList(id_of<LoadListId>(lists_->currentData().toString())); });
    make_primary(*report_);
    connect(report_, &QPushButton::clicked, this, &SizingPage::reportAsked);
    connect(export_, &QPushButton::clicked, this, &SizingPage::exportAsked);
    auto* edit = new_button("sizingListsButton", tr("Load lists"));
    connect(edit, &QPushButton::clicked, this, &SizingPage::loadListsAsked);
    auto* line = new QHBoxLayout(head);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(spacing::panel_gap_px);
    line->addWidget(title);
    line->addWidget(lists_);
    line->addStretch(2);
    for (auto* button : {edit, export_, report_}) line->addWidget(button);
    return head;
}

QWidget* SizingPage::makeAnswer() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::panel_gap_px);
    const auto card = [&](std::initializer_list<QWidget*> parts) {
        auto* panel = new_panel(side);
        auto* inside = new QVBoxLayout(panel);
        inside->setContentsMargins(spacing::page_margin_px, spacing::panel_gap_px, spacing::page_margin_px, spacing::panel_gap_px);
        inside->setSpacing(spacing::grid_px);
        for (QWidget* part : parts) inside->addWidget(part);
        column->addWidget(panel);
    };
    chart_->setObjectName(QStringLiteral("sizingChart"));
    chart_->setMinimumHeight(250);
    no_months_->setText(tr("Type the peak-sun hours of the months at the left to see what the array brings in each."));
    card({totals_, units_, assumed_});
    card({course_, chart_});
    card({rules_, rule_words_, months_, no_months_});
    card({all_cautions_});
    column->addStretch();
    return side;
}

QWidget* SizingPage::makeEmpty() {
    auto* panel = new_panel(nullptr);
    auto* words = new_paragraph("noSizingLabel", Tone::soft, TextSize::body);
    words->setText(tr("No load list yet. Add one under Edit, Load lists, with what is to run and for how "
                      "long; this page then says how long each unit carries it, how "
                      "many are needed, and which PV array."));
    words->setAlignment(Qt::AlignCenter);
    words->setMargin(spacing::group_gap_px);
    auto* column = new QVBoxLayout(panel);
    column->addWidget(words);
    return panel;
}

bool SizingPage::awaitSizing() {
    sizer_->finish([this](const std::function<void()>& waiting) {
        work_beside(
            this, tr("Sizing %1 units").arg(document_.units().size()), [&](WorkProgress&) { waiting(); }, Cancelling::not_possible);
    });
    return document_.loadList(list_uuid_) && sizing_.list.uuid == list_uuid_;
}

QString SizingPage::choicesText() const { return form_->text(); }
void SizingPage::setChoicesText(const QString& text) { form_->setText(text); }

void SizingPage::showLoadList(const LoadListId& list_uuid) {
    if (document_.loadList(list_uuid)) list_uuid_ = list_uuid;
    refresh();
}

void SizingPage::refresh() {
    const auto& lists = document_.loadLists();
    if (!document_.loadList(list_uuid_)) list_uuid_ = lists.empty() ? LoadListId() : lists.front().uuid;
    lists_->clear();
    for (const LoadList& list : lists) lists_->addItem(text_of(list.name), raw_text(list.uuid));
    lists_->setCurrentIndex(lists_->findData(raw_text(list_uuid_)));
    lists_->setVisible(!lists.empty());
    const LoadList* list = document_.loadList(list_uuid_);
    body_->setCurrentIndex(list ? 0 : 1);
    for (auto* button : {report_, export_}) button->setEnabled(list != nullptr);
    if (!list) {
        sizer_->cancel();
        sizing_ = {};
        return;
    }
    sizer_->start(*list, form_->choices());
    if (sizer_->isWorking()) totals_->setText(tr("Sizing %1 units…").arg(document_.units().size()));
}

void SizingPage::showSizing(const Sizing& sizing) {
    const std::size_t chosen = chosenUnit();
    sizing_ = sizing;
    refreshing_ = true;
    const std::vector<std::string> shown{"unit", "basis",         "days_of_autonomy",   "lasts_h", "units_least", "units_sure", "output",
                                         "peak", "units_by_rule", "days_output_left_on"};
    if (const Result<Table> table = with_columns(sizing_table(sizing_), shown)) units_model_->setTable(table.value());
    fit_rows(*units_);
    if (!sizing_.units.empty()) units_->setCurrentIndex(units_model_->index(static_cast<int>(std::min(chosen, sizing_.units.size() - 1)), 0));
    refreshing_ = false;
    months_->setVisible(!sizing_.list_needs.months.empty());
    no_months_->setVisible(sizing_.list_needs.months.empty());
    assumed_->setText(joined_lines(texts(sizing_.remarks)));
    totals_->setText(tr("%1 takes %2 Wh a day, %3 W when all of it runs, %4 W at most.")
                         .arg(text_of(sizing_.list.name), shown_number(sizing_.totals.daily_wh, 0), shown_number(sizing_.totals.running_w, 0),
                              shown_number(sizing_.totals.peak_w, 0)));
    showUnit();
}

void SizingPage::fitToText() {
    form_panel_->setMinimumWidth(std::max(sizing_form_px, form_->minimumSizeHint().width() + 2 * spacing::page_margin_px));
    for (QTableView* view : {units_, rules_, months_}) fit_rows(*view);
}

void SizingPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange)
        QTimer::singleShot(0, this, &SizingPage::fitToText); // once the parts have taken the new size
}

std::size_t SizingPage::chosenUnit() const {
    const int row = units_->currentIndex().row();
    return row < 0 ? 0 : static_cast<std::size_t>(row);
}

void SizingPage::showUnit() {
    const std::size_t unit = chosenUnit();
    // The unit is the one chosen above: its name need not stand in every row.
    const Table all_rules = sizing_rules_table(sizing_, unit);
    if (const Result<Table> rules = with_columns(all_rules, {"step", "value", "from"})) rules_model_->setTable(rules.value());
    rule_words_->setText(joined_lines(texts(all_rules.remarks)));
    const std::vector<std::string> by_month{"month", "array_w", "sun_hours", "daily_wh", "need_wh", "margin_wh", "array_to_load"};
    if (const Result<Table> months = with_columns(sizing_months_table(sizing_, unit), by_month)) months_model_->setTable(months.value());
    for (QTableView* view : {rules_, months_}) fit_rows(*view);
    QString words = text_of(course_sentence(sizing_, unit));
    if (unit < sizing_.units.size()) {
        const SizedUnit& sized = sizing_.units[unit];
        std::vector<Message> remarks = sized.remarks;
        if (!sized.days.reason.empty()) remarks.push_back(say(phrase("sizing", "Days of autonomy: %1"), sized.days.reason));
        for (const Message& remark : remarks) words += (words.isEmpty() ? QString() : QStringLiteral("\n")) + text_of(remark);
    }
    course_->setText(words);
    chart_->setContent(sizing_chart(sizing_, unit));
    chart_->setAccessibleName(chart_->content().description);
}

} // namespace ullage
