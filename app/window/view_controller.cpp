// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/view_controller.h"

#include "charts/picture_copy.h"
#include "charts/picture_words.h"
#include "dialogs/help_dialog.h"
#include "dialogs/help_texts.h"
#include "dialogs/installation_dialog.h"
#include "dialogs/picture_dialog.h"
#include "pages/run/run_page.h"
#include "services/appearance.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "style/theme.h"
#include "style/words.h"
#include "window/example_page.h"
#include "window/help_topics.h"
#include "window/message_bar.h"
#include "window/page_stack.h"
#include "window/run_defaults.h"

#include <QAction>
#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>

#include <functional>

namespace ullage {

namespace {

constexpr int example_width_px = 536; ///< within the help window

} // namespace

void ViewController::setTheme(Theme theme) {
    settings_.setTheme(theme);
    apply_appearance(*qApp, settings_);
}

void ViewController::showCharts(bool shown) {
    settings_.setChartsShown(shown);
    if (pages_.run().isMade()) pages_.run()->setChartsShown(shown);
}

void ViewController::setTextStep(int step) {
    const int before = settings_.textStep();
    settings_.setTextStep(step);
    if (settings_.textStep() != before) apply_appearance(*qApp, settings_); // else it is at its limit
}

void ViewController::largerText() { setTextStep(settings_.textStep() + 1); }

void ViewController::smallerText() { setTextStep(settings_.textStep() - 1); }

void ViewController::usualText() { setTextStep(0); }

void ViewController::copyShownPicture() {
    if (const auto* drawing = drawing_in_sight(*pages_.currentWidget())) tell(copy_picture(*drawing));
    else messages_->showNote(tr("No picture is in sight here; choose a run, a unit or the comparison."));
}

void ViewController::saveShownPicture() {
    const auto* drawing = drawing_in_sight(*pages_.currentWidget());
    if (!drawing) {
        messages_->showNote(tr("No picture is in sight here; choose a run, a unit or the comparison."));
        return;
    }
    // What is drawn at this moment: readings may come in while the form is open.
    PictureSpec spec = shown_spec(*drawing);
    spec.with_words = true;
    spec.source = picture_source(document_.clock().now_ms(), machine_zone(), publisher_of(settings_, document_).name);
    auto* form = new PictureDialog(spec, window_, PictureDialog::Purpose::save);
    connect(form, &FormDialog::submitted, this, [this, form, content = *shown_picture(*drawing)] {
        const QString ending = form->ending();
        const QString filter = ending == QLatin1String("png") ? tr("PNG (*.png)") : tr("SVG (*.svg)");
        const QString path = prompts_.fileToSave(window_, tr("Save picture"), QDir(saveFolder()).filePath(tr("picture") + QLatin1Char('.') + ending),
                                                 filter, ending, true);
        if (path.isEmpty()) return;
        settings_.setFolderOf(path);
        if (const auto written = write_picture(content, path, form->spec(), {Replacing::Consent::ordinary, {}}); !written) {
            form->refuse(text_of(written.error().sentence()));
            return;
        }
        form->accept();
        messages_->dismiss();
        messages_->showSaved(tr("Picture saved to %1.").arg(shown_path(path)), path);
    });
    form->open();
}

HelpDialog& ViewController::help() {
    if (!help_) help_ = new HelpDialog(window_);
    return *help_;
}

void ViewController::showKeysAndWords() {
    KeyList keys{{tr("store the reading in the entry row"), tr("Enter")},
                 {tr("next or previous field"), tr("Tab, Shift+Tab")},
                 {tr("clear the entry row"), tr("Esc")},
                 {tr("answer a doubt: as meant, keep, correct, reset, swapped"), tr("M, K, C, Z, W")},
                 {tr("bench display: take the reading of that card; dim; leave"), tr("1 to 9; N; Esc")},
                 {tr("copy the chosen rows of the readings or the comparison for a spreadsheet"), tr("Ctrl+C")},
                 {tr("open, withdraw the chosen photo"), tr("Enter, Delete")},
                 {tr("take the time of a photo that waits for the reading"), tr("Alt+T")}};
    // Menus in their order, so that the table reads as they do.
    const std::function<void(const QList<QAction*>&)> add = [&](const QList<QAction*>& entries) {
        for (const auto* entry : entries) {
            if (entry->menu()) {
                add(entry->menu()->actions());
            } else if (!entry->shortcut().isEmpty()) {
                keys.append(key_of(*entry));
            }
        }
    };
    add(window_->menuBar()->actions());
    const PageEntry* page = pages_.currentPage();
    help().showPage(tr("Keys and words"), keys_and_words_html(keys, page_help(page ? page->name : QString(), *window_)));
}

void ViewController::showExample() { help().showPage(tr("Worked example"), worked_example_html(example_width_px)); }

void ViewController::showMethod() { help().showPage(tr("Method"), method_html()); }

void ViewController::showCautions() { help().showPage(tr("Cautions"), cautions_html()); }

void ViewController::checkInstallation() {
    if (!installation_) {
        const auto check = [this] {
            InstallationSite site;
            if (document_.isOpen()) site.logbooks = QFileInfo(document_.path()).absolutePath();
            site.paper = chosen_paper(settings_) == Paper::letter ? tr("Letter") : tr("A4");
            return check_installation(settings_, site);
        };
        installation_ = new InstallationDialog(check, window_);
    }
    installation_->show();
    installation_->raise();
    installation_->activateWindow();
}

void ViewController::showAbout() { help().showPage(tr("About Ullage"), about_html()); }

} // namespace ullage
