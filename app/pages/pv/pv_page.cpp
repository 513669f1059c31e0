// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/pv/pv_page.h"

#include "chart_content/pv_chart.h"
#include "charts/line_chart.h"
#include "pages/parts/page_parts.h"
#include "pages/pv/pv_form.h"
#include "pages/pv/pv_verdict.h"
#include "style/numbers.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"
#include "style/words.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage {

namespace {

constexpr int form_px = 420;

QString figure(const std::optional<double>& value, const QString& unit) {
    return value ? QStringLiteral("%1 %2").arg(shown_number(value, unit == QLatin1String("W") ? 0 : 1), unit) : QStringLiteral("–");
}

/// A figure stays in one line with its unit, a sign with its word.
QString unbroken(QString words) { return words.replace(QLatin1Char(' '), QChar(QChar::Nbsp)); }

/// Outcomes are told by word and sign, not only by colour.
QString outcome_cell(PvComparison::Outcome outcome, const Palette& palette) {
    using Outcome = PvComparison::Outcome;
    const QString word = unbroken(text_of(say_pv_outcome(outcome)));
    switch (outcome) {
    case Outcome::good: return QStringLiteral("<span style='color:%1'>✓&nbsp;%2</span>").arg(palette.good.name(), word);
    case Outcome::clips: return QStringLiteral("<span style='color:%1'>◐&nbsp;%2</span>").arg(palette.accent.name(), word);
    case Outcome::bad: return QStringLiteral("<b style='color:%1'>✕&nbsp;%2</b>").arg(palette.fault_ink.name(), word);
    case Outcome::ask:
    case Outcome::too_close: return QStringLiteral("<b style='color:%1'>!&nbsp;%2</b>").arg(palette.doubt_ink.name(), word);
    case Outcome::not_known: return QStringLiteral("<span style='color:%1'>?&nbsp;%2</span>").arg(palette.soft.name(), word);
    }
    return word;
}

QString comparisons_html(const PvCheck& check) {
    const Palette& palette = current_palette();
    const QString soft = palette.soft.name();
    QString html =
        QStringLiteral(
            "<table width='100%' cellspacing='0' cellpadding='3'><tr style='color:%1'><td></td><td align='right'>%2</td><td align='right'>%3</td>"
            "<td align='right'>%4</td><td></td></tr>")
            .arg(soft, tr("string"), tr("limit"), tr("margin"));
    for (const PvComparison& each : check.comparisons) {
        const QString unit = text_of(each.unit);
        html += QStringLiteral("<tr><td>%1</td><td align='right'>%2</td><td align='right'>%3</td><td align='right'>%4</td><td>&nbsp;%5</td></tr>"
                               "<tr><td colspan='5' style='color:%6'><small>%7</small></td></tr>")
                    .arg(text_of(each.title), unbroken(figure(each.value, unit)), unbroken(figure(each.limit, unit)),
                         unbroken(figure(each.margin, unit)), outcome_cell(each.outcome, palette), soft, text_of(each.sentence).toHtmlEscaped());
    }
    return html + QStringLiteral("</table>");
}

/// Asks for the height of twelve lines. One that asked for none would be left out of the height that the page scrolls by, and the words above it cut.
class LowChart final : public LineChart {
public:
    [[nodiscard]] QSize sizeHint() const override { return {LineChart::sizeHint().width(), lines * fontMetrics().height()}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {LineChart::minimumSizeHint().width(), lines * fontMetrics().height()}; }

private:
    static constexpr int lines = 12;
};

QString limits_words(const Unit* unit) {
    if (!unit) return tr("Choose the unit whose PV input is meant: its limits come from its claims.");
    const PvLimits limits = pv_limits(*unit);
    QStringList parts;
    if (limits.start_v) parts << tr("from %1").arg(figure(limits.start_v, QStringLiteral("V")));
    if (limits.max_v) parts << tr("at most %1").arg(figure(limits.max_v, QStringLiteral("V")));
    if (limits.max_a) parts << figure(limits.max_a, QStringLiteral("A"));
    if (limits.max_w) parts << figure(limits.max_w, QStringLiteral("W"));
    if (limits.short_circuit_a) parts << tr("%1 short circuit").arg(figure(limits.short_circuit_a, QStringLiteral("A")));
    const QString name = text_of(unit->name);
    return parts.isEmpty() ? tr("No limit of the PV input of %1 is stated; enter what its label says.").arg(name)
                           : tr("PV input of %1: %2").arg(name, parts.join(QStringLiteral(", ")));
}

} // namespace

