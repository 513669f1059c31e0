// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/readings_view.h"

#include "delegates/readings_delegate.h"
#include "models/readings_model.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QScopedValueRollback>
#include <QScrollBar>

#include <algorithm>

namespace ullage {

namespace {

/// The longest text that a column is expected to hold.
constexpr const char* samples[ReadingsRow::column_count] = {"00:00 +", "100", "00000.0", "00000", "0000", "+00.0", ""};

} // namespace

ReadingsView::ReadingsView(ReadingsModel& model, QWidget* parent) : QTableView(parent), model_(model) {
    setObjectName(QStringLiteral("readingsView"));
    setAccessibleName(tr("Readings"));
    setModel(&model);
    setItemDelegate(new ReadingsDelegate(this));
    make_table(*this);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    setContextMenuPolicy(Qt::ActionsContextMenu);
    horizontalHeader()->setMinimumSectionSize(8);
    horizontalHeader()->setSectionsClickable(false);
    // A table that shows its end goes on showing it when rows come or room goes.
    connect(verticalScrollBar(), &QScrollBar::valueChanged, this, [this](int value) { at_end_ = value >= verticalScrollBar()->maximum(); });
    connect(verticalScrollBar(), &QScrollBar::rangeChanged, this, [this](int, int last) {
        if (at_end_) verticalScrollBar()->setValue(last);
    });
    connect(&model, &QAbstractItemModel::modelReset, this, &ReadingsView::spanDays);
    connect(&model, &QAbstractItemModel::dataChanged, this, &ReadingsView::spanDays);
    connect(this, &QTableView::doubleClicked, this, [this](const QModelIndex& index) {
        if (const ReadingId uuid = model_.uuidAt(index.row()); !uuid.empty() && !model_.isWithdrawn(index.row())) emit amendAsked(uuid);
    });
    connect(selectionModel(), &QItemSelectionModel::selectionChanged, this, [this] {
        if (!selecting_) emit readingsChosen(selectedReadings());
    });
    fitColumns();
}

void ReadingsView::setEmptyText(const QString& text) {
    empty_text_ = text;
    viewport()->update();
}

void ReadingsView::selectReadings(const std::vector<ReadingId>& readingUuids) {
    const QScopedValueRollback selecting(selecting_, true);
    QItemSelection chosen;
    int first = -1;
    for (const ReadingId& uuid : readingUuids) {
        const int row = model_.rowOf(uuid);
        if (row < 0) continue;
        chosen.select(model_.index(row, 0), model_.index(row, ReadingsRow::column_count - 1));
        first = first < 0 ? row : std::min(first, row);
    }
    selectionModel()->select(chosen, QItemSelectionModel::ClearAndSelect);
    if (first < 0) return;
    selectionModel()->setCurrentIndex(model_.index(first, 0), QItemSelectionModel::NoUpdate);
    scrollTo(model_.index(first, 0));
}

std::vector<ReadingId> ReadingsView::selectedReadings() const {
    QModelIndexList rows = selectionModel()->selectedRows();
    std::ranges::sort(rows, {}, &QModelIndex::row);
    std::vector<ReadingId> uuids;
    for (const QModelIndex& row : rows)
        if (const ReadingId uuid = model_.uuidAt(row.row()); !uuid.empty() && !model_.isWithdrawn(row.row())) uuids.push_back(uuid);
    return uuids;
}

void ReadingsView::spanDays() {
    clearSpans();
    for (int row = 0; row < model_.rowCount(); ++row)
        if (model_.isDay(row)) setSpan(row, 0, 1, ReadingsRow::column_count);
}

int ReadingsView::textWidth(int column) const {
    const QFontMetrics head(horizontalHeader()->font());
    const QFontMetrics body(text_font(TextSize::body));
    int width = body.horizontalAdvance(QLatin1String(samples[column]));
    const QString title = model_.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
    for (const QString& line : title.split(QLatin1Char('\n'))) width = std::max(width, head.horizontalAdvance(line));
    return width;
}

int ReadingsView::neededWidth() const {
    int width = verticalScrollBar()->sizeHint().width();
    for (int column = 0; column < ReadingsRow::remark; ++column) width += textWidth(column) + 2 * ReadingsDelegate::padding_px;
    return width + textWidth(ReadingsRow::remark) + 2 * ReadingsDelegate::padding_px;
}

void ReadingsView::fitColumns() {
    // Where there is room the columns breathe; a third of the room stays for the remarks.
    const int spare = std::max(0, viewport()->width() - neededWidth()) * 2 / 3 / ReadingsRow::remark;
    const int most = QFontMetrics(text_font(TextSize::body)).averageCharWidth() * 4;
    for (int column = 0; column < ReadingsRow::remark; ++column)
        setColumnWidth(column, textWidth(column) + 2 * ReadingsDelegate::padding_px + std::min(spare, most));
    horizontalHeader()->setSectionResizeMode(ReadingsRow::remark, QHeaderView::Stretch);
}

void ReadingsView::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    fitColumns();
}

void ReadingsView::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() != QEvent::StyleChange || model() == nullptr) return;
    make_table(*this);
    fitColumns();
}

void ReadingsView::keyPressEvent(QKeyEvent* event) {
    const bool asks = event->key() == Qt::Key_F2 || event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    const int current = currentIndex().row();
    const ReadingId uuid = current < 0 || model_.isWithdrawn(current) ? ReadingId() : model_.uuidAt(current);
    if (asks && !uuid.empty()) {
        emit amendAsked(uuid);
        return;
    }
    if (event->key() == Qt::Key_Delete) {
        // What goes is seen to go: the chosen readings, else that of the current row, and none that is out of sight.
        if (selectedReadings().empty() && !uuid.empty()) selectRow(currentIndex().row());
        const QModelIndexList chosen = selectionModel()->selectedRows();
        if (selectedReadings().empty()) return;
        const bool in_sight = std::ranges::any_of(chosen, [this](const QModelIndex& row) { return viewport()->rect().intersects(visualRect(row)); });
        if (in_sight) emit withdrawAsked();
        else scrollTo(chosen.constFirst());
        return;
    }
    QTableView::keyPressEvent(event);
}

void ReadingsView::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    if (model_.rowCount() > 0 || empty_text_.isEmpty()) return;
    QPainter painter(viewport());
    painter.setFont(text_font(TextSize::body));
    painter.setPen(current_palette().soft);
    const int margin = spacing::group_gap_px;
    painter.drawText(viewport()->rect().adjusted(margin, margin, -margin, -margin), Qt::AlignCenter | Qt::TextWordWrap, empty_text_);
}

} // namespace ullage
