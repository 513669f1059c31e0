// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/skipped_rows_table.h"

#include "base/instant.h"
#include "base/number.h"
#include "style/roles.h"
#include "style/words.h"

#include <QHeaderView>
#include <QLocale>
#include <QTableWidget>

#include <algorithm>

namespace ullage {

namespace {

constexpr int shown_at_once = 6;

void add_row(QTableWidget& table, const QString& line, const QString& trouble, const QString& text) {
    const int row = table.rowCount();
    table.insertRow(row);
    int column = 0;
    for (const QString& cell : {line, trouble, text}) {
        auto* item = new QTableWidgetItem(cell);
        item->setToolTip(cell);
        table.setItem(row, column++, item);
    }
}

} // namespace

QTableWidget* new_skipped_rows_table(QWidget* parent) {
    auto* table = new QTableWidget(0, 3, parent);
    table->setObjectName(QStringLiteral("skippedRowsTable"));
    table->setAccessibleName(tr("Rows left out or taken with a doubt"));
    table->setHorizontalHeaderLabels({tr("line"), tr("what was done"), tr("the row as it stands")});
    make_table(*table);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->horizontalHeader()->setStretchLastSection(true);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setTabKeyNavigation(false);
    return table;
}

void show_skipped_rows(QTableWidget& table, const TraceTally& tally, const std::string& zone) {
    table.setRowCount(0);
    for (const SkippedRow& row : tally.skipped_rows) {
        if (row.trouble == RowTrouble::gap) continue;
        add_row(table, QLocale().toString(static_cast<qlonglong>(row.line)),
                (leaves_out(row.trouble) ? tr("left out: %1") : tr("taken: %1")).arg(text_of(say_trouble(row.trouble))), text_of(row.text));
    }
    for (const TraceGap& gap : tally.gaps)
        add_row(table, QStringLiteral("–"), tr("gap"),
                tr("from %1 to %2").arg(text_of(format_iso8601(gap.from_ms, zone)), text_of(format_iso8601(gap.to_ms, zone))));
    // As high as its rows, up to a handful: the rest scrolls.
    int height_px = table.horizontalHeader()->sizeHint().height() + 2 * table.frameWidth();
    for (int r = 0; r < std::min(table.rowCount(), shown_at_once); ++r) height_px += table.rowHeight(r);
    table.setFixedHeight(height_px);
}

QString tally_words(const TraceTally& tally) {
    const QLocale locale;
    QString text = (tally.rows == 1 ? tr("%1 row: %2 taken, %3 left out") : tr("%1 rows: %2 taken, %3 left out"))
                       .arg(locale.toString(static_cast<qlonglong>(tally.rows)), locale.toString(static_cast<qlonglong>(tally.taken)),
                            locale.toString(static_cast<qlonglong>(tally.left_out())));
    if (tally.interval_s) text += tr("; usually %1 s apart").arg(locale.toString(*tally.interval_s));
    if (const long gaps = tally.count(RowTrouble::gap); gaps > 0)
        text += (gaps == 1 ? tr("; %1 gap longer than %2 s") : tr("; %1 gaps longer than %2 s"))
                    .arg(locale.toString(static_cast<qlonglong>(gaps)), locale.toString(tally.gap_limit_s));
    return text;
}

} // namespace ullage