PvPage::PvPage(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), sheets_(new QComboBox), withdraw_(new_button("withdrawPvSheetButton", tr("Withdraw sheet"))),
      edit_unit_(new_button("pvEditUnitButton", tr("Edit claims"))), body_(new QStackedWidget), form_(new PvForm), verdict_(new PvVerdictView),
      limits_(new_paragraph("pvLimitsLabel", Tone::ink, TextSize::body)), table_(new_paragraph("pvComparisonsLabel", Tone::ink, TextSize::body)),
      assumed_(new_paragraph("pvAssumedLabel", Tone::soft, TextSize::caption)),
      cautions_(new_paragraph("pvCautionsLabel", Tone::ink, TextSize::caption)), chart_(new LowChart) {
    setObjectName(QStringLiteral("pvPage"));
    auto* whole = new QWidget;
    auto* halves = new QHBoxLayout(whole);
    halves->setContentsMargins(0, 0, 0, 0);
    halves->setSpacing(spacing::panel_gap_px);
    auto* panel = new_panel(whole);
    panel->setFixedWidth(form_px);
    auto* scroll = new QScrollArea;
    scroll->setObjectName(QStringLiteral("pvFormScroll"));
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(form_);
    scroll->viewport()->setAutoFillBackground(false);
    form_->setAutoFillBackground(false);
    auto* panel_column = new QVBoxLayout(panel);
    panel_column->setContentsMargins(1, 1, 1, 1);
    panel_column->addWidget(scroll);
    halves->addWidget(panel);
    halves->addWidget(makeAnswer(), 1);
    body_->addWidget(whole);
    body_->addWidget(makeEmpty());
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(spacing::page_margin_px, spacing::page_margin_px - 2, spacing::page_margin_px, spacing::grid_px);
    page->setSpacing(spacing::grid_px + 2);
    page->addWidget(makeHead());
    page->addWidget(body_, 1);
    QStringList cautions;
    for (const Message& caution : pv_cautions()) cautions << text_of(caution);
    cautions_->setText(cautions.join(QLatin1Char(' ')));
    page->addWidget(cautions_);
    connect(form_, &PvForm::typed, this, &PvPage::showAnswer);
    connect(form_, &PvForm::committed, this, &PvPage::commit);
    for (auto signal : {&Document::opened, &Document::closed, &Document::unitsChanged, &Document::pvSheetsChanged})
        connect(&document_, signal, this, &PvPage::refresh);
    connect(&ThemeNotifier::instance(), &ThemeNotifier::themeChanged, this, &PvPage::showAnswer);
    refresh();
}

QWidget* PvPage::makeHead() {
    auto* head = new QWidget;
    auto* title = new QLabel(tr("PV input check"));
    set_text_style(*title, Tone::ink, TextSize::title);
    sheets_->setObjectName(QStringLiteral("pvSheetsCombo"));
    sheets_->setAccessibleName(tr("PV sheet"));
    sheets_->setAccessibleDescription(sheets_->accessibleName()); // of a choice without a label the tree tells what is chosen as its name
    sheets_->setMinimumContentsLength(12);
    sheets_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(sheets_, &QComboBox::activated, this, [this] { choose(id_of<PvSheetId>(sheets_->currentData().toString())); });
    auto* add = new_button("addPvSheetButton", tr("Add sheet"));
    make_primary(*add);
    connect(add, &QPushButton::clicked, this, &PvPage::addSheet);
    connect(withdraw_, &QPushButton::clicked, this, &PvPage::withdrawSheet);
    auto* line = new QHBoxLayout(head);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(spacing::panel_gap_px);
    line->addWidget(title);
    line->addWidget(sheets_, 1);
    line->addStretch(1);
    line->addWidget(withdraw_);
    line->addWidget(add);
    return head;
}

QWidget* PvPage::makeAnswer() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::panel_gap_px);
    column->addWidget(verdict_);
    auto* panel = new_panel(side);
    auto* inside = new QVBoxLayout(panel);
    inside->setContentsMargins(spacing::page_margin_px, spacing::panel_gap_px, spacing::page_margin_px, spacing::panel_gap_px);
    inside->setSpacing(spacing::grid_px);
    auto* line = new QHBoxLayout;
    line->addWidget(limits_, 1);
    line->addWidget(edit_unit_);
    inside->addLayout(line);
    table_->setTextFormat(Qt::RichText);
    inside->addWidget(table_);
    chart_->setObjectName(QStringLiteral("pvChart"));
    chart_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
    inside->addWidget(chart_, 1);
    inside->addWidget(assumed_);
    column->addWidget(panel, 1);
    connect(edit_unit_, &QPushButton::clicked, this, [this] {
        if (const auto* sheet = document_.pvSheet(uuid_)) emit editUnitAsked(UnitId(sheet->unit_uuid));
    });
    // A low window scrolls rather than squeezing the words onto one another.
    auto* scroll = new QScrollArea;
    scroll->setObjectName(QStringLiteral("pvAnswerScroll"));
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(side);
    scroll->viewport()->setAutoFillBackground(false);
    side->setAutoFillBackground(false);
    return scroll;
}

