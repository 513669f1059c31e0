// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/load_list_controller.h"

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
#include "style/words.h"
#include "window/message_bar.h"
#include "window/page_stack.h"

#include <memory>

namespace ullage {

namespace {

/// Closes the form after a success, else shows the store's words in it.
template <class T>
bool close_after(FormDialog& form, const Result<T>& outcome) {
    if (outcome) form.accept();
    else form.refuse(text_of(outcome.error().sentence()));
    return outcome.ok();
}

} // namespace

void LoadListController::exportSizing() {
    pages_.showSizing();
    if (!pages_.sizing()->awaitSizing()) return;
    // One for all of them: with many units each copy is large.
    const auto sizing = std::make_shared<const Sizing>(pages_.sizing()->sizing());
    std::vector<std::pair<QString, std::function<PictureContent()>>> charts;
    for (std::size_t unit = 0; unit < sizing->units.size(); ++unit)
        if (sizing->courses[unit])
            charts.emplace_back(text_of(sizing->units[unit].unit.name), [sizing, unit]() -> PictureContent { return sizing_chart(*sizing, unit); });
    std::vector<ExportSubject> subjects;
    subjects.push_back({tr("Units"), QStringLiteral("sizing"), [sizing](QWidget*) { return sizing_table(*sizing); }, std::move(charts)});
    subjects.push_back(
        {tr("PV array and battery by rule"), QStringLiteral("sizing-rules"), [sizing](QWidget*) { return sizing_rules_table(*sizing); }, {}});
    subjects.push_back({tr("Charge by the hour"), QStringLiteral("sizing-course"), [sizing](QWidget*) { return sizing_course_table(*sizing); }, {}});
    if (!sizing->list_needs.months.empty())
        subjects.push_back({tr("Months"), QStringLiteral("sizing-months"), [sizing](QWidget*) { return sizing_months_table(*sizing); }, {}});
    auto* dialog = new ExportDialog(std::move(subjects), prompts_, window_);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void LoadListController::addLoadList() {
    if (!document_.isOpen()) return;
    auto* form = new LoadListForm(LoadList{}, window_);
    connect(form, &FormDialog::submitted, this, [this, form] {
        const auto added = document_.addLoadList(form->list());
        if (close_after(*form, added)) pages_.showLoadList(added.value().uuid);
    });
    form->open();
}

void LoadListController::editLoadList() {
    const auto* list = document_.loadList(pages_.loadLists()->selectedList());
    if (!list) return;
    auto* form = new LoadListForm(*list, window_);
    connect(form, &FormDialog::submitted, this, [this, form] { close_after(*form, document_.updateLoadList(form->list())); });
    form->open();
}

void LoadListController::withdrawLoadList() {
    if (document_.loadList(pages_.loadLists()->selectedList())) tell(document_.withdrawLoadList(pages_.loadLists()->selectedList()));
}

void LoadListController::addAppliance() {
    const auto* list = document_.loadList(pages_.loadLists()->selectedList());
    if (!list) return;
    auto* form = new ApplianceForm(Appliance{}, list->name, window_);
    connect(form, &FormDialog::submitted, this, [this, form, before = *list] {
        LoadList with_one_more = before;
        with_one_more.appliances.push_back(form->appliance());
        close_after(*form, document_.updateLoadList(with_one_more));
    });
    form->open();
}

void LoadListController::editAppliance() {
    const auto* list = document_.loadList(pages_.loadLists()->selectedList());
    const auto place = pages_.loadLists()->selectedAppliance();
    if (!list || !place) return;
    auto* form = new ApplianceForm(list->appliances[*place], list->name, window_);
    connect(form, &FormDialog::submitted, this, [this, form, before = *list, at = *place] {
        LoadList changed = before;
        changed.appliances[at] = form->appliance();
        close_after(*form, document_.updateLoadList(changed));
    });
    form->open();
}

void LoadListController::removeAppliance() {
    const auto* list = document_.loadList(pages_.loadLists()->selectedList());
    const auto place = pages_.loadLists()->selectedAppliance();
    if (!list || !place) return;
    LoadList changed = *list;
    changed.appliances.erase(changed.appliances.begin() + static_cast<std::ptrdiff_t>(*place));
    tell(document_.updateLoadList(changed));
}

} // namespace ullage
