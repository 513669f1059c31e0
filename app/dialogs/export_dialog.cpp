// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/export_dialog.h"

#include "base/clock.h"
#include "base/instant.h"
#include "charts/picture_words.h"
#include "dialogs/picture_dialog.h"
#include "services/background_work.h"
#include "services/prompts.h"
#include "services/table_copy.h"
#include "style/file_names.h"
#include "style/reading_order.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"
#include "style/words.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr int png_scale = 2;                ///< sharp in print and on dense screens
constexpr std::size_t most_shown = 200'000; ///< bytes of a preview; a long run's table has millions

/// The beginning of the table, of which no more is made than is shown.
QString beginning_of(const StreamedTable& table, TableFormat format) {
    std::string text;
    const bool whole = table_text(table, format, [&text](std::string_view piece) {
        text += piece;
        return text.size() <= most_shown;
    });
    if (whole) return raw_text(text);
    text.resize(text.rfind('\n', most_shown) + 1); // at the end of a line, so that no character is cut
    return raw_text(text) + ullage::tr("… and more, which Save and Copy take whole");
}

} // namespace

ExportDialog::ExportDialog(std::vector<ExportSubject> subjects, Prompts& prompts, QWidget* parent)
    : QDialog(parent), subjects_(std::move(subjects)), prompts_(prompts), subject_combo_(new QComboBox(this)), forms_list_(new QListWidget(this)),
      previews_(new QStackedWidget(this)), text_preview_(new QPlainTextEdit(this)), picture_preview_(new QLabel(this)),
      message_label_(new QLabel(this)), copy_button_(new QPushButton(tr("Copy"), this)),
      size_button_(new QPushButton(tr("Size and colours…"), this)) {
    setObjectName(QStringLiteral("exportDialog"));
    setWindowTitle(tr("Export"));
    picture_spec_.scale = png_scale;
    picture_spec_.with_words = true;
    picture_spec_.source = picture_source(SystemClock().now_ms(), machine_zone());
    picture_spec_.palette = current_palette();
    build();
    chooseSubject(0);
}

void ExportDialog::build() {
    resize(920, 560);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::page_margin_px, spacing::page_margin_px, spacing::page_margin_px, spacing::page_margin_px);
    auto* line = new QHBoxLayout;
    line->setSpacing(spacing::panel_gap_px);
    line->addWidget(buildChoices());
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
    column->addWidget(buildButtons());
}

QWidget* ExportDialog::buildChoices() {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    subject_combo_->setObjectName(QStringLiteral("subjectCombo"));
    subject_combo_->setAccessibleName(tr("What to export"));
    subject_combo_->setAccessibleDescription(
        subject_combo_->accessibleName()); // of a choice without a label the tree tells what is chosen as its name
    for (const ExportSubject& subject : subjects_) subject_combo_->addItem(subject.name);
    subject_combo_->setVisible(subjects_.size() > 1);
    connect(subject_combo_, &QComboBox::currentIndexChanged, this, &ExportDialog::chooseSubject);
    forms_list_->setObjectName(QStringLiteral("formsList"));
    forms_list_->setAccessibleName(tr("Form of the export"));
    forms_list_->setSpacing(2);
    connect(forms_list_, &QListWidget::currentRowChanged, this, &ExportDialog::preview);
    column->addWidget(subject_combo_);
    column->addWidget(forms_list_, 1);
    return side;
}

