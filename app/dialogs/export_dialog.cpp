// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/export_dialog.h"

#include "services/prompts.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"

#include <QApplication>
#include <QClipboard>
#include <QDir>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ullage {

namespace {

constexpr int png_scale = 2; ///< sharp in print and on dense screens

} // namespace

ExportDialog::ExportDialog(Table table, std::vector<std::pair<QString, PictureContent>> pictures, QString base_name, Prompts& prompts,
                           QWidget* parent)
    : QDialog(parent), table_(std::move(table)), pictures_(std::move(pictures)), base_name_(std::move(base_name)), prompts_(prompts),
      forms_list_(new QListWidget(this)), previews_(new QStackedWidget(this)), text_preview_(new QPlainTextEdit(this)),
      picture_preview_(new QLabel(this)), message_label_(new QLabel(this)), copy_button_(new QPushButton(tr("Copy"), this)) {
    setObjectName(QStringLiteral("exportDialog"));
    setWindowTitle(tr("Export"));
    forms_ = {{tr("Table, CSV"), QStringLiteral("csv"), tr("CSV table (*.csv)"), -1, TableFormat::csv},
              {tr("Table, Markdown"), QStringLiteral("md"), tr("Markdown (*.md)"), -1, TableFormat::markdown},
              {tr("Table, HTML"), QStringLiteral("html"), tr("HTML page (*.html)"), -1, TableFormat::html},
              {tr("Table, XLSX"), QStringLiteral("xlsx"), tr("Workbook (*.xlsx)"), -1, TableFormat::xlsx},
              {tr("Table, JSON"), QStringLiteral("json"), tr("JSON (*.json)"), -1, TableFormat::json}};
    for (int i = 0; i < static_cast<int>(pictures_.size()); ++i) {
        const QString name = pictures_[static_cast<std::size_t>(i)].first;
        forms_.push_back({tr("Picture of %1, PNG").arg(name), QStringLiteral("png"), tr("PNG picture (*.png)"), i, TableFormat::text});
        forms_.push_back({tr("Picture of %1, SVG").arg(name), QStringLiteral("svg"), tr("SVG picture (*.svg)"), i, TableFormat::text});
    }
    build();
    forms_list_->setCurrentRow(0);
}

void ExportDialog::build() {
    resize(920, 560);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::page_margin_px, spacing::page_margin_px, spacing::page_margin_px, spacing::page_margin_px);
    auto* line = new QHBoxLayout;
    line->setSpacing(spacing::panel_gap_px);
    forms_list_->setObjectName(QStringLiteral("formsList"));
    forms_list_->setAccessibleName(tr("Form of the export"));
    for (const Form& form : forms_) forms_list_->addItem(form.name);
    forms_list_->setSpacing(2);
    forms_list_->setFixedWidth(forms_list_->sizeHintForColumn(0) + spacing::group_gap_px);
    connect(forms_list_, &QListWidget::currentRowChanged, this, &ExportDialog::preview);
    line->addWidget(forms_list_);
    text_preview_->setObjectName(QStringLiteral("previewEdit"));
    text_preview_->setAccessibleName(tr("Preview"));
    text_preview_->setReadOnly(true);
    text_preview_->setLineWrapMode(QPlainTextEdit::NoWrap);
    QFont fixed(QStringLiteral("DejaVu Sans Mono"));
    fixed.setStyleHint(QFont::Monospace);
    text_preview_->setFont(fixed);
    picture_preview_->setObjectName(QStringLiteral("picturePreviewLabel"));
    picture_preview_->setAlignment(Qt::AlignCenter);
    previews_->addWidget(text_preview_);
    previews_->addWidget(picture_preview_);
    line->addWidget(previews_, 1);
    column->addLayout(line, 1);
    auto* buttons = new QHBoxLayout;
    message_label_->setObjectName(QStringLiteral("exportMessageLabel"));
    message_label_->setWordWrap(true);
    message_label_->setTextFormat(Qt::PlainText);
    buttons->addWidget(message_label_, 1);
    copy_button_->setObjectName(QStringLiteral("copyButton"));
    connect(copy_button_, &QPushButton::clicked, this, &ExportDialog::copy);
    auto* save_button = new QPushButton(tr("Save…"), this);
    save_button->setObjectName(QStringLiteral("saveButton"));
    save_button->setDefault(true);
    make_primary(*save_button);
    connect(save_button, &QPushButton::clicked, this, &ExportDialog::save);
    auto* close_button = new QPushButton(tr("Close"), this);
    connect(close_button, &QPushButton::clicked, this, &QDialog::accept);
    for (QPushButton* button : {copy_button_, save_button, close_button}) buttons->addWidget(button);
    column->addLayout(buttons);
}

