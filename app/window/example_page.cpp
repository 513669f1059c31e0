// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/example_page.h"

#include "chart_content/comparison_overlays.h"
#include "chart_content/comparison_pictures.h"
#include "document/sample_logbook.h"
#include "style/theme.h"
#include "style/words.h"

#include <QBuffer>

namespace ullage {

namespace {

constexpr double height_share = 0.5; ///< of a drawing's width
constexpr double sharp_scale = 2;

QString paragraph(const QString& html) { return QStringLiteral("<p>%1</p>").arg(html); }

/// As part of the page, so that it needs no file.
QString image_html(const PictureContent& content, int width_px) {
    PictureSpec spec;
    spec.size = QSize(width_px, static_cast<int>(width_px * height_share));
    spec.scale = sharp_scale;
    spec.palette = current_palette();
    const auto image = render_picture(content, spec);
    if (!image) return paragraph(text_of(image.error().sentence()).toHtmlEscaped());
    QByteArray png;
    QBuffer buffer(&png);
    buffer.open(QIODevice::WriteOnly);
    image.value().save(&buffer, "PNG");
    return QStringLiteral("<p><img width='%1' height='%2' src='data:image/png;base64,%3'></p>")
        .arg(spec.size.width())
        .arg(spec.size.height())
        .arg(QString::fromLatin1(png.toBase64()));
}

QString meanings_html() {
    const std::pair<QString, QString> meanings[] = {
        {tr("delivered energy"), tr("what the meter's register counted at the socket, in Wh, with ± at 95 %")},
        {tr("usable fraction"), tr("delivered energy from full to cut-off over rated energy, at the load of that run")},
        {tr("no-load draw"), tr("power that the unit takes for itself while its output is on, in W, seen from the socket")},
        {tr("deliverable energy"), tr("what the unit would deliver at a load at which it was not drained, from all its drains")},
        {tr("difference ±"),
         tr("the two are clearly different where its 95 % interval does not hold 0; else nobody can say from these meters which unit is better")},
    };
    QString html;
    for (const auto& [word, meaning] : meanings) html += QStringLiteral("<li><b>%1</b>: %2</li>").arg(word.toHtmlEscaped(), meaning.toHtmlEscaped());
    return QStringLiteral("<h3>%1</h3><ul>%2</ul>").arg(tr("What the quantities mean"), html);
}

} // namespace

std::optional<PictureContent> example_picture(const WorkedExample& example, const ExampleStep& step) {
    if (step.picture == "as-tested") return comparison_bars(example.tested, compare_at(example.tested, std::nullopt));
    if (step.picture == "against-load") return fraction_overlay(example.tested, example.fair);
    if (step.picture == "at-load") return comparison_bars(example.tested, example.fair);
    return std::nullopt;
}

QString worked_example_html(int width_px) {
    const auto records = sample_runs();
    const auto example = records ? worked_example(records.value()) : Result<WorkedExample>(records.error());
    if (!example) return paragraph(text_of(example.error().sentence()).toHtmlEscaped());
    QString html = paragraph(tr("Three units of the sample logbook (Logbook, Open the sample logbook) as the comparison page shows them. Units and "
                                "readings are invented; the figures are worked out as you read."));
    for (const ExampleStep& step : example.value().steps) {
        html += QStringLiteral("<h3>%1</h3>").arg(text_of(step.title).toHtmlEscaped());
        for (const std::string& sentence : step.sentences) html += paragraph(text_of(sentence).toHtmlEscaped());
        if (const auto picture = example_picture(example.value(), step)) html += image_html(*picture, width_px);
    }
    return html + meanings_html();
}

} // namespace ullage
