// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"

#include <QWidget>

#include <string>

class QLabel;
class QPushButton;
class QTableView;

namespace ullage {

class MetersModel;

/// All meters of the logbook. Follows the document.
class MetersPage final : public QWidget {
    Q_OBJECT
public:
    explicit MetersPage(Document& document, QWidget* parent = nullptr);

    /// Selects a meter.
    void showMeter(const MeterId& meter_uuid);
    void focusTable(); ///< where Space and Enter withdraw nothing
    /// The selected meter; empty when none is.
    [[nodiscard]] MeterId selectedMeter() const;

protected:
    void showEvent(QShowEvent* event) override;

signals:
    void addMeterAsked();
    void editMeterAsked();
    void withdrawMeterAsked();
    void sourceAsked(); ///< how it is read live
    void meterChosen(const MeterId& meterUuid);

private:
    void refresh();
    void tell();   ///< the story of the selected meter
    void choose(); ///< the meter chosen before the table was made anew

    Document& document_;
    MeterId chosen_;
    bool restoring_ = false;
    MetersModel* model_;
    QTableView* table_;
    QLabel *about_, *empty_, *story_;
    QPushButton *edit_, *withdraw_, *live_;
};

} // namespace ullage
