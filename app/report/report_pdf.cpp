// SPDX-License-Identifier: GPL-3.0-or-later
// The report as PDF, laid out page by page.
#include "report/kept_text.h"
#include "report/page_flow.h"
#include "report/report_file.h"
#include "report/table_flow.h"

#include "base/language.h"
#include "base/version.h"
#include "style/numbers.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include <algorithm>

namespace ullage {

namespace {

constexpr int dots_per_inch = 1200;

/// Sets one block after the other.
class Setter {
public:
    Setter(PageFlow& flow, const ReportPictures& pictures, const KeptText& kept) : flow_(flow), pictures_(pictures), kept_(kept) {}

    void operator()(const ReportHeading& block) {
        flow_.gap(block.level == 1 ? 5 : 3);
        const bool chapter = block.level == 1;
        if (chapter) flow_.rule(0.2);
        flow_.down(flow_.mm(chapter ? 1.5 : 0));
        flow_.text(kept_(block.text), chapter ? PrintSize::chapter : PrintSize::section, flow_.palette().ink);
        flow_.gap(1.5);
    }
    void operator()(const ReportParagraph& block) {
        const QString lead = block.lead.empty() ? QString() : kept_(block.lead) + QStringLiteral(". ");
        flow_.text(lead + kept_(block.text), PrintSize::body, flow_.palette().ink, 0, {{0, static_cast<int>(lead.size()), {}, true}});
        flow_.gap(1.5);
    }
    void operator()(const ReportFigures& block) { setFigures(block.figures); }
    void operator()(const ReportTable& block) { flow_table(flow_, block, kept_); }
    void operator()(const ReportPicture& block) {
        const PictureContent& content = pictures_.at(block.key);
        const PictureSpec spec = report_picture_spec(content);
        const double unit = flow_.width() / report_text_units;
        const double height = pictureHeight(content);
        flow_.ensure(height + captionHeight());
        const QRectF place(flow_.left(), flow_.y(), spec.size.width() * unit, height);
        if (flow_.painter()) {
            flow_.painter()->save();
            if (const Result<void> painted = paint_picture(*flow_.painter(), place, content, spec); !painted) failure = painted.error();
            flow_.painter()->restore();
        }
        flow_.down(height);
        flow_.text(kept_(block.caption), PrintSize::small, flow_.palette().soft);
        flow_.gap(3);
    }
    void operator()(const ReportFindings& block) {
        for (const ReportFindings::Item& item : block.items) setFinding(item);
    }
    void operator()(const ReportList& block) {
        for (const std::string& item : block.items) {
            const double indent = flow_.mm(4);
            flow_.ensure(line(PrintSize::body));
            if (flow_.painter())
                FlowedText(QStringLiteral("\u2022"), flow_.font(PrintSize::body), flow_.device(), indent)
                    .draw(*flow_.painter(), {flow_.left(), flow_.y()}, 0, 1, flow_.palette().soft);
            flow_.text(kept_(item), PrintSize::body, flow_.palette().ink, indent);
            flow_.gap(0.6);
        }
        flow_.gap(1.5);
    }

    /// What a block needs on one page to begin well.
    double startHeight(const ReportBlock& block) const {
        if (const auto* picture = std::get_if<ReportPicture>(&block)) return pictureHeight(pictures_.at(picture->key)) + captionHeight();
        if (std::holds_alternative<ReportTable>(block)) return flow_.mm(10) + 6 * line(PrintSize::small);
        if (std::holds_alternative<ReportFigures>(block)) return flow_.mm(18);
        return 3 * line(PrintSize::body);
    }
    double headingHeight() const { return line(PrintSize::chapter) + flow_.mm(9); }

    std::optional<Error> failure;

private:
    double line(PrintSize size) const { return QFontMetricsF(flow_.font(size), &flow_.device()).height(); }
    double captionHeight() const { return 2 * line(PrintSize::small); }
    double pictureHeight(const PictureContent& content) const {
        const double wanted = report_picture_spec(content).size.height() * flow_.width() / report_text_units;
        return std::min(wanted, flow_.pageHeight() - captionHeight());
    }

    void setFigures(const std::vector<ReportFigure>& figures) {
        if (figures.empty()) return;
        constexpr std::size_t most_columns = 3;
        const std::size_t columns = std::min(figures.size(), most_columns);
        const double gutter = flow_.mm(4);
        const double width = (flow_.width() - gutter * static_cast<double>(columns - 1)) / static_cast<double>(columns);
        for (std::size_t from = 0; from < figures.size(); from += columns) {
            std::vector<std::vector<FlowedText>> cells;
            double height = 0;
            for (std::size_t f = from; f < std::min(figures.size(), from + columns); ++f) {
                cells.push_back(figureTexts(figures[f], width));
                double own = 0;
                for (const FlowedText& text : cells.back()) own += text.height();
                height = std::max(height, own);
            }
            flow_.ensure(height);
            for (std::size_t c = 0; c < cells.size(); ++c) {
                double y = flow_.y();
                for (std::size_t t = 0; t < cells[c].size(); ++t) {
                    const QColor colour = t == 1 ? flow_.palette().ink : flow_.palette().soft;
                    if (flow_.painter())
                        cells[c][t].draw(*flow_.painter(), {flow_.left() + static_cast<double>(c) * (width + gutter), y}, 0, cells[c][t].lines(),
                                         colour);
                    y += cells[c][t].height();
                }
            }
            flow_.down(height);
            flow_.gap(2);
        }
        flow_.gap(1);
    }

