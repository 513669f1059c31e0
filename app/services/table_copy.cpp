// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/table_copy.h"

#include "formats/tables/table_clipboard.h"
#include "services/background_work.h"
#include "style/words.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QLocale>
#include <QMimeData>
#include <QWidget>

#include <memory>
#include <utility>

namespace ullage {

bool copy_table(const StreamedTable& table, QWidget* window) {
    if (table.row_count == 0) return false;
    const char decimal_sign = QLocale::system().decimalPoint() == QLatin1String(",") ? ',' : '.';
    const auto texts = result_beside(window, QCoreApplication::translate("ullage::TableCopy", "Copying the table"), [&](WorkProgress&) {
        const ClipboardTable clip = clipboard_table(table, decimal_sign);
        return std::pair(raw_text(clip.text), raw_text(clip.html));
    });
    if (!texts) return false;
    auto data = std::make_unique<QMimeData>();
    data->setText(texts->first);
    data->setHtml(texts->second);
    QApplication::clipboard()->setMimeData(data.release());
    return true;
}

void offer_table_copy(QWidget& view, std::function<Table()> rows) {
    auto* copy = new QAction(QAction::tr("Copy rows"), &view);
    copy->setObjectName(QStringLiteral("copyRowsAction"));
    copy->setShortcut(QKeySequence::Copy);
    copy->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    QObject::connect(copy, &QAction::triggered, &view, [rows = std::move(rows), &view] { copy_table(rows(), &view); });
    view.addAction(copy);
    view.setContextMenuPolicy(Qt::ActionsContextMenu);
}

} // namespace ullage
