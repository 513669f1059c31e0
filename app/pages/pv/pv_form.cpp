// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/pv/pv_form.h"

#include "pv/module_voltage.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QComboBox>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

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

PvForm::PvForm(QWidget* parent) : QWidget(parent), unit_(new QComboBox), cells_(new QComboBox), error_(new QLabel), grid_(new QGridLayout) {
    setObjectName(QStringLiteral("pvForm"));
    grid_->setHorizontalSpacing(spacing::panel_gap_px);
    grid_->setVerticalSpacing(spacing::half_px);
    addField("name", tr("Sheet"), tr("what you call it"));
    addChoice(*unit_, QStringLiteral("pvUnit"), tr("Unit whose PV input is meant"));
    addGroup(tr("One module, from its label"));
    addField("module", tr("Module"), tr("as printed"));
    addChoice(*cells_, QStringLiteral("pvCells"), tr("Cells"));
    addField("voc_v", tr("Voc, open circuit / V"), tr("24.3"));
    addField("vmp_v", tr("Vmp, maximum power / V"), tr("20.4"));
    addField("isc_a", tr("Isc, short circuit / A"), tr("10.2"));
    addField("imp_a", tr("Imp, maximum power / A"), tr("9.8"));
    addField("voc_coefficient", tr("Coefficient of Voc"), tr("−0.30 %/°C or −73 mV/°C"));
    addField("voc_tolerance_percent", tr("Tolerance of its voltages / %"), tr("3"));
    addField("vmp_coefficient", tr("Coefficient of Vmp"), tr("−0.40 %/°C"));
    addField("power_coefficient", tr("Coefficient of power"), tr("−0.38 %/°C"));
    addField("noct_c", tr("NOCT / °C"), tr("45"));
    addGroup(tr("How they are wired"));
    addField("series", tr("Modules in series"), tr("1"));
    addField("parallel", tr("Strings in parallel"), tr("1"));
    addGroup(tr("The place"));
    addField("coldest_c", tr("Coldest ambient by day / °C"), tr("−15"));
    addField("hottest_c", tr("Hottest ambient / °C"), tr("35"));
    addField("hottest_cell_c", tr("Hottest cell, if known / °C"), tr("from ambient and NOCT"));
    addField("irradiance_w_m2", tr("Irradiance / W/m²"), tr("1000"));
    addField("remark", tr("Remark"), {});
    place(2);
    cells_->addItem(tr("crystalline silicon"), true);
    cells_->addItem(tr("other"), false);
    error_->setObjectName(QStringLiteral("pvErrorLabel"));
    error_->setTextFormat(Qt::PlainText);
    error_->setWordWrap(true);
    set_text_style(*error_, Tone::fault, TextSize::caption);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::page_margin_px, spacing::panel_gap_px, spacing::page_margin_px, spacing::panel_gap_px);
    column->addLayout(grid_);
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

void PvForm::addGroup(const QString& title) { parts_.push_back({group(title), nullptr}); }

void PvForm::addField(const char* key, const QString& title, const QString& placeholder) {
    auto* label = new QLabel(title);
    set_text_style(*label, Tone::soft, TextSize::caption);
    auto* edit = new QLineEdit;
    edit->setObjectName(edit_name(key));
    edit->setPlaceholderText(placeholder);
    edit->setAccessibleName(title);
    edit->setToolTip(text_of(say(key_of(key).help)));
    label->setBuddy(edit);
    parts_.push_back({label, edit});
    fields_.push_back({key, edit});
    connect(edit, &QLineEdit::textEdited, this, [this] {
        readFields();
        emit typed();
    });
    connect(edit, &QLineEdit::editingFinished, this, &PvForm::committed);
}

void PvForm::addChoice(QComboBox& combo, const QString& name, const QString& title) {
    auto* label = new QLabel(title);
    set_text_style(*label, Tone::soft, TextSize::caption);
    combo.setObjectName(name + QStringLiteral("Combo"));
    combo.setAccessibleName(title);
    combo.setAccessibleDescription(combo.accessibleName()); // of a choice without a label the tree tells what is chosen as its name
    combo.setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    label->setBuddy(&combo);
    parts_.push_back({label, &combo});
}

void PvForm::place(int columns) {
    if (columns == columns_) return;
    columns_ = columns;
    int row = -2, column = columns;
    for (const Part& part : parts_) {
        if (!part.field) {
            row += 2;
            grid_->addWidget(part.label, row, 0, 1, columns);
            row -= 1;
            column = columns;
            continue;
        }
        if (column == columns) {
            column = 0;
            row += 2;
        }
        grid_->addWidget(part.label, row, column);
        grid_->addWidget(part.field, row + 1, column);
        ++column;
    }
    grid_->setColumnStretch(0, 1);
    grid_->setColumnStretch(1, columns - 1);
}

int PvForm::widthOfTwoColumns() const {
    int widest = 0;
    for (const Part& part : parts_)
        if (part.field) widest = std::max({widest, part.label->sizeHint().width(), part.field->minimumSizeHint().width()});
    return 2 * (widest + spacing::page_margin_px) + spacing::panel_gap_px;
}

bool PvForm::event(QEvent* event) {
    // The room is what is in sight: a form of two columns that is wider would keep itself so.
    if ((event->type() == QEvent::LayoutRequest || event->type() == QEvent::Resize) && parentWidget())
        place(parentWidget()->width() < widthOfTwoColumns() ? 1 : 2);
    return QWidget::event(event);
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
    sheet.unit_uuid = id_of<UnitId>(unit_->currentData().toString());
    sheet.crystalline_silicon = cells_->currentData().toBool();
    if (sheet.name.empty()) return explain("name", tr("The sheet needs a name, by which it is found again."));
    if (const Result<void> good = check_pv_sheet(sheet); !good) {
        Error error = good.error();
        const std::string key = std::exchange(error.where, {}); // which field it is, explain() says
        return explain(key, text_of(error.sentence()));
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
