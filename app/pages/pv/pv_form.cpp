// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/pv/pv_form.h"

#include "pv/module_voltage.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage {

namespace {

const PvKey& key_of(const std::string& name) { return *std::ranges::find(pv_keys(), std::string_view(name), &PvKey::name); }

QLabel* group(const QString& title) {
    auto* label = new QLabel(title);
    set_text_style(*label, Tone::soft, TextSize::group);
    label->setContentsMargins(0, spacing::grid_px, 0, 0);
    return label;
}

/// "voc_v" to "pvVocVEdit".
QString edit_name(const char* key) {
    QString name = QStringLiteral("pv");
    bool upper = true;
    for (const QChar letter : QString::fromLatin1(key)) {
        if (letter != QLatin1Char('_')) name += upper ? letter.toUpper() : letter;
        upper = letter == QLatin1Char('_');
    }
    return name + QStringLiteral("Edit");
}

} // namespace

PvForm::PvForm(QWidget* parent) : QWidget(parent), unit_(new QComboBox), cells_(new QComboBox), error_(new QLabel) {
    setObjectName(QStringLiteral("pvForm"));
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(spacing::panel_gap_px);
    grid->setVerticalSpacing(spacing::half_px);
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
    int row = 0;
    addField(*grid, row, 0, "name", tr("Sheet"), tr("what you call it"));
    addChoice(*grid, row, 1, *unit_, QStringLiteral("pvUnit"), tr("Unit whose PV input is meant"));
    row += 2;
    grid->addWidget(group(tr("One module, from its label")), row++, 0, 1, 2);
    addField(*grid, row, 0, "module", tr("Module"), tr("as printed"));
    addChoice(*grid, row, 1, *cells_, QStringLiteral("pvCells"), tr("Cells"));
    row += 2;
    addField(*grid, row, 0, "voc_v", tr("Voc, open circuit / V"), tr("24.3"));
    addField(*grid, row, 1, "vmp_v", tr("Vmp, maximum power / V"), tr("20.4"));
    row += 2;
    addField(*grid, row, 0, "isc_a", tr("Isc, short circuit / A"), tr("10.2"));
    addField(*grid, row, 1, "imp_a", tr("Imp, maximum power / A"), tr("9.8"));
    row += 2;
    addField(*grid, row, 0, "voc_coefficient", tr("Coefficient of Voc"), tr("−0.30 %/°C or −73 mV/°C"));
    addField(*grid, row, 1, "vmp_coefficient", tr("Coefficient of Vmp"), tr("−0.40 %/°C"));
    row += 2;
    addField(*grid, row, 0, "power_coefficient", tr("Coefficient of power"), tr("−0.38 %/°C"));
    addField(*grid, row, 1, "noct_c", tr("NOCT / °C"), tr("45"));
    row += 2;
    grid->addWidget(group(tr("How they are wired")), row++, 0, 1, 2);
    addField(*grid, row, 0, "series", tr("Modules in series"), tr("1"));
    addField(*grid, row, 1, "parallel", tr("Strings in parallel"), tr("1"));
    row += 2;
    grid->addWidget(group(tr("The place")), row++, 0, 1, 2);
    addField(*grid, row, 0, "coldest_c", tr("Coldest ambient by day / °C"), tr("−15"));
    addField(*grid, row, 1, "hottest_c", tr("Hottest ambient / °C"), tr("35"));
    row += 2;
    addField(*grid, row, 0, "hottest_cell_c", tr("Hottest cell, if known / °C"), tr("from ambient and NOCT"));
    addField(*grid, row, 1, "irradiance_w_m2", tr("Irradiance / W/m²"), tr("1000"));
    row += 2;
    addField(*grid, row, 0, "remark", tr("Remark"), {});
    cells_->addItem(tr("crystalline silicon"), true);
    cells_->addItem(tr("other"), false);
    error_->setObjectName(QStringLiteral("pvErrorLabel"));
    error_->setTextFormat(Qt::PlainText);
    error_->setWordWrap(true);
    set_text_style(*error_, Tone::fault, TextSize::caption);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::page_margin_px, spacing::panel_gap_px, spacing::page_margin_px, spacing::panel_gap_px);
    column->addLayout(grid);
    column->addWidget(error_);
    column->addStretch();
    for (auto* combo : {unit_, cells_})
        connect(combo, &QComboBox::currentIndexChanged, this, [this] {
            if (filling_) return;
            readFields();
            emit typed();
            emit committed();
        });
}

