// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/table_flow.h"

#include "report/kept_text.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <numeric>

namespace ullage {

namespace {

constexpr double gutter_mm = 2.4, pad_mm = 0.7;
constexpr std::size_t measured_rows = 600; ///< enough to know the widths of longer tables

/// A cell's text with its interval and note mark in a lighter tone.
struct CellText {
    QString text;
    QList<TextAccent> accents;
};

CellText cell_text(const PrintedCell& cell, const Palette& palette, const KeptText& kept) {
    CellText made{kept(cell.value), {}};
    const auto add = [&](const QString& more) {
        made.accents << TextAccent{static_cast<int>(made.text.size()), static_cast<int>(more.size()), palette.soft, false};
        made.text += more;
    };
    if (!cell.interval.empty()) add(QStringLiteral("\u00A0") + kept(cell.interval).replace(QLatin1Char(' '), QChar(0xA0)));
    if (cell.note != 0) add(QStringLiteral("\u00A0[%1]").arg(cell.note));
    return made;
}

/// Widths of the columns without gutters: all that they need where that fits, else what lies above their longest words is shared.
std::vector<double> column_widths(const PageFlow& flow, const PrintedTable& table, const KeptText& kept) {
    const std::size_t count = table.heads.size();
    std::vector<TextWidths> needs(count);
    const QFont small = flow.font(PrintSize::small);
    const auto take = [&](std::size_t column, const QString& text) {
        const TextWidths widths = text_widths(text, small, flow.device());
        needs[column].word = std::max(needs[column].word, widths.word);
        needs[column].whole = std::max(needs[column].whole, widths.whole);
    };
    for (std::size_t c = 0; c < count; ++c) {
        take(c, kept(table.heads[c]));
        needs[c].whole = needs[c].word; // a head may break at every space
    }
    for (std::size_t r = 0; r < std::min(table.rows.size(), measured_rows); ++r)
        for (std::size_t c = 0; c < count; ++c) take(c, cell_text(table.rows[r][c], flow.palette(), kept).text);
    const double room = flow.width() - static_cast<double>(count - 1) * flow.mm(gutter_mm);
    // One endless word must not take the page from the other columns.
    const double most_word = room * std::max(0.3, 1.0 / static_cast<double>(count));
    std::vector<double> least, most;
    for (const TextWidths& need : needs) {
        least.push_back(std::min(need.word, most_word) + flow.mm(0.2)); // against rounding in the last digit
        most.push_back(std::max(need.whole + flow.mm(0.2), least.back()));
    }
    const double least_sum = std::accumulate(least.begin(), least.end(), 0.0);
    const double most_sum = std::accumulate(most.begin(), most.end(), 0.0);
    std::vector<double> widths(count);
    for (std::size_t c = 0; c < count; ++c) {
        if (most_sum <= room) widths[c] = most[c];
        else if (least_sum >= room) widths[c] = least[c] * room / least_sum;
        else widths[c] = least[c] + (most[c] - least[c]) * (room - least_sum) / (most_sum - least_sum);
    }
    return widths;
}

/// One row laid out: a text for each column.
struct Row {
    std::vector<FlowedText> cells;
    [[nodiscard]] double height(const std::vector<int>& from) const {
        double most = 0;
        for (std::size_t c = 0; c < cells.size(); ++c) most = std::max(most, cells[c].height(from[c], cells[c].lines()));
        return most;
    }
    [[nodiscard]] double height() const { return height(std::vector<int>(cells.size(), 0)); }
};

class TableFlow {
public:
    TableFlow(PageFlow& flow, const PrintedTable& table, const KeptText& kept)
        : flow_(flow), table_(table), kept_(kept), widths_(column_widths(flow, table, kept)), head_(headRow()) {}

