// SPDX-License-Identifier: GPL-3.0-or-later
// What is dropped on the window, and pasted into it.
#include "window/main_window.h"

#include "window/file_controller.h"
#include "window/log_controller.h"
#include "window/table_controller.h"

#include <QDragEnterEvent>
#include <QDropEvent>
#include <QKeyEvent>
#include <QMimeData>
#include <QUrl>

namespace ullage {

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    const FileController::Dropped dropped = files_->takeDropped(event->mimeData()->urls());
    if (!dropped.log.isEmpty()) logs_->importLog(dropped.log);
    else if (!dropped.table.isEmpty()) tables_->importTable(dropped.table);
    event->acceptProposedAction();
}

void MainWindow::keyPressEvent(QKeyEvent* event) {
    // Whatever takes a paste itself has had it: a field, a page with photos.
    if (!event->matches(QKeySequence::Paste) || document_.isLooking() || !TableController::clipboardHoldsTable())
        return QMainWindow::keyPressEvent(event);
    tables_->pasteTable();
    event->accept();
}

} // namespace ullage
