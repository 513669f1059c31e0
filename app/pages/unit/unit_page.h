// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"

#include <QWidget>

#include <string>

class QBoxLayout;
class QFrame;
class QGridLayout;
class QLabel;
class QPushButton;
class QScrollArea;
class QTableView;
class QTabWidget;

namespace ullage {

class ClaimsView;
class UnitFitView;
class UnitRunsModel;
class VesselRow;

/// One unit: what its maker claims, what all its drains say together, its vessel, and its runs with their key figures. Follows the document.
class UnitPage final : public QWidget {
    Q_OBJECT
public:
    explicit UnitPage(Document& document, QWidget* parent = nullptr);

    /// Shows a unit; an unknown one leaves the page empty.
    void showUnit(const UnitId& unit_uuid);
    /// The price of a kWh as last typed, for the cost of what a unit takes for itself.
    void setKwhPriceText(const QString& text);

signals:
    void startRunAsked();
    void editUnitAsked();
    void reportAsked();
    void importAsked();
    void runChosen(const RunId& runUuid);
    void kwhPriceTyped(const QString& text);

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    QWidget* makeHead();
    QWidget* makeClaims();
    QWidget* makeRuns();
    void follow(); ///< the document; out of sight nothing is worked out
    void refresh();
    void fillClaims(const Unit& unit);
    void fillVessel(const Unit& unit);
    void fillFit(const Unit& unit);
    void fillTested();
    void arrange(); ///< what goes by the size of the text, once the page is in sight
    void arrangeColumns();
    void arrangeLevels(); ///< by the room that the page has for its letters

    Document& document_;
    UnitId unit_uuid_;
    UnitRunsModel* model_;
    QLabel *title_, *about_, *empty_;
    QGridLayout* claims_;
    UnitFitView* fit_;
    VesselRow* vessel_;
    QLabel* vessel_words_;
    QTableView* runs_;
    QPushButton *report_ = nullptr, *import_ = nullptr, *edit_ = nullptr, *start_ = nullptr;
    QTabWidget* below_;
    QBoxLayout* top_ = nullptr; ///< what is claimed and what all drains say, and the vessel
    QFrame* vessel_panel_ = nullptr;
    QScrollArea* levels_ = nullptr; ///< all below the head
    ClaimsView* tested_;
    bool columns_arranged_ = false;
    bool stale_ = false; ///< to be worked out anew when it comes into sight
};

} // namespace ullage
