// SPDX-License-Identifier: GPL-3.0-or-later
// Load lists and their appliances.
#include "pages/main_window.h"

#include "dialogs/appliance_form.h"
#include "dialogs/load_list_form.h"
#include "document/sheet_file.h"
#include "pages/load_lists_page.h"
#include "pages/message_bar.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "style/icons.h"

#include <QAction>
#include <QMenu>
#include <QStackedWidget>

namespace ullage {

namespace {

/// Closes the form after a success, else shows the store's words in it.
template <class T>
bool close_after(FormDialog& form, const Result<T>& outcome) {
    if (outcome) form.accept();
    else form.refuse(QString::fromStdString(outcome.error().sentence()));
    return outcome.ok();
}

} // namespace

void MainWindow::make_load_list_menu(QMenu& above) {
    auto& menu = *above.addMenu(tr("&Load lists"));
    menu.setObjectName(QStringLiteral("loadListsMenu"));
    add_action(menu, "loadListsAction", tr("&Page of load lists"), "Ctrl+L", &MainWindow::showLoadLists)->setIcon(glyph_icon(Glyph::load_list));
    menu.addSeparator();
    add_action(menu, "addLoadListAction", tr("Add &load list…"), "Ctrl+J", &MainWindow::add_load_list)->setIcon(glyph_icon(Glyph::add));
    add_action(menu, "importLoadListAction", tr("&Import load list…"), "Ctrl+Shift+I", &MainWindow::import_load_list)
        ->setIcon(glyph_icon(Glyph::import_in));
    add_action(menu, "editLoadListAction", tr("&Edit load list…"), "Ctrl+Shift+J", &MainWindow::edit_load_list);
    add_action(menu, "withdrawLoadListAction", tr("&Withdraw load list"), "Ctrl+Alt+J", &MainWindow::withdraw_load_list);
    menu.addSeparator();
    add_action(menu, "addApplianceAction", tr("&Add appliance…"), "Ctrl+H", &MainWindow::add_appliance)->setIcon(glyph_icon(Glyph::add));
    add_action(menu, "editApplianceAction", tr("Edit applia&nce…"), "Ctrl+Shift+H", &MainWindow::edit_appliance);
    add_action(menu, "removeApplianceAction", tr("&Remove appliance"), "Ctrl+Alt+H", &MainWindow::remove_appliance);
}

void MainWindow::connect_load_lists() {
    connect(load_lists_page_, &LoadListsPage::addListAsked, this, &MainWindow::add_load_list);
    connect(load_lists_page_, &LoadListsPage::importListAsked, this, &MainWindow::import_load_list);
    connect(load_lists_page_, &LoadListsPage::editListAsked, this, &MainWindow::edit_load_list);
    connect(load_lists_page_, &LoadListsPage::withdrawListAsked, this, &MainWindow::withdraw_load_list);
    connect(load_lists_page_, &LoadListsPage::addApplianceAsked, this, &MainWindow::add_appliance);
    connect(load_lists_page_, &LoadListsPage::editApplianceAsked, this, &MainWindow::edit_appliance);
    connect(load_lists_page_, &LoadListsPage::removeApplianceAsked, this, &MainWindow::remove_appliance);
    connect(load_lists_page_, &LoadListsPage::listSelected, this, [this] {
        select_in_tree();
        remember_page();
    });
    connect(load_lists_page_, &LoadListsPage::applianceSelected, this, &MainWindow::update_actions);
    connect(&document_, &Document::loadListsChanged, this, [this] {
        content_changed();
        select_in_tree(); // the page may have taken another list by now
    });
}

void MainWindow::showLoadList(const std::string& list_uuid) {
    if (!document_.isOpen()) return;
    load_lists_page_->showLoadList(list_uuid);
    pages_->setCurrentWidget(load_lists_page_);
    select_in_tree();
    remember_page();
}

void MainWindow::showLoadLists() { showLoadList(load_lists_page_->selectedList()); }

void MainWindow::add_load_list() {
    if (!document_.isOpen()) return;
    auto* form = new LoadListForm(LoadList{}, this);
    connect(form, &FormDialog::submitted, this, [this, form] {
        const auto added = document_.addLoadList(form->list());
        if (close_after(*form, added)) showLoadList(added.value().uuid);
    });
    form->open();
}

void MainWindow::import_load_list() {
    const auto files = prompts_.filesToOpen(this, tr("Import load list"), start_folder(), tr("Load lists (*.csv);;All files (*)"), true);
    if (files.isEmpty()) return;
    messages_->dismiss();
    std::string shown;
    for (const QString& path : files) {
        const auto imported = import_load_list_file(document_, path);
        if (imported) shown = imported.value().uuid;
        else messages_->showError(QString::fromStdString(imported.error().sentence()));
    }
    settings_.setFolderOf(files.constFirst());
    if (!shown.empty()) showLoadList(shown);
}

void MainWindow::edit_load_list() {
    const auto* list = document_.loadList(load_lists_page_->selectedList());
    if (!list) return;
    auto* form = new LoadListForm(*list, this);
    connect(form, &FormDialog::submitted, this, [this, form] { close_after(*form, document_.updateLoadList(form->list())); });
    form->open();
}

void MainWindow::withdraw_load_list() {
    if (document_.loadList(load_lists_page_->selectedList())) tell(document_.withdrawLoadList(load_lists_page_->selectedList()));
}

void MainWindow::add_appliance() {
    const auto* list = document_.loadList(load_lists_page_->selectedList());
    if (!list) return;
    auto* form = new ApplianceForm(Appliance{}, list->name, this);
    connect(form, &FormDialog::submitted, this, [this, form, before = *list] {
        LoadList with_one_more = before;
        with_one_more.appliances.push_back(form->appliance());
        close_after(*form, document_.updateLoadList(with_one_more));
    });
    form->open();
}

void MainWindow::edit_appliance() {
    const auto* list = document_.loadList(load_lists_page_->selectedList());
    const auto place = load_lists_page_->selectedAppliance();
    if (!list || !place) return;
    auto* form = new ApplianceForm(list->appliances[*place], list->name, this);
    connect(form, &FormDialog::submitted, this, [this, form, before = *list, at = *place] {
        LoadList changed = before;
        changed.appliances[at] = form->appliance();
        close_after(*form, document_.updateLoadList(changed));
    });
    form->open();
}

void MainWindow::remove_appliance() {
    const auto* list = document_.loadList(load_lists_page_->selectedList());
    const auto place = load_lists_page_->selectedAppliance();
    if (!list || !place) return;
    LoadList changed = *list;
    changed.appliances.erase(changed.appliances.begin() + static_cast<std::ptrdiff_t>(*place));
    tell(document_.updateLoadList(changed));
}

} // namespace ullage
