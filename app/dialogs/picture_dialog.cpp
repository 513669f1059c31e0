// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/picture_dialog.h"

#include "base/number.h"
#include "dialogs/field_text.h"
#include "style/words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

constexpr double px_per_inch = 96; // CSS Values and Units, level 3, 5.2: 1 in = 96 px = 25.4 mm
constexpr double mm_per_inch = 25.4;
constexpr double longest_px = 1e6; // beyond every limit of a picture, within those of an int

std::function<Result<double>(std::string_view)> parse_side(const Phrase& what) {
    return number_in({{"mm", px_per_inch / mm_per_inch}, {"cm", 10 * px_per_inch / mm_per_inch}, {"in", px_per_inch}, {"px", 1}}, {say(what)});
}

QString mm_text(int px) { return raw_text(exact_text(std::round(10 * px * mm_per_inch / px_per_inch) / 10)) + QStringLiteral(" mm"); }

int rounded_px(double px) { return static_cast<int>(std::round(std::min(px, longest_px))); }

} // namespace

PictureDialog::PictureDialog(const PictureSpec& start, QWidget* parent, Purpose purpose)
    : FormDialog(purpose == Purpose::save ? tr("Save picture") : tr("Size and colours of the picture"),
                 purpose == Purpose::save ? tr("Save…") : tr("Use"), parent),
      spec_(start), form_(purpose == Purpose::save ? addChoice(QStringLiteral("form"), tr("&Form")) : nullptr) {
    setObjectName(QStringLiteral("pictureDialog"));
    if (form_) {
        form_->addItem(tr("PNG, pixels for a page or a message"), QStringLiteral("png"));
        form_->addItem(tr("SVG, lines that stay sharp at any size"), QStringLiteral("svg"));
    }
    width_ = addLine(QStringLiteral("width"), tr("&Width"), tr("160 mm or 605 px"));
    height_ = addLine(QStringLiteral("height"), tr("&Height"), tr("90 mm or 340 px"));
    scale_ = addChoice(QStringLiteral("scale"), tr("&Sharpness of PNG"));
    colours_ = addChoice(QStringLiteral("colours"), tr("&Colours"));
    words_ = new QCheckBox(tr("&Title, key and source in the picture"));
    words_->setObjectName(QStringLiteral("pictureWordsCheck"));
    words_->setChecked(start.with_words);
    addWide(words_);
    pixels_label_ = addParagraph(QStringLiteral("pixels"), {});
    width_->setText(mm_text(start.size.width()));
    height_->setText(mm_text(start.size.height()));
    for (const double dots : {96.0, 192.0, 300.0, 600.0}) scale_->addItem(tr("%1 dots an inch").arg(dots), dots / px_per_inch);
    int nearest = 0;
    for (int i = 1; i < scale_->count(); ++i)
        if (std::abs(scale_->itemData(i).toDouble() - start.scale) < std::abs(scale_->itemData(nearest).toDouble() - start.scale)) nearest = i;
    scale_->setCurrentIndex(nearest);
    colours_->addItem(tr("light"), static_cast<int>(Colours::light));
    colours_->addItem(tr("dark"), static_cast<int>(Colours::dark));
    colours_->addItem(tr("on white, for print"), static_cast<int>(Colours::print));
    const bool white = start.ground && *start.ground == QColor(Qt::white) && !start.palette.dark;
    colours_->setCurrentIndex(static_cast<int>(start.palette.dark ? Colours::dark : white ? Colours::print : Colours::light));
    for (auto* field : {width_, height_}) connect(field, &QLineEdit::textChanged, this, &PictureDialog::showPixels);
    connect(scale_, &QComboBox::currentIndexChanged, this, &PictureDialog::showPixels);
    showPixels();
    width_->setFocus();
}

std::optional<double> PictureDialog::side(const QLineEdit& field) const {
    const auto parsed = parse_side(phrase("dialogs", "the side"))(utf8_of(field.text().trimmed()));
    return parsed ? std::optional(parsed.value()) : std::nullopt;
}

void PictureDialog::showPixels() {
    const auto width = side(*width_), height = side(*height_);
    if (!width || !height) {
        pixels_label_->setText(tr("Text keeps its size in mm: a larger picture has more room around it."));
        return;
    }
    const double scale = scale_->currentData().toDouble();
    pixels_label_->setText(tr("PNG: %1 × %2 pixels. SVG is sharp at any size. Text keeps its size in mm: a larger picture has more room around it.")
                               .arg(std::round(rounded_px(*width) * scale), 0, 'f', 0)
                               .arg(std::round(rounded_px(*height) * scale), 0, 'f', 0));
}

void PictureDialog::read() {
    PictureSpec chosen = spec_;
    for (const auto& [field, what] : {std::pair{width_, phrase("dialogs", "the width")}, std::pair{height_, phrase("dialogs", "the height")}}) {
        if (field->text().trimmed().isEmpty()) explain(field, tr("A picture needs this side, such as 160 mm."));
        const int px = rounded_px(number(field, parse_side(what)).value_or(0));
        field == width_ ? chosen.size.setWidth(px) : chosen.size.setHeight(px);
    }
    chosen.scale = scale_->currentData().toDouble();
    chosen.with_words = words_->isChecked();
    if (form_) ending_ = form_->currentData().toString();
    const auto colours = static_cast<Colours>(colours_->currentData().toInt());
    chosen.palette = colours == Colours::dark ? dark_palette() : light_palette();
    chosen.ground = colours == Colours::print ? std::optional(QColor(Qt::white)) : std::nullopt;
    if (!side(*width_) || !side(*height_)) return;
    if (const auto checked = check_image(chosen); !checked) explain(width_, text_of(checked.error().sentence()));
    else spec_ = chosen;
}

} // namespace ullage