const ExportDialog::Form& ExportDialog::chosen() const {
    return forms_[static_cast<std::size_t>(std::max(0, forms_list_->currentRow()))];
}

QString ExportDialog::fileName(const Form& form) const {
    QString name = base_name_;
    if (form.picture >= 0) name += QLatin1Char('-') + QString(pictures_[static_cast<std::size_t>(form.picture)].first).replace(QLatin1Char(' '), QLatin1Char('-'));
    return name + QLatin1Char('.') + form.ending;
}

void ExportDialog::preview() {
    const Form& form = chosen();
    message_label_->clear();
    const bool workbook = form.picture < 0 && form.format == TableFormat::xlsx;
    copy_button_->setEnabled(!workbook);
    if (form.picture < 0) {
        // A workbook is no text: its content is that of the text table, with a sheet for the method and a chart.
        const TableFormat shown = workbook ? TableFormat::text : form.format;
        text_preview_->setPlainText((workbook ? tr("A workbook with this table, a sheet on the method and a chart:\n\n") : QString()) +
                                    QString::fromStdString(table_text(table_, shown)));
        previews_->setCurrentWidget(text_preview_);
        return;
    }
    PictureSpec spec;
    spec.palette = current_palette();
    const auto image = render_picture(pictures_[static_cast<std::size_t>(form.picture)].second, spec);
    if (!image) {
        message_label_->setText(QString::fromStdString(image.error().sentence()));
        return;
    }
    picture_preview_->setPixmap(QPixmap::fromImage(
        image.value().scaled(previews_->size().expandedTo({320, 240}), Qt::KeepAspectRatio, Qt::SmoothTransformation)));
    previews_->setCurrentWidget(picture_preview_);
}

void ExportDialog::save() {
    const Form& form = chosen();
    const QString path = prompts_.fileToSave(this, tr("Export"), fileName(form), form.filter, form.ending, true);
    if (path.isEmpty()) return;
    PictureSpec spec;
    spec.scale = png_scale;
    spec.palette = current_palette();
    const Result<void> written = form.picture < 0 ? write_table(table_, form.format, path.toStdString())
                                                  : write_picture(pictures_[static_cast<std::size_t>(form.picture)].second, path, spec);
    set_text_style(*message_label_, written ? Tone::good : Tone::fault);
    message_label_->setText(written ? tr("Written to %1").arg(QDir::toNativeSeparators(path)) : QString::fromStdString(written.error().sentence()));
}

void ExportDialog::copy() {
    const Form& form = chosen();
    if (form.picture < 0) {
        QApplication::clipboard()->setText(QString::fromStdString(table_text(table_, form.format)));
    } else {
        PictureSpec spec;
        spec.scale = png_scale;
        spec.palette = current_palette();
        const auto image = render_picture(pictures_[static_cast<std::size_t>(form.picture)].second, spec);
        if (!image) return;
        QApplication::clipboard()->setImage(image.value());
    }
    set_text_style(*message_label_, Tone::good);
    message_label_->setText(tr("Copied"));
}

} // namespace ullage