    /// Title, value, and the rest below it.
    std::vector<FlowedText> figureTexts(const ReportFigure& figure, double width) const {
        QStringList rest;
        for (const std::string* part : {&figure.interval, &figure.unit})
            if (!part->empty()) rest << kept_(*part);
        QString below = rest.join(QLatin1Char(' '));
        if (!figure.note.empty()) below += (below.isEmpty() ? QString() : QStringLiteral(", ")) + kept_(figure.note);
        std::vector<FlowedText> texts;
        texts.emplace_back(kept_(figure.title), flow_.font(PrintSize::small), flow_.device(), width);
        texts.emplace_back(kept_(figure.value), flow_.font(PrintSize::figure), flow_.device(), width);
        texts.emplace_back(below, flow_.font(PrintSize::small), flow_.device(), width);
        return texts;
    }

    void setFinding(const ReportFindings::Item& item) {
        const QString sign = weight_sign(item.weight) + QStringLiteral(": ");
        const Palette& palette = flow_.palette();
        const QColor colour = item.weight == Weight::fault ? palette.fault_ink : item.weight == Weight::doubt ? palette.doubt_ink : palette.soft;
        flow_.ensure(3 * line(PrintSize::body));
        flow_.text(sign + kept_(item.sentence), PrintSize::body, palette.ink, 0, {{0, static_cast<int>(sign.size()), colour, true}});
        if (!item.evidence.empty()) flow_.text(kept_(item.evidence), PrintSize::small, palette.soft, flow_.mm(4));
        flow_.gap(2);
    }

    PageFlow& flow_;
    const ReportPictures& pictures_;
    const KeptText& kept_;
};

/// Sets the whole report.
Result<void> set_report(PageFlow& flow, const Report& report, const ReportPictures& pictures) {
    const std::vector<const ReportBlock*> blocks = shown_blocks(report, pictures);
    const KeptText kept(report);
    flow.text(kept(report.title), PrintSize::title, flow.palette().ink);
    flow.text(kept(report.subtitle), PrintSize::body, flow.palette().ink);
    flow.text(kept(report.made), PrintSize::small, flow.palette().soft);
    flow.gap(3);
    Setter setter(flow, pictures, kept);
    for (std::size_t at = 0; at < blocks.size(); ++at) {
        // A heading stays with the headings that follow it and with the beginning of what they head.
        if (std::holds_alternative<ReportHeading>(*blocks[at]) && (at == 0 || !std::holds_alternative<ReportHeading>(*blocks[at - 1]))) {
            double need = 0;
            std::size_t next = at;
            for (; next < blocks.size() && std::holds_alternative<ReportHeading>(*blocks[next]); ++next) need += setter.headingHeight();
            if (next < blocks.size()) need += setter.startHeight(*blocks[next]);
            flow.ensure(std::min(need, flow.pageHeight()));
        }
        std::visit(setter, *blocks[at]);
        if (setter.failure) return *setter.failure;
        if (!flow.goesOn()) return report_given_up();
    }
    return {};
}

/// A report laid out: how, and what that comes to.
struct LaidOut {
    PageFit fit;
    int pages = 0;
    double last_mm = 0; ///< taken of the last page
};

Result<LaidOut> laid_out(QPdfWriter& writer, const Report& report, const ReportPictures& pictures, const ReportLook& look, const PageFit& fit) {
    PageFlow flow(writer, nullptr, {}, {}, 0, fit);
    flow.setTurn(look.turn);
    if (const Result<void> set = set_report(flow, report, pictures); !set) return set.error();
    return LaidOut{fit, flow.page(), flow.taken() / flow.mm(1)};
}

/// The layout whose last page holds more than a few lines: a tighter one that needs a page less, else one that leaves it more of the page before.
Result<LaidOut> best_layout(QPdfWriter& writer, const Report& report, const ReportPictures& pictures, const ReportLook& look) {
    constexpr double least_mm = 40;
    Result<LaidOut> plain = laid_out(writer, report, pictures, look, {});
    if (!plain || plain.value().pages == 1 || plain.value().last_mm >= least_mm) return plain;
    const int pages = plain.value().pages;
    for (const PageFit& fit : {PageFit{0.75}, PageFit{0.5}, PageFit{1, pages - 1, 45}, PageFit{1, pages - 1, 90}}) {
        Result<LaidOut> other = laid_out(writer, report, pictures, look, fit);
        if (!other || other.value().pages < pages || (other.value().pages == pages && other.value().last_mm >= least_mm)) return other;
    }
    return plain;
}

} // namespace

Result<QByteArray> report_pdf(const Report& report, const ReportPictures& pictures, const ReportLook& look) {
    const SpeakingIn speaking(language_in_use(), look.decimal_sign);
    const QString program = QStringLiteral("Ullage %1").arg(shown(program_version()));
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly); // a writer on a device that is not open writes nothing
    QPdfWriter writer(&buffer);
    writer.setResolution(dots_per_inch);
    writer.setPageSize(QPageSize(look.paper == Paper::letter ? QPageSize::Letter : QPageSize::A4));
    writer.setPageMargins(QMarginsF());
    writer.setTitle(shown(report.title));
    writer.setCreator(program);
    const Result<LaidOut> layout = best_layout(writer, report, pictures, look);
    if (!layout) return layout.error();
    QPainter painter;
    if (!painter.begin(&writer))
        return Error{Failure::io, say(phrase("report", "the report could not be put into PDF form")), say(phrase("report", "report")),
                     say(phrase("report", "try HTML instead"))};
    const QString foot = QCoreApplication::translate("report", "%1; measurements of one specimen, not a safety certification").arg(program);
    PageFlow flow(writer, &painter, shown(report.title), foot, layout.value().pages, layout.value().fit);
    flow.setTurn(look.turn);
    const Result<void> set = set_report(flow, report, pictures);
    painter.end();
    if (!set) return set.error();
    return buffer.data();
}

} // namespace ullage
