// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/unit_report_form.h"

#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>

#include <algorithm>

namespace ullage {

namespace {

constexpr int parts_in_a_row = 3;
constexpr int introduction_lines = 4, photo_lines = 5;

QString part_title(UnitReportPart part) {
    switch (part) {
    case UnitReportPart::claims: return tr("Claims");
    case UnitReportPart::drains: return tr("Every drain");
    case UnitReportPart::curves: return tr("Curves");
    case UnitReportPart::gauge: return tr("Gauge");
    case UnitReportPart::photos: return tr("Photos");
    case UnitReportPart::other_runs: return tr("Charges and outputs");
    case UnitReportPart::budget: return tr("Uncertainty budgets");
    case UnitReportPart::method: return tr("Method");
    case UnitReportPart::readings: return tr("Readings");
    }
    return {};
}

} // namespace

UnitReportForm::UnitReportForm(const QString& unit_name, Paper paper, const Publisher& publisher, const std::vector<OfferedPhoto>& photos,
                               QWidget* parent)
    : ReportForm(unit_name, paper, {},
                 tr("For readers: the answer first, then claims, every drain, the gauge, and what it is based on. Tags, prices paid and remarks stay "
                    "out of it. Numbers have the decimal sign of your system."),
                 parent),
      publisher_(publisher), length_(addChoice(QStringLiteral("length"), tr("&Length"))) {
    setObjectName(QStringLiteral("unitReportForm"));
    length_->addItem(tr("whole, with what it is based on"), false);
    length_->addItem(tr("short, two pages"), true);
    addParts(!photos.empty());
    if (!photos.empty()) addPhotos(photos);
    addPublisher();
    const auto only_of_whole = [this] {
        const bool whole = !length_->currentData().toBool();
        for (const auto& [part, box] : parts_) box->setEnabled(whole);
        if (photo_list_) photo_list_->setEnabled(whole);
    };
    connect(length_, &QComboBox::currentIndexChanged, this, only_of_whole);
    only_of_whole();
}

void UnitReportForm::addParts(bool with_photos) {
    addGroup(tr("Sections of the whole report"));
    auto* box = new QWidget;
    auto* grid = new QGridLayout(box);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(spacing::page_margin_px);
    int place = 0;
    for (const UnitReportPart part : all_unit_report_parts) {
        if (part == UnitReportPart::photos && !with_photos) continue;
        auto* check = new QCheckBox(part_title(part));
        check->setObjectName(raw_text(unit_report_part_key(part)) + QStringLiteral("PartCheck"));
        check->setChecked(true);
        parts_.emplace_back(part, check);
        grid->addWidget(check, place / parts_in_a_row, place % parts_in_a_row);
        ++place;
    }
    addWide(box);
}

void UnitReportForm::addPhotos(const std::vector<OfferedPhoto>& photos) {
    addGroup(tr("Photos as evidence"));
    photo_list_ = new QListWidget;
    photo_list_->setObjectName(QStringLiteral("reportPhotosList"));
    photo_list_->setAccessibleName(tr("Photos as evidence"));
    photo_list_->setMaximumHeight((photo_lines + 1) * fontMetrics().height());
    for (const OfferedPhoto& photo : photos) {
        auto* item = new QListWidgetItem(text_of(photo.caption), photo_list_);
        item->setData(Qt::UserRole, raw_text(photo.uuid));
        item->setFlags(item->flags() | Qt::ItemIsUserCheckable);
        // What a photo shows beside the display is the tester's to judge: none goes out unasked.
        item->setCheckState(Qt::Unchecked);
    }
    photo_list_->setCurrentRow(0);
    addWide(photo_list_);
}

void UnitReportForm::addPublisher() {
    addGroup(tr("Published by, kept in the logbook"));
    name_ = addLine(QStringLiteral("publisherName"), tr("&Name"), tr("yours, or that of the paper"));
    title_ = addLine(QStringLiteral("publisherTitle"), tr("&Title"), tr("in place of “%1: test report”").arg(tr("name of the unit")));
    auto* label = new QLabel(tr("&Introduction"));
    introduction_ = new QPlainTextEdit;
    introduction_->setObjectName(QStringLiteral("publisherIntroductionEdit"));
    introduction_->setAccessibleName(tr("introduction"));
    introduction_->setPlaceholderText(tr("a paragraph before the answers"));
    introduction_->setTabChangesFocus(true);
    introduction_->setMaximumHeight((introduction_lines + 1) * fontMetrics().height());
    label->setBuddy(introduction_);
    addWide(label);
    addWide(introduction_);
    licence_ = addLine(QStringLiteral("publisherLicence"), tr("Lice&nce of the text"), tr("such as CC BY 4.0"));
    name_->setText(raw_text(publisher_.name));
    title_->setText(raw_text(publisher_.title));
    introduction_->setPlainText(raw_text(publisher_.introduction));
    licence_->setText(raw_text(publisher_.licence));
}

void UnitReportForm::read() {
    ReportForm::read();
    choice_ = {};
    choice_.in_short = length_->currentData().toBool();
    for (const auto& [part, box] : parts_)
        if (!box->isChecked()) choice_.parts.erase(part);
    photos_.clear();
    if (photo_list_)
        for (int row = 0; row < photo_list_->count(); ++row)
            if (const auto* item = photo_list_->item(row); item->checkState() == Qt::Checked)
                photos_.push_back(id_of<PhotoId>(item->data(Qt::UserRole).toString()));
    publisher_ = {text(name_), text(title_), utf8_of(introduction_->toPlainText().trimmed()), text(licence_)};
}

} // namespace ullage
