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

/// The fields of a PV sheet, in two columns or, where the text is too large for these, in one. What is typed is read at once; what cannot be read is
/// explained below the fields and named wrong in place.
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

protected:
    bool event(QEvent* event) override;

private:
    struct Field {
        std::string key;
        QLineEdit* edit = nullptr;
    };
    /// A field with the words above it, or the title of a group, which has no field.
    struct Part {
        QLabel* label = nullptr;
        QWidget* field = nullptr;
    };
    void addGroup(const QString& title);
    void addField(const char* key, const QString& title, const QString& placeholder);
    void addChoice(QComboBox& combo, const QString& name, const QString& title);
    /// Sets the parts in so many columns, in their order.
    void place(int columns);
    [[nodiscard]] int widthOfTwoColumns() const;
    void fill(const PvSheet& sheet, const std::vector<Unit>& units);
    void readFields();
    void explain(const std::string& key, const QString& sentence);

    PvSheet shown_;
    std::vector<Unit> units_;
    std::optional<PvSheet> read_;
    std::vector<Field> fields_;
    std::vector<Part> parts_;
    QComboBox *unit_, *cells_;
    QLabel* error_;
    QGridLayout* grid_;
    int columns_ = 0;
    bool filling_ = false;
};

} // namespace ullage
