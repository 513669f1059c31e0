// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"

#include <QWidget>

#include <optional>
#include <string>

class QLabel;
class QPushButton;
class QTableView;

namespace ullage {

class TableModel;

/// All load lists of the logbook with their totals, and the appliances of the selected one. Follows the document.
class LoadListsPage final : public QWidget {
    Q_OBJECT
public:
    explicit LoadListsPage(Document& document, QWidget* parent = nullptr);

    /// Selects a list.
    void showLoadList(const LoadListId& list_uuid);
    /// The selected list; empty when none is.
    [[nodiscard]] const LoadListId& selectedList() const { return selected_; }
    /// The place of the selected appliance in the selected list.
    [[nodiscard]] std::optional<std::size_t> selectedAppliance() const;

signals:
    void addListAsked();
    void importListAsked();
    void editListAsked();
    void withdrawListAsked();
    void addApplianceAsked();
    void editApplianceAsked();
    void removeApplianceAsked();
    void listChosen(const LoadListId& listUuid);
    void applianceChosen();

private:
    QPushButton* newButton(const char* name, const QString& text, void (LoadListsPage::*asks)());
    QWidget* buildLists();
    QWidget* buildAppliances();
    void refresh();
    void showAppliances();
    void setChosen();

    Document& document_;
    TableModel *lists_model_, *appliances_model_;
    QTableView *lists_, *appliances_;
    QLabel *about_, *empty_, *list_title_, *no_appliances_, *totals_;
    QPushButton *edit_list_, *withdraw_list_, *add_appliance_, *edit_appliance_, *remove_appliance_;
    QWidget* appliances_part_ = nullptr;
    LoadListId selected_;
    bool refreshing_ = false;
};

} // namespace ullage