QWidget* ExportDialog::buildButtons() {
    auto* foot = new QWidget(this);
    auto* buttons = new QHBoxLayout(foot);
    buttons->setContentsMargins(0, 0, 0, 0);
    message_label_->setObjectName(QStringLiteral("exportMessageLabel"));
    message_label_->setWordWrap(true);
    message_label_->setTextFormat(Qt::PlainText);
    buttons->addWidget(message_label_, 1);
    size_button_->setObjectName(QStringLiteral("pictureSizeButton"));
    connect(size_button_, &QPushButton::clicked, this, &ExportDialog::chooseSize);
    copy_button_->setObjectName(QStringLiteral("copyButton"));
    connect(copy_button_, &QPushButton::clicked, this, &ExportDialog::copy);
    auto* save_button = new QPushButton(tr("Save…"), this);
    save_button->setObjectName(QStringLiteral("saveButton"));
    save_button->setDefault(true);
    make_primary(*save_button);
    connect(save_button, &QPushButton::clicked, this, &ExportDialog::save);
    auto* close_button = new QPushButton(tr("Close"), this);
    connect(close_button, &QPushButton::clicked, this, &QDialog::accept);
    for (QPushButton* button : {close_button, size_button_, copy_button_, save_button}) buttons->addWidget(button);
    return foot;
}

void ExportDialog::chooseSubject(int subject) {
    const auto wanted = static_cast<std::size_t>(std::max(0, subject));
    std::optional<StreamedTable> table = subjects_[wanted].table(isVisible() ? this : parentWidget());
    if (!table) {
        // There is nothing to show yet where the first one was cancelled.
        if (forms_.empty()) {
            QMetaObject::invokeMethod(this, &QDialog::reject, Qt::QueuedConnection);
            return;
        }
        const QSignalBlocker quiet(subject_combo_);
        subject_combo_->setCurrentIndex(static_cast<int>(subject_));
        return;
    }
    subject_ = wanted;
    table_ = std::move(*table);
    forms_.clear();
    const auto offer = [this](TableFormat format, const QString& name, const QString& kind) {
        const std::string_view ending = table_format_ending(format);
        const QString shown = raw_text(ending);
        forms_.push_back({tr("Table, %1").arg(name), shown, QStringLiteral("%1 (*.%2)").arg(kind, shown), -1, format});
    };
    offer(TableFormat::csv, QStringLiteral("CSV"), tr("CSV table"));
    offer(TableFormat::markdown, QStringLiteral("Markdown"), tr("Markdown"));
    offer(TableFormat::html, QStringLiteral("HTML"), tr("HTML page"));
    offer(TableFormat::xlsx, QStringLiteral("XLSX"), tr("Workbook"));
    offer(TableFormat::json, QStringLiteral("JSON"), QStringLiteral("JSON"));
    offer(TableFormat::latex, QStringLiteral("LaTeX"), tr("LaTeX table"));
    int picture = 0;
    for (const auto& [name, picture_content] : subjects_[subject_].pictures) {
        forms_.push_back({tr("Picture of %1, PNG").arg(name), QStringLiteral("png"), tr("PNG picture (*.png)"), picture, TableFormat::text});
        forms_.push_back({tr("Picture of %1, SVG").arg(name), QStringLiteral("svg"), tr("SVG picture (*.svg)"), picture, TableFormat::text});
        ++picture;
    }
    const int row = std::max(0, forms_list_->currentRow());
    {
        const QSignalBlocker quiet(forms_list_);
        forms_list_->clear();
        for (const Form& form : forms_) forms_list_->addItem(form.name);
        forms_list_->setFixedWidth(std::max(forms_list_->minimumWidth(), forms_list_->sizeHintForColumn(0) + spacing::group_gap_px));
        forms_list_->setCurrentRow(std::min(row, forms_list_->count() - 1));
    }
    preview();
}

const ExportDialog::Form& ExportDialog::chosen() const { return forms_[static_cast<std::size_t>(std::max(0, forms_list_->currentRow()))]; }

QString ExportDialog::fileName(const Form& form) const {
    const ExportSubject& subject = subjects_[subject_];
    QString name = subject.base_name;
    if (form.picture >= 0) name += QLatin1Char('-') + file_stem(subject.pictures[static_cast<std::size_t>(form.picture)].first);
    return name + QLatin1Char('.') + form.ending;
}

