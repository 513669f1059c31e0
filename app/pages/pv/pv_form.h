// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/sheets/pv_sheet_text.h"
#include "model/unit.h"

#include <QWidget>

#include <optional>
#include <string>
#include <vector>

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;

namespace ullage {

/// The fields of a PV sheet. What is typed is read at once; what cannot be read is explained below the fields and named wrong in place.
class PvForm final : public QWidget {
    Q_OBJECT
public:
    explicit PvForm(QWidget* parent = nullptr);

    /// Shows a sheet, with these units to choose from; leaves fields alone that say the same already.
    void setSheet(const PvSheet& sheet, const std::vector<Unit>& units);
    /// The sheet as the fields say it; absent while one of them cannot be read or they contradict one another.
    [[nodiscard]] std::optional<PvSheet> sheet() const { return read_; }

signals:
    void typed();     ///< the fields say something else
    void committed(); ///< a field has been left, or a choice made

private:
    struct Field {
        std::string key;
        QLineEdit* edit = nullptr;
    };
    void addField(QGridLayout& grid, int row, int column, const char* key, const QString& title, const QString& placeholder);
    void addChoice(QGridLayout& grid, int row, int column, QComboBox& combo, const QString& name, const QString& title);
    void fill(const PvSheet& sheet, const std::vector<Unit>& units);
    void readFields();
    void explain(const std::string& key, const QString& sentence);

    PvSheet shown_;
    std::vector<Unit> units_;
    std::optional<PvSheet> read_;
    std::vector<Field> fields_;
    QComboBox *unit_, *cells_;
    QLabel* error_;
    bool filling_ = false;
};

} // namespace ullage