QWidget* PvPage::makeEmpty() {
    auto* panel = new_panel(nullptr);
    auto* words = new_paragraph("noPvSheetsLabel", Tone::soft, TextSize::body);
    words->setText(
        tr("No PV sheets yet. Add sheet takes what a module's label says, how many are wired together, and how cold and hot the place gets; the page "
           "then tells whether a unit's PV input takes the string."));
    words->setAlignment(Qt::AlignCenter);
    words->setMargin(spacing::group_gap_px);
    auto* column = new QVBoxLayout(panel);
    column->addWidget(words);
    return panel;
}

void PvPage::refresh() {
    const auto& sheets = document_.pvSheets();
    if (!document_.pvSheet(uuid_)) uuid_ = sheets.empty() ? PvSheetId() : sheets.front().uuid;
    sheets_->clear();
    for (const PvSheet& sheet : sheets) sheets_->addItem(text_of(sheet.name), raw_text(sheet.uuid));
    sheets_->setCurrentIndex(sheets_->findData(raw_text(uuid_)));
    sheets_->setVisible(!sheets.empty());
    withdraw_->setEnabled(!sheets.empty());
    body_->setCurrentIndex(sheets.empty() ? 1 : 0);
    if (const PvSheet* sheet = document_.pvSheet(uuid_)) form_->setSheet(*sheet, document_.units());
    showAnswer();
}

void PvPage::choose(const PvSheetId& uuid) {
    uuid_ = uuid;
    refresh();
}

void PvPage::addSheet() {
    PvSheet sheet;
    const auto taken = [this](const std::string& name) {
        return std::ranges::any_of(document_.pvSheets(), [&](const PvSheet& each) { return each.name == name; });
    };
    int number = 1;
    do sheet.name = utf8_of(tr("PV sheet %1").arg(number++));
    while (taken(sheet.name));
    if (!document_.units().empty()) sheet.unit_uuid = document_.units().front().uuid;
    const Result<PvSheet> added = document_.addPvSheet(sheet);
    if (!added) return emit error(text_of(added.error().sentence()));
    choose(added.value().uuid);
}

void PvPage::withdrawSheet() {
    if (const Result<void> done = document_.withdrawPvSheet(uuid_); !done) emit error(text_of(done.error().sentence()));
}

void PvPage::commit() {
    const auto sheet = form_->sheet();
    if (!sheet || !document_.pvSheet(uuid_)) return;
    if (const Result<void> done = document_.updatePvSheet(*sheet); !done) emit error(text_of(done.error().sentence()));
}

void PvPage::showAnswer() {
    const auto sheet = form_->sheet();
    const Unit* unit = sheet ? document_.unit(sheet->unit_uuid) : nullptr;
    edit_unit_->setEnabled(unit != nullptr);
    limits_->setText(limits_words(unit));
    if (!sheet) {
        verdict_->setUnreadable();
        table_->clear();
        assumed_->clear();
        chart_->setContent({});
        return;
    }
    const PvLimits limits = unit ? pv_limits(*unit) : PvLimits{};
    const PvCheck check = check_pv(*sheet, limits);
    verdict_->setCheck(check);
    table_->setText(comparisons_html(check));
    QString assumed;
    if (check.conductor_a)
        assumed = tr("Conductors, and fuses where needed, of each string: for at least %1 A (1.25 × 1.25 × Isc, NEC 690.8). ")
                      .arg(shown_number(check.conductor_a, 1));
    if (!check.string_fuses.empty()) assumed += text_of(check.string_fuses) + QLatin1Char(' ');
    for (const Message& line : check.assumptions) assumed += text_of(line) + QLatin1Char(' ');
    assumed_->setText(assumed.trimmed());
    chart_->setContent(pv_chart(*sheet, limits, check));
    chart_->setAccessibleName(chart_->content().description);
}

std::optional<PvSheetText> PvPage::stated() const {
    const auto sheet = form_->sheet();
    if (!sheet || !document_.pvSheet(uuid_)) return std::nullopt;
    const Unit* unit = document_.unit(sheet->unit_uuid);
    return PvSheetText{*sheet, unit ? unit->name : std::string(), unit ? pv_limits(*unit) : PvLimits{}};
}

void PvPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange) showAnswer();
}

} // namespace ullage
