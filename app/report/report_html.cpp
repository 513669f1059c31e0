// SPDX-License-Identifier: GPL-3.0-or-later
// The report as one HTML page that is well-formed XML too.
#include "base/language.h"
#include "report/kept_text.h"
#include "report/report_file.h"

#include "style/numbers.h"
#include "style/words.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPainter>
#include <QRegularExpression>
#include <QSvgGenerator>

namespace ullage {

namespace {

constexpr const char* style = R"(
@page { size: %1; margin: 18mm 16mm 20mm; @bottom-right { content: "page " counter(page) " of " counter(pages); } }
:root { color-scheme: light dark; --ground: #FFFFFF; --ink: #1D2730; --soft: #5C6670; --line: #DAD7CE; --accent: #0B5E8A;
        --fault: #FBE7E2; --doubt: #FFF4DC; }
@media screen and (prefers-color-scheme: dark) {
  :root { --ground: #14191E; --ink: #E8EAEB; --soft: #97A3AD; --line: #343E47; --accent: #5DB3DE; --fault: #4A231C; --doubt: #453818; }
}
body { margin: 32px auto; max-width: 960px; padding: 0 16px; background: var(--ground); color: var(--ink);
       font: 15px/1.5 "DejaVu Sans", system-ui, sans-serif; }
h1 { font-size: 26px; margin: 0; }
h2 { font-size: 19px; margin: 32px 0 8px; padding-top: 8px; border-top: 1px solid var(--line); }
h3 { font-size: 16px; margin: 20px 0 4px; }
p, li { max-width: 90ch; overflow-wrap: anywhere; }
p { margin: 0 0 8px; }
.soft, .remark, .note, .interval, figcaption, caption, sup { color: var(--soft); }
.remark, .note, figcaption, .evidence { font-size: 13px; }
a { color: var(--accent); }
.figures { display: flex; flex-wrap: wrap; gap: 8px 32px; margin: 12px 0; padding: 0; list-style: none; }
.figures li { min-width: 110px; }
.figures .title, .figures .note { display: block; font-size: 13px; color: var(--soft); }
.figures .value { font-size: 22px; font-weight: bold; font-variant-numeric: tabular-nums lining-nums; }
.scroll { overflow-x: auto; margin: 12px 0 4px; }
table { border-collapse: collapse; width: 100%; font-size: 13px; }
caption { text-align: left; font-weight: bold; color: var(--ink); padding: 4px 0; }
th, td { padding: 4px 8px 4px 0; text-align: left; vertical-align: top; border-bottom: 1px solid var(--line); overflow-wrap: break-word; }
thead th { font-weight: normal; color: var(--soft); vertical-align: bottom; }
tbody th { font-weight: normal; }
.number { text-align: right; font-variant-numeric: tabular-nums lining-nums; overflow-wrap: normal; white-space: nowrap; }
figure { margin: 12px 0; }
figure svg, figure img { display: block; max-width: 100%; height: auto; border-radius: 6px; }
.data { font-size: 13px; margin: 0 0 12px; }
@media (max-width: 600px) {
  body { margin: 16px auto; }
  h1 { font-size: 22px; }
  .figures { gap: 8px 20px; }
  table { min-width: 640px; } /* rather scrolled sideways than cut into letters */
}
.findings { list-style: none; padding: 0; }
.findings li { padding: 6px 10px; margin: 0 0 6px; border-left: 4px solid var(--line); }
.findings .fault { background: var(--fault); } .findings .doubt { background: var(--doubt); } .findings .note { color: inherit; }
@media print {
  body { margin: 0; max-width: none; padding: 0; font-size: 9.5pt; }
  .scroll { overflow: visible; }
  th, td { overflow-wrap: anywhere; }
  .number { white-space: normal; }
  .data { display: none; }
  thead { display: table-header-group; }
  tr, figure, .findings li, .figures { break-inside: avoid; }
  h2, h3, caption { break-after: avoid; }
}
)";

/// The drawing as an SVG element whose names do not clash with those of the others in the page.
Result<QString> svg_element(const PictureContent& content, const QString& caption, int number) {
    const PictureSpec spec = report_picture_spec(content);
    QBuffer buffer;
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setResolution(96); // a unit of the drawing is a CSS pixel
    generator.setSize(spec.size);
    generator.setViewBox(QRect(QPoint(), spec.size));
    generator.setTitle(QString());
    generator.setDescription(QString());
    QPainter painter;
    if (!painter.begin(&generator))
        return Error{Failure::io, say(phrase("report", "a drawing could not be put into SVG form")), say(phrase("report", "report")),
                     say(phrase("report", "try PDF instead"))};
    const Result<void> painted = paint_picture(painter, QRectF(QPointF(), QSizeF(spec.size)), content, spec);
    painter.end();
    if (!painted) return painted.error();
    QString svg = QString::fromUtf8(buffer.data());
    svg.remove(0, svg.indexOf(QLatin1String("<svg")));
    static const QRegularExpression id(QStringLiteral("(\\bid=\"|url\\(#|href=\"#)"));
    svg.replace(id, QStringLiteral("\\1d%1-").arg(number));
    // Titles come from the page's own caption; an empty one would hide it from a screen reader.
    static const QRegularExpression own_words(QStringLiteral("<(title|desc)>.*?</\\1>"), QRegularExpression::DotMatchesEverythingOption);
    svg.remove(own_words);
    // Sizes in CSS pixels, which scale with the page.
    static const QRegularExpression sides(QStringLiteral("^<svg width=\"[^\"]*\" height=\"[^\"]*\""));
    svg.replace(sides, QStringLiteral("<svg width=\"%1\" height=\"%2\"").arg(spec.size.width()).arg(spec.size.height()));
    svg.insert(4, QStringLiteral(" role=\"img\" aria-label=\"%1\"").arg(caption));
    return svg;
}

/// A photo as it is seen, without what its camera wrote beside it, such as the place.
QString photo_element(const PhotoContent& photo, const QString& caption) {
    constexpr int quality = 85;
    const QSize size = report_picture_spec(photo).size;
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QImage(photo.image).convertToFormat(QImage::Format_RGB32).save(&buffer, "JPEG", quality);
    return QStringLiteral("<img alt=\"%1\" width=\"%2\" height=\"%3\" src=\"data:image/jpeg;base64,")
               .arg(caption, QString::number(size.width()), QString::number(size.height())) +
           QString::fromLatin1(bytes.toBase64()) + QStringLiteral("\"/>");
}

class Writer {
public:
    Writer(const Report& report, const ReportPictures& pictures, QString& out) : kept_(report), pictures_(pictures), out_(out) {}

    [[nodiscard]] QString escaped(std::string_view text) const { return kept_(text).toHtmlEscaped(); }

    void operator()(const ReportHeading& block) {
        out_ += QStringLiteral("<h%1>%2</h%1>\n").arg(QString::number(block.level + 1), escaped(block.text));
    }
    void operator()(const ReportParagraph& block) {
        const QString lead = block.lead.empty() ? QString() : QStringLiteral("<strong>%1.</strong> ").arg(escaped(block.lead));
        out_ += QStringLiteral("<p>") + lead + escaped(block.text) + QStringLiteral("</p>\n");
    }
    void operator()(const ReportFigures& block) {
        out_ += QStringLiteral("<ul class=\"figures\">\n");
        for (const ReportFigure& figure : block.figures) {
            out_ += QStringLiteral("<li><span class=\"title\">") + escaped(figure.title) + QStringLiteral("</span> <span class=\"value\">") +
                    escaped(figure.value) + QStringLiteral("</span>");
            for (const std::string* soft : {&figure.interval, &figure.unit})
                if (!soft->empty()) out_ += QStringLiteral("\u00A0<span class=\"soft\">") + escaped(*soft) + QStringLiteral("</span>");
            if (!figure.note.empty()) out_ += QStringLiteral(" <span class=\"note\">") + escaped(figure.note) + QStringLiteral("</span>");
            out_ += QStringLiteral("</li>\n");
        }
        out_ += QStringLiteral("</ul>\n");
    }
    void operator()(const ReportTable& block) {
        ++tables_;
        out_ += QStringLiteral("<div class=\"scroll\">\n<table>\n");
        if (!block.title.empty()) out_ += QStringLiteral("<caption>") + escaped(block.title) + QStringLiteral("</caption>\n");
        out_ += QStringLiteral("<thead><tr>");
        for (std::size_t c = 0; c < block.table.heads.size(); ++c)
            out_ += QStringLiteral("<th scope=\"col\"%1>").arg(classOf(block.table, c)) + escaped(block.table.heads[c]) + QStringLiteral("</th>");
        out_ += QStringLiteral("</tr></thead>\n<tbody>\n");
        for (const auto& row : block.table.rows) {
            out_ += QStringLiteral("<tr>");
            for (std::size_t c = 0; c < row.size(); ++c) cell(block.table, row[c], c);
            out_ += QStringLiteral("</tr>\n");
        }
        out_ += QStringLiteral("</tbody>\n</table>\n</div>\n");
        if (block.whole)
            out_ += QStringLiteral("<p class=\"data\"><a download=\"table-%1.csv\" href=\"data:text/csv;charset=utf-8,").arg(tables_) +
                    QString::fromLatin1(raw_text(table_text(*block.whole, TableFormat::csv)).toUtf8().toPercentEncoding()) +
                    QStringLiteral("\">%1</a></p>\n").arg(QCoreApplication::translate("report", "The numbers of this table in full (CSV)"));
        for (std::size_t n = 0; n < block.table.notes.size(); ++n)
            out_ += QStringLiteral("<p class=\"note\" id=\"%1\"><sup>%2</sup> ").arg(noteId(n + 1), QString::number(n + 1)) +
                    escaped(block.table.notes[n]) + QStringLiteral("</p>\n");
        for (const std::string& remark : block.remarks) out_ += QStringLiteral("<p class=\"remark\">") + escaped(remark) + QStringLiteral("</p>\n");
    }
    void operator()(const ReportPicture& block) {
        const QString caption = escaped(block.caption);
        if (const auto* photo = std::get_if<PhotoContent>(&pictures_.at(block.key))) {
            out_ += QStringLiteral("<figure>\n") + photo_element(*photo, caption) + QStringLiteral("<figcaption>") + caption +
                    QStringLiteral("</figcaption>\n</figure>\n");
            return;
        }
        const Result<QString> svg = svg_element(pictures_.at(block.key), caption, ++drawings_);
        if (!svg) {
            failure = svg.error();
            return;
        }
        out_ += QStringLiteral("<figure>\n") + svg.value() + QStringLiteral("<figcaption>") + caption + QStringLiteral("</figcaption>\n</figure>\n");
    }
    void operator()(const ReportFindings& block) {
        out_ += QStringLiteral("<ul class=\"findings\">\n");
        for (const ReportFindings::Item& item : block.items)
            out_ += QStringLiteral("<li class=\"%1\"><strong>%2</strong> ").arg(escaped(weight_text(item.weight)), weight_sign(item.weight)) +
                    escaped(item.sentence) + QStringLiteral("<br/><span class=\"evidence\">") + escaped(item.evidence) +
                    QStringLiteral("</span></li>\n");
        out_ += QStringLiteral("</ul>\n");
    }
    void operator()(const ReportList& block) {
        out_ += QStringLiteral("<ul>\n");
        for (const std::string& item : block.items) out_ += QStringLiteral("<li>") + escaped(item) + QStringLiteral("</li>\n");
        out_ += QStringLiteral("</ul>\n");
    }

    std::optional<Error> failure;

private:
    static QString classOf(const PrintedTable& table, std::size_t column) {
        return table.right[column] ? QStringLiteral(" class=\"number\"") : QString();
    }
    [[nodiscard]] QString noteId(std::size_t number) const { return QStringLiteral("note-%1-%2").arg(tables_).arg(number); }

    void cell(const PrintedTable& table, const PrintedCell& cell, std::size_t column) {
        const bool head = column == 0 && !table.right[column];
        const QString tag = head ? QStringLiteral("th") : QStringLiteral("td");
        out_ += QLatin1Char('<') + tag + (head ? QStringLiteral(" scope=\"row\"") : QString()) + classOf(table, column) + QLatin1Char('>') +
                escaped(cell.value);
        if (!cell.interval.empty()) out_ += QStringLiteral("\u00A0<span class=\"interval\">") + escaped(cell.interval) + QStringLiteral("</span>");
        if (cell.note != 0)
            out_ += QStringLiteral(" <sup><a href=\"#%1\">%2</a></sup>").arg(noteId(static_cast<std::size_t>(cell.note)), QString::number(cell.note));
        out_ += QStringLiteral("</") + tag + QLatin1Char('>');
    }

    const KeptText kept_;
    const ReportPictures& pictures_;
    QString& out_;
    int tables_ = 0, drawings_ = 0;
};

} // namespace

Result<QByteArray> report_html(const Report& report, const ReportPictures& pictures, const ReportLook& look) {
    const SpeakingIn speaking(language_in_use(), look.decimal_sign);
    QString out;
    Writer writer(report, pictures, out);
    const QString title = writer.escaped(report.title);
    out = QStringLiteral("<!DOCTYPE html>\n<html lang=\"%1\" dir=\"ltr\" xmlns=\"http://www.w3.org/1999/xhtml\">\n<head>\n<meta charset=\"utf-8\"/>\n"
                         "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src data:; style-src 'unsafe-inline'\"/>\n"
                         "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>")
              .arg(raw_text(language_in_use().code()));
    out += title + QStringLiteral("</title>\n<style>") +
           QString::fromUtf8(style).replace(QLatin1String("%1"), look.paper == Paper::letter ? QStringLiteral("letter") : QStringLiteral("A4")) +
           QStringLiteral("</style>\n</head>\n<body>\n<main>\n<header>\n<h1>") + title + QStringLiteral("</h1>\n<p>") +
           writer.escaped(report.subtitle) + QStringLiteral("</p>\n<p class=\"soft\">") + writer.escaped(report.made) +
           QStringLiteral("</p>\n</header>\n");
    for (const ReportBlock* block : shown_blocks(report, pictures)) {
        std::visit(writer, *block);
        if (writer.failure) return *writer.failure;
        if (!look.goes_on()) return report_given_up();
    }
    return (out + QStringLiteral("</main>\n</body>\n</html>\n")).toUtf8();
}

} // namespace ullage
