// SPDX-License-Identifier: GPL-3.0-or-later
// Load lists and their appliances, and the sizing that rests on them.
#include "window/main_window.h"

#include "chart_content/sizing_chart.h"
#include "dialogs/appliance_form.h"
#include "dialogs/export_dialog.h"
#include "dialogs/load_list_form.h"
#include "document/sheet_file.h"
#include "formats/results/sizing_output.h"
#include "pages/sizing/load_lists_page.h"
#include "pages/sizing/sizing_page.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "style/icons.h"
#include "style/words.h"
#include "window/message_bar.h"

#include <QAction>
#include <QMenu>
#include <QStackedWidget>

namespace ullage {

namespace {

const QString sizing_choices_name = QStringLiteral("sizing-choices");

/// Closes the form after a success, else shows the store's words in it.
template <class T>
bool close_after(FormDialog& form, const Result<T>& outcome) {
    if (outcome) form.accept();
    else form.refuse(text_of(outcome.error().sentence()));
    return outcome.ok();
}

} // namespace

void MainWindow::makeLoadListMenu(QMenu& above) {
    auto& menu = *above.addMenu(tr("&Load lists"));
    menu.setObjectName(QStringLiteral("loadListsMenu"));
    addEntry(menu, "loadListsAction", tr("&Page of load lists"), "Ctrl+L", &MainWindow::showLoadLists)->setIcon(glyph_icon(Glyph::load_list));
    menu.addSeparator();
    addEntry(menu, "addLoadListAction", tr("Add &load list…"), "Ctrl+J", &MainWindow::addLoadList)->setIcon(glyph_icon(Glyph::add));
    addEntry(menu, "importLoadListAction", tr("&Import load list…"), "Ctrl+Shift+I", &MainWindow::importLoadList)
        ->setIcon(glyph_icon(Glyph::import_in));
    addEntry(menu, "editLoadListAction", tr("&Edit load list…"), "Ctrl+Shift+J", &MainWindow::editLoadList);
    addEntry(menu, "withdrawLoadListAction", tr("&Withdraw load list"), "Ctrl+Alt+J", &MainWindow::withdrawLoadList);
    menu.addSeparator();
    addEntry(menu, "addApplianceAction", tr("&Add appliance…"), "Ctrl+H", &MainWindow::addAppliance)->setIcon(glyph_icon(Glyph::add));
    addEntry(menu, "editApplianceAction", tr("Edit applia&nce…"), "Ctrl+Shift+H", &MainWindow::editAppliance);
    addEntry(menu, "removeApplianceAction", tr("&Remove appliance"), "Ctrl+Alt+H", &MainWindow::removeAppliance);
}

void MainWindow::connectLoadListsPage() {
    connect(load_lists_page_, &LoadListsPage::addListAsked, this, &MainWindow::addLoadList);
    connect(load_lists_page_, &LoadListsPage::importListAsked, this, &MainWindow::importLoadList);
    connect(load_lists_page_, &LoadListsPage::editListAsked, this, &MainWindow::editLoadList);
    connect(load_lists_page_, &LoadListsPage::withdrawListAsked, this, &MainWindow::withdrawLoadList);
    connect(load_lists_page_, &LoadListsPage::addApplianceAsked, this, &MainWindow::addAppliance);
    connect(load_lists_page_, &LoadListsPage::editApplianceAsked, this, &MainWindow::editAppliance);
    connect(load_lists_page_, &LoadListsPage::removeApplianceAsked, this, &MainWindow::removeAppliance);
    connect(load_lists_page_, &LoadListsPage::listChosen, this, [this](const QString& list) {
        selectInTree();
        rememberPage();
        if (sizing_page_.isMade()) sizing_page_->chooseList(utf8_of(list));
    });
    connect(load_lists_page_, &LoadListsPage::applianceChosen, this, &MainWindow::updateActions);
}

void MainWindow::showLoadList(const std::string& list_uuid) {
    if (!document_.isOpen()) return;
    load_lists_page_->showLoadList(list_uuid);
    pages_->setCurrentWidget(load_lists_page_);
    selectInTree();
    rememberPage();
}

void MainWindow::showLoadLists() { showLoadList(load_lists_page_->selectedList()); }

void MainWindow::connectSizingPage() {
    sizing_page_->setChoicesText(settings_.remembered(sizing_choices_name));
    connect(sizing_page_, &SizingPage::choicesChanged, this, [this](const QString& text) { settings_.remember(sizing_choices_name, text); });
    connect(sizing_page_, &SizingPage::loadListsAsked, this, [this] { showLoadList(sizing_page_->selectedList()); });
    connect(sizing_page_, &SizingPage::reportAsked, this, &MainWindow::makeSizingReport);
    connect(sizing_page_, &SizingPage::exportAsked, this, &MainWindow::exportSizing);
    if (load_lists_page_.isMade()) sizing_page_->chooseList(load_lists_page_->selectedList());
}

void MainWindow::showSizing() {
    if (!document_.isOpen()) return;
    std::vector<std::string> units;
    if (!document_.loadLists().empty())
        for (const Unit& unit : document_.units()) units.push_back(unit.uuid);
    if (!analyseFirst(units, false)) return selectInTree();
    pages_->setCurrentWidget(sizing_page_);
    sizing_page_->refresh();
    selectInTree();
    rememberPage();
}

void MainWindow::exportSizing() {
    showSizing();
    if (!sizing_page_->hasSizing()) return;
    const Sizing& sizing = sizing_page_->sizing();
    std::vector<std::pair<QString, std::function<PictureContent()>>> charts;
    for (std::size_t unit = 0; unit < sizing.units.size(); ++unit)
        if (sizing.courses[unit])
            charts.emplace_back(text_of(sizing.units[unit].unit.name), [sizing, unit]() -> PictureContent { return sizing_chart(sizing, unit); });
    std::vector<ExportSubject> subjects;
    subjects.push_back({tr("Units"), QStringLiteral("sizing"), [sizing](QWidget*) { return sizing_table(sizing); }, std::move(charts)});
    subjects.push_back(
        {tr("PV array and battery by rule"), QStringLiteral("sizing-rules"), [sizing](QWidget*) { return sizing_rules_table(sizing); }, {}});
    subjects.push_back({tr("Charge by the hour"), QStringLiteral("sizing-course"), [sizing](QWidget*) { return sizing_course_table(sizing); }, {}});
    if (!sizing.months.empty())
        subjects.push_back({tr("Months"), QStringLiteral("sizing-months"), [sizing](QWidget*) { return sizing_months_table(sizing); }, {}});
    auto* dialog = new ExportDialog(std::move(subjects), prompts_, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void MainWindow::addLoadList() {
    if (!document_.isOpen()) return;
    auto* form = new LoadListForm(LoadList{}, this);
    connect(form, &FormDialog::submitted, this, [this, form] {
        const auto added = document_.addLoadList(form->list());
        if (close_after(*form, added)) showLoadList(added.value().uuid);
    });
    form->open();
}

void MainWindow::importLoadList() {
    const auto files = prompts_.filesToOpen(this, tr("Import load list"), startFolder(), tr("Load lists (*.csv);;All files (*)"), true);
    if (files.isEmpty()) return;
    messages_->dismiss();
    std::string shown;
    for (const QString& path : files) {
        const auto imported = import_load_list_file(document_, path);
        if (imported) shown = imported.value().uuid;
        else messages_->showError(text_of(imported.error().sentence()));
    }
    settings_.setFolderOf(files.constFirst());
    if (!shown.empty()) showLoadList(shown);
}

void MainWindow::editLoadList() {
    const auto* list = document_.loadList(load_lists_page_->selectedList());
    if (!list) return;
    auto* form = new LoadListForm(*list, this);
    connect(form, &FormDialog::submitted, this, [this, form] { close_after(*form, document_.updateLoadList(form->list())); });
    form->open();
}

void MainWindow::withdrawLoadList() {
    if (document_.loadList(load_lists_page_->selectedList())) tell(document_.withdrawLoadList(load_lists_page_->selectedList()));
}

void MainWindow::addAppliance() {
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

void MainWindow::editAppliance() {
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

void MainWindow::removeAppliance() {
    const auto* list = document_.loadList(load_lists_page_->selectedList());
    const auto place = load_lists_page_->selectedAppliance();
    if (!list || !place) return;
    LoadList changed = *list;
    changed.appliances.erase(changed.appliances.begin() + static_cast<std::ptrdiff_t>(*place));
    tell(document_.updateLoadList(changed));
}

} // namespace ullage
