// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/picture.h"
#include "formats/tables/table.h"

#include <QDialog>
#include <QString>

#include <functional>
#include <optional>
#include <utility>
#include <vector>

class QComboBox;
class QLabel;
class QListWidget;
class QPlainTextEdit;
class QPushButton;
class QStackedWidget;

namespace ullage {

class Prompts;

/// Something to export: a table and pictures that go with it.
struct ExportSubject {
    QString name;      ///< "Readings of this run"
    QString base_name; ///< suggested file name without ending
    /// Asked when the subject is chosen, with the window that waits; nothing where the person cancelled it.
    std::function<std::optional<StreamedTable>(QWidget* window)> table;
    /// With their names; asked when one is looked at, copied or saved.
    std::vector<std::pair<QString, std::function<PictureContent()>>> pictures;
};

/// Export with a preview: a table in every format and pictures as PNG and SVG in chosen size and colours. Save asks for the file and says
/// what was written; Copy puts the text or picture on the clipboard, for a workbook the cells. The dialog stays
/// open, so that several forms can be saved.
class ExportDialog final : public QDialog {
    Q_OBJECT
public:
    /// Shows the first subject; there is at least one, and what its function uses outlives the dialog, as does `prompts`.
    ExportDialog(std::vector<ExportSubject> subjects, Prompts& prompts, QWidget* parent = nullptr);

protected:
    bool focusNextPrevChild(bool next) override; ///< as the dialog is read

private:
    struct Form {
        QString name, ending, filter;
        int picture = -1; ///< index into the pictures; -1 for the table
        TableFormat format = TableFormat::text;
    };

    void build();
    QWidget* buildChoices();
    QWidget* buildButtons();
    void chooseSubject(int subject);
    void preview();
    void save();
    void copy();
    void chooseSize();
    void tell(bool good, const QString& words);
    [[nodiscard]] bool isWorkbook(const Form& form) const { return form.picture < 0 && form.format == TableFormat::xlsx; }
    [[nodiscard]] const Form& chosen() const;
    [[nodiscard]] QString fileName(const Form& form) const;

    std::vector<ExportSubject> subjects_;
    std::size_t subject_ = 0; ///< the one that `table_` is of
    StreamedTable table_;
    PictureSpec picture_spec_;
    Prompts& prompts_;
    std::vector<Form> forms_;
    QComboBox* subject_combo_;
    QListWidget* forms_list_;
    QStackedWidget* previews_;
    QPlainTextEdit* text_preview_;
    QLabel *picture_preview_, *message_label_;
    QPushButton *copy_button_, *size_button_;
};

} // namespace ullage
