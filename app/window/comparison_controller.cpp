// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/comparison_controller.h"

#include "pages/comparison/comparison_page.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "window/message_bar.h"
#include "window/page_stack.h"

#include <QCryptographicHash>

namespace ullage {

namespace {

/// Which logbooks were compared beside the one at `path`.
QString compared_logbooks_name(const QString& path) {
    return QStringLiteral("comparedWith-") + QString::fromLatin1(QCryptographicHash::hash(path.toUtf8(), QCryptographicHash::Sha1).toHex());
}

} // namespace

void ComparisonController::addComparedLogbooks() {
    pages_.showComparison();
    const auto files = prompts_.filesToOpen(window_, tr("Add units of another logbook"), startFolder(), logbookFilter(), true);
    if (files.isEmpty()) return;
    messages_->dismiss();
    settings_.setFolderOf(files.constFirst());
    pages_.comparison()->addLogbooks(files);
}

void ComparisonController::showComparedLogbooks() {
    pages_.comparison()->setOtherLogbooks(
        settings_.remembered(compared_logbooks_name(document_.path())).split(QLatin1Char('\n'), Qt::SkipEmptyParts));
}

void ComparisonController::chooseColumns() {
    pages_.showComparison();
    pages_.comparison()->chooseColumns();
}

void ComparisonController::exportComparison() {
    pages_.showComparison();
    pages_.comparison()->exportComparison();
}

void ComparisonController::copyComparison() {
    pages_.showComparison();
    pages_.comparison()->copyTable();
}

void ComparisonController::rememberLogbooks(const QStringList& paths) {
    settings_.remember(compared_logbooks_name(document_.path()), paths.join(QLatin1Char('\n')));
}

} // namespace ullage
