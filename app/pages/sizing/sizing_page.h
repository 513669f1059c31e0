// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "document/unit_sizer.h"
#include "sizing/sizing.h"

#include <QWidget>

#include <string>

class QComboBox;
class QLabel;
class QPushButton;
class QStackedWidget;
class QTableView;

namespace ullage {

class LineChart;
class SizingForm;
class TableModel;

/// What carries a load list: the choices at the left, the units with their days, the charge over three days, PV and battery by rule at the
/// right, worked out as they are typed; of many units beside the window, which then says so. Follows the document while it is in sight.
class SizingPage final : public QWidget {
    Q_OBJECT
public:
    explicit SizingPage(Document& document, QWidget* parent = nullptr);

    /// Works all out from the document; called when it comes into sight.
    void refresh();
    /// The list to be shown when the page next works things out.
    void chooseList(const LoadListId& list_uuid) { list_uuid_ = list_uuid; }
    void showLoadList(const LoadListId& list_uuid);
    [[nodiscard]] const LoadListId& selectedList() const { return list_uuid_; }
    /// What the page shows; without units and appliances where there is no load list.
    [[nodiscard]] const Sizing& sizing() const { return sizing_; }
    /// Waits for what is being sized, as the person does. Whether sizing() is then there: not where there is no load list.
    [[nodiscard]] bool awaitSizing();
    /// The choices as a line for the settings.
    [[nodiscard]] QString choicesText() const;
    void setChoicesText(const QString& text);

protected:
    void changeEvent(QEvent* event) override;

signals:
    void choicesChanged(const QString& text);
    void loadListsAsked();
    void reportAsked();
    void exportAsked();

private:
    QWidget* makeHead();
    QWidget* makeAnswer();
    QWidget* makeEmpty();
    void showSizing(const Sizing& sizing);
    void showUnit();
    void fitToText();
    [[nodiscard]] std::size_t chosenUnit() const;

    Document& document_;
    UnitSizer* sizer_;
    Sizing sizing_;
    LoadListId list_uuid_;
    QComboBox* lists_;
    QPushButton *report_, *export_;
    QStackedWidget* body_;
    SizingForm* form_;
    QWidget* form_panel_;
    TableModel *units_model_, *rules_model_, *months_model_;
    QTableView *units_, *rules_, *months_;
    QLabel *totals_, *course_, *assumed_, *rule_words_, *no_months_, *cautions_, *all_cautions_;
    LineChart* chart_;
    bool refreshing_ = false;
};

} // namespace ullage