void ExportDialog::preview() {
    const Form& form = chosen();
    message_label_->clear();
    size_button_->setVisible(form.picture >= 0);
    if (form.picture < 0) {
        // A workbook is no text: its content is that of the text table, with a sheet for the method and a chart.
        const bool workbook = isWorkbook(form);
        const auto text = result_beside(isVisible() ? this : parentWidget(), tr("Putting the table together"),
                                        [&](WorkProgress&) { return beginning_of(table_, workbook ? TableFormat::text : form.format); });
        text_preview_->setPlainText(
            (workbook ? tr("A workbook with this table, a sheet on the method and a chart; Copy takes the cells:\n\n") : QString()) +
            text.value_or(QString()));
        previews_->setCurrentWidget(text_preview_);
        return;
    }
    PictureSpec shown = picture_spec_;
    shown.scale = std::min<double>(shown.scale, png_scale);
    const auto image = render_picture(subjects_[subject_].pictures[static_cast<std::size_t>(form.picture)].second(), shown);
    if (!image) {
        tell(false, text_of(image.error().sentence()));
        return;
    }
    picture_preview_->setPixmap(
        QPixmap::fromImage(image.value().scaled(previews_->size().expandedTo({320, 240}), Qt::KeepAspectRatio, Qt::SmoothTransformation)));
    previews_->setCurrentWidget(picture_preview_);
}

void ExportDialog::tell(bool good, const QString& words) {
    set_text_style(*message_label_, good ? Tone::good : Tone::fault);
    message_label_->setText(words);
}

void ExportDialog::save() {
    if (forms_.empty()) return;
    const Form& form = chosen();
    const QString path = prompts_.fileToSave(this, tr("Export"), fileName(form), form.filter, form.ending, true);
    if (path.isEmpty()) return;
    const Replacing asked{Replacing::Consent::ordinary, {}};
    Result<void> written;
    if (form.picture >= 0)
        written = write_picture(subjects_[subject_].pictures[static_cast<std::size_t>(form.picture)].second(), path, picture_spec_, asked);
    else
        work_beside(
            this, tr("Writing %1").arg(shown_path(QFileInfo(path).fileName())),
            [&](WorkProgress&) { written = write_table(table_, form.format, native_path(path), asked); }, Cancelling::not_possible);
    if (!written) {
        tell(false, text_of(written.error().sentence()));
        return;
    }
    const QString shown = shown_path(path);
    const bool described = form.picture < 0 && form.format == TableFormat::csv;
    tell(true, described ? tr("Written to %1; what its columns mean stands in %2").arg(shown, shown_path(raw_text(csv_metadata_path(utf8_of(path)))))
                         : tr("Written to %1").arg(shown));
}

void ExportDialog::copy() {
    if (forms_.empty()) return;
    const Form& form = chosen();
    if (isWorkbook(form)) {
        if (table_.row_count == 0) return tell(false, tr("The table has no rows to copy."));
        if (!copy_table(table_, this)) return tell(false, tr("Nothing was copied."));
    } else if (form.picture < 0) {
        const auto text = result_beside(this, tr("Copying the table"), [&](WorkProgress&) { return raw_text(table_text(table_, form.format)); });
        if (!text) return tell(false, tr("Nothing was copied."));
        QApplication::clipboard()->setText(*text);
    } else {
        const auto image = render_picture(subjects_[subject_].pictures[static_cast<std::size_t>(form.picture)].second(), picture_spec_);
        if (!image) {
            tell(false, text_of(image.error().sentence()));
            return;
        }
        QApplication::clipboard()->setImage(image.value());
    }
    tell(true, tr("Copied"));
}

void ExportDialog::chooseSize() {
    auto* dialog = new PictureDialog(picture_spec_, this);
    connect(dialog, &FormDialog::submitted, this, [this, dialog] {
        picture_spec_ = dialog->spec();
        dialog->accept();
        preview();
    });
    dialog->open();
}

bool ExportDialog::focusNextPrevChild(bool next) { return move_as_read(*this, next) || QDialog::focusNextPrevChild(next); }

} // namespace ullage