    [[nodiscard]] double headHeight() const { return head_.height() + 2 * flow_.mm(pad_mm); }
    [[nodiscard]] Row row(std::size_t index) const {
        Row row;
        for (std::size_t c = 0; c < widths_.size(); ++c) {
            const CellText text = cell_text(table_.rows[index][c], flow_.palette(), kept_);
            row.cells.emplace_back(text.text, flow_.font(PrintSize::small), flow_.device(), widths_[c], table_.right[c], text.accents);
        }
        return row;
    }

    void set() {
        setHead();
        for (std::size_t r = 0; r < table_.rows.size() && flow_.goesOn(); ++r) setRow(row(r));
    }

private:
    [[nodiscard]] Row headRow() const {
        Row row;
        for (std::size_t c = 0; c < widths_.size(); ++c)
            row.cells.emplace_back(kept_(table_.heads[c]), flow_.font(PrintSize::small), flow_.device(), widths_[c], table_.right[c]);
        return row;
    }

    /// Draws the lines of a row that fit into `room` from `from` on; `from` then stands at what is left. Returns the height taken.
    double setLines(const Row& row, std::vector<int>& from, double room, const QColor& colour) {
        double x = flow_.left(), taken = 0;
        for (std::size_t c = 0; c < row.cells.size(); ++c) {
            const FlowedText& cell = row.cells[c];
            const int to = from[c] + cell.linesWithin(from[c], room);
            if (flow_.painter()) cell.draw(*flow_.painter(), {x, flow_.y()}, from[c], to, colour);
            taken = std::max(taken, cell.height(from[c], to));
            from[c] = to;
            x += widths_[c] + flow_.mm(gutter_mm);
        }
        return taken;
    }

    void setHead() {
        std::vector<int> from(head_.cells.size(), 0);
        flow_.down(flow_.mm(pad_mm));
        flow_.down(setLines(head_, from, flow_.pageHeight(), flow_.palette().soft) + flow_.mm(pad_mm));
        flow_.rule(0.3);
    }

    void nextPage() {
        flow_.newPage();
        setHead();
    }

    void setRow(const Row& row) {
        std::vector<int> from(row.cells.size(), 0);
        const double around = 2 * flow_.mm(pad_mm) + flow_.mm(0.15);
        if (row.height() + around > flow_.room()) nextPage();
        for (;;) {
            flow_.down(flow_.mm(pad_mm));
            const double taken = setLines(row, from, flow_.room() - flow_.mm(pad_mm), flow_.palette().ink);
            flow_.down(taken + flow_.mm(pad_mm));
            flow_.rule();
            if (row.height(from) <= 0 || taken <= 0) return;
            nextPage(); // a row taller than a page goes on
        }
    }

    PageFlow& flow_;
    const PrintedTable& table_;
    const KeptText& kept_;
    std::vector<double> widths_;
    Row head_;
};

} // namespace

void flow_table(PageFlow& flow, const ReportTable& block, const KeptText& kept) {
    if (block.table.heads.empty()) return;
    const QColor soft = flow.palette().soft;
    flow.gap(2);
    TableFlow table(flow, block.table, kept);
    const double title = block.title.empty() ? 0 : QFontMetricsF(flow.font(PrintSize::body), &flow.device()).height() * 2;
    const double first = block.table.rows.empty() ? 0 : table.row(0).height() + flow.mm(2);
    flow.ensure(std::min(title + table.headHeight() + first, flow.pageHeight()));
    if (!block.title.empty()) {
        const QString text = kept(block.title);
        flow.text(text, PrintSize::body, flow.palette().ink, 0, {{0, static_cast<int>(text.size()), {}, true}});
    }
    table.set();
    flow.gap(1);
    for (std::size_t n = 0; n < block.table.notes.size(); ++n)
        flow.text(QStringLiteral("[%1] ").arg(n + 1) + kept(block.table.notes[n]), PrintSize::small, soft);
    for (const std::string& remark : block.remarks) flow.text(kept(remark), PrintSize::small, soft);
    flow.gap(2);
}

} // namespace ullage
