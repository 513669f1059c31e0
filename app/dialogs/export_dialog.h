// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/picture.h"
#include "exchange/table.h"

#include <QDialog>
#include <QString>

#include <utility>
#include <vector>

class QLabel;
class QListWidget;
class QPlainTextEdit;
class QPushButton;
class QStackedWidget;

namespace ullage {

class Prompts;

/// Export with a preview: a table in every format and pictures as PNG and SVG. Save asks for the file and says what was
/// written; Copy puts the text or picture on the clipboard. The dialog stays open, so that several forms can be saved.
class ExportDialog final : public QDialog {
    Q_OBJECT
public:
    /// `pictures` with their names; `base_name` is the suggested file name without ending; `prompts` must outlive the dialog.
    ExportDialog(Table table, std::vector<std::pair<QString, PictureContent>> pictures, QString base_name, Prompts& prompts,
                 QWidget* parent = nullptr);

private:
    struct Form {
        QString name, ending, filter;
        int picture = -1;                              ///< index into the pictures; -1 for the table
        TableFormat format = TableFormat::text;
    };

    void build();
    void preview();
    void save();
    void copy();
    [[nodiscard]] const Form& chosen() const;
    [[nodiscard]] QString fileName(const Form& form) const;

    Table table_;
    std::vector<std::pair<QString, PictureContent>> pictures_;
    QString base_name_;
    Prompts& prompts_;
    std::vector<Form> forms_;
    QListWidget* forms_list_;
    QStackedWidget* previews_;
    QPlainTextEdit* text_preview_;
    QLabel *picture_preview_, *message_label_;
    QPushButton* copy_button_;
};

} // namespace ullage