void PvForm::addField(QGridLayout& grid, int row, int column, const char* key, const QString& title, const QString& placeholder) {
    auto* label = new QLabel(title);
    set_text_style(*label, Tone::soft, TextSize::caption);
    auto* edit = new QLineEdit;
    edit->setObjectName(edit_name(key));
    edit->setPlaceholderText(placeholder);
    edit->setAccessibleName(title);
    edit->setToolTip(text_of(key_of(key).help));
    label->setBuddy(edit);
    grid.addWidget(label, row, column);
    grid.addWidget(edit, row + 1, column);
    fields_.push_back({key, edit});
    connect(edit, &QLineEdit::textEdited, this, [this] {
        readFields();
        emit typed();
    });
    connect(edit, &QLineEdit::editingFinished, this, &PvForm::committed);
}

void PvForm::addChoice(QGridLayout& grid, int row, int column, QComboBox& combo, const QString& name, const QString& title) {
    auto* label = new QLabel(title);
    set_text_style(*label, Tone::soft, TextSize::caption);
    combo.setObjectName(name + QStringLiteral("Combo"));
    combo.setAccessibleName(title);
    combo.setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    label->setBuddy(&combo);
    grid.addWidget(label, row, column);
    grid.addWidget(&combo, row + 1, column);
}

void PvForm::setSheet(const PvSheet& sheet, const std::vector<Unit>& units) {
    // What is half typed must survive news of other things.
    const bool same = shown_.uuid == sheet.uuid && units_ == units && (shown_ == sheet || (read_ && *read_ == sheet));
    shown_ = sheet;
    if (same) return;
    fill(sheet, units);
    readFields();
}

void PvForm::fill(const PvSheet& sheet, const std::vector<Unit>& units) {
    filling_ = true;
    units_ = units;
    PvSheetText text;
    text.sheet = sheet;
    for (const Field& field : fields_) {
        field.edit->setText(raw_text(key_of(field.key).text(text)));
        field.edit->setCursorPosition(0);
    }
    unit_->clear();
    unit_->addItem(tr("none chosen"), QString());
    for (const Unit& unit : units) unit_->addItem(text_of(unit.name), raw_text(unit.uuid));
    unit_->setCurrentIndex(std::max(0, unit_->findData(raw_text(sheet.unit_uuid))));
    cells_->setCurrentIndex(sheet.crystalline_silicon ? 0 : 1);
    filling_ = false;
}

void PvForm::readFields() {
    for (const Field& field : fields_) set_wrong(*field.edit, false);
    error_->clear();
    read_.reset();
    PvSheetText text;
    for (const Field& field : fields_) {
        const std::string typed = utf8_of(field.edit->text().trimmed());
        if (typed.empty()) continue;
        if (const Result<void> done = key_of(field.key).read(text, typed); !done) return explain(field.key, text_of(done.error().sentence()));
    }
    PvSheet sheet = text.sheet;
    sheet.uuid = shown_.uuid;
    sheet.unit_uuid = utf8_of(unit_->currentData().toString());
    sheet.crystalline_silicon = cells_->currentData().toBool();
    if (sheet.name.empty()) return explain("name", tr("The sheet needs a name, by which it is found again."));
    if (const Result<void> good = check_pv_sheet(sheet); !good) {
        const Error& error = good.error();
        return explain(error.where, text_of(error.what + "; " + error.remedy));
    }
    read_ = std::move(sheet);
}

void PvForm::explain(const std::string& key, const QString& sentence) {
    const auto field = std::ranges::find(fields_, key, &Field::key);
    QString where;
    if (field != fields_.end()) {
        set_wrong(*field->edit, true);
        where = field->edit->accessibleName() + QStringLiteral(": ");
    }
    error_->setText(where + sentence);
}

} // namespace ullage
