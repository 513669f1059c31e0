// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "formats/sheets/pv_sheet_text.h"

#include <QWidget>

#include <optional>
#include <string>

class QComboBox;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace ullage {

class LineChart;
class PvForm;
class PvVerdictView;

/// Whether a PV string fits a unit's PV input: the sheets of the logbook, the fields of one, and the answer as it is typed. A field that is left
/// is kept in the logbook at once, as an undoable step. Follows the document.
class PvPage final : public QWidget {
    Q_OBJECT
public:
    explicit PvPage(Document& document, QWidget* parent = nullptr);

    /// Fills the page from the document; called when it comes into sight.
    void refresh();
    /// The sheet as the fields say it, with its unit and that unit's limits; absent while a field cannot be read or there is no sheet.
    [[nodiscard]] std::optional<PvSheetText> stated() const;
    void addSheet();
    void showSheet(const PvSheetId& uuid) { choose(uuid); }
    void withdrawSheet();

signals:
    void error(const QString& sentence); ///< the logbook refused a change
    void editUnitAsked(const UnitId& unitUuid);

protected:
    void changeEvent(QEvent* event) override;

private:
    QWidget* makeHead();
    QWidget* makeAnswer();
    QWidget* makeEmpty();
    void choose(const PvSheetId& uuid);
    void commit();
    void showAnswer();

    Document& document_;
    PvSheetId uuid_;
    QComboBox* sheets_;
    QPushButton *withdraw_, *edit_unit_;
    QStackedWidget* body_;
    PvForm* form_;
    PvVerdictView* verdict_;
    QLabel *limits_, *table_, *assumed_, *cautions_;
    LineChart* chart_;
};

} // namespace ullage
