// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/table_copy.h"

#include "exchange/table_clipboard.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QLocale>
#include <QMimeData>
#include <QWidget>

#include <memory>

namespace ullage {

bool copy_table(const StreamedTable& table) {
    if (table.row_count == 0) return false;
    const ClipboardTable clip = clipboard_table(table, QLocale::system().decimalPoint() == QLatin1String(",") ? ',' : '.');
    auto data = std::make_unique<QMimeData>();
    data->setText(QString::fromStdString(clip.text));
    data->setHtml(QString::fromStdString(clip.html));
    QApplication::clipboard()->setMimeData(data.release());
    return true;
}

void offer_table_copy(QWidget& view, std::function<Table()> rows) {
    auto* copy = new QAction(QAction::tr("Copy rows"), &view);
    copy->setObjectName(QStringLiteral("copyRowsAction"));
    copy->setShortcut(QKeySequence::Copy);
    copy->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    QObject::connect(copy, &QAction::triggered, &view, [rows = std::move(rows)] { copy_table(rows()); });
    view.addAction(copy);
    view.setContextMenuPolicy(Qt::ActionsContextMenu);
}

} // namespace ullage
