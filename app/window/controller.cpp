// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/controller.h"

#include "services/settings.h"
#include "style/words.h"
#include "window/message_bar.h"

#include <QFileInfo>
#include <QMainWindow>
#include <QStandardPaths>

namespace ullage {

Controller::Controller(const Workplace& at)
    : QObject(&at.window), window_(&at.window), document_(at.document), settings_(at.settings), prompts_(at.prompts), messages_(&at.messages),
      pages_(at.pages) {}

QString Controller::startFolder() const {
    const auto known = settings_.folder();
    return !known.isEmpty() && QFileInfo(known).isDir() ? known : QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

QString Controller::saveFolder() const {
    const QFileInfo logbook(document_.path());
    return document_.isOpen() && logbook.isFile() ? logbook.absolutePath() : startFolder();
}

QString Controller::logbookFilter() { return tr("Logbooks (*.ullage);;All files (*)"); }

void Controller::tell(const Result<void>& outcome) {
    messages_->dismiss();
    if (!outcome) messages_->showError(text_of(outcome.error().sentence()));
}

} // namespace ullage
