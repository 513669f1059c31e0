// SPDX-License-Identifier: GPL-3.0-or-later
#include "fitting.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QComboBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QScrollArea>
#include <QStyle>
#include <QStyleOptionComboBox>
#include <QTabBar>
#include <QTableView>
#include <QTextDocument>
#include <QTreeView>

#include <algorithm>

namespace ullage::test {
namespace {

/// Names, of time zones and those that testers of the sample gave; they are cut where there is no room for all of them.
bool is_name(const QString& text) {
    static const QRegularExpression words(QStringLiteral("(Socket|Bench|Logging) meter|^[A-Z]\\w+/[A-Z]"));
    return text.contains(words);
}

/// As it is drawn: without marks of text and letters of menus.
QString plain(const QString& text) {
    if (!Qt::mightBeRichText(text)) return QString(text).remove(QLatin1Char('&'));
    QTextDocument document;
    document.setHtml(text);
    return document.toPlainText();
}

int width_of(const QWidget& widget, const QString& text) {
    int width = 0;
    for (const QString& line : plain(text).split(QLatin1Char('\n'))) width = std::max(width, widget.fontMetrics().horizontalAdvance(line));
    return width;
}

QString told(const QWidget& widget, const QString& text) {
    return QStringLiteral("%1 %2: “%3”").arg(QString::fromLatin1(widget.metaObject()->className()), widget.objectName(), text);
}

bool is_cut(const QLabel& label) {
    const QRect room = label.contentsRect();
    if (!label.wordWrap()) return room.width() < width_of(label, label.text());
    if (label.height() < label.heightForWidth(label.width())) return true;
    const QStringList words = plain(label.text()).split(QRegularExpression(QStringLiteral("[\\s\\x{200B}/-]+")));
    return std::ranges::any_of(words, [&](const QString& word) { return room.width() < width_of(label, word); });
}

/// In a table a choice is as wide as what is chosen.
bool is_in_table(const QComboBox& combo) { return combo.parentWidget() && qobject_cast<const QTableView*>(combo.parentWidget()->parentWidget()); }

bool is_list_cut(const QComboBox& combo, const QStyleOptionComboBox& option) {
    const QRect list = combo.style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxListBoxPopup, &combo);
    return combo.count() > 0 && list.width() < combo.view()->sizeHintForColumn(combo.modelColumn());
}

/// Entries that are wider than what the choice, or its list, shows of them.
QStringList cut_entries(const QComboBox& combo) {
    QStyleOptionComboBox option;
    option.initFrom(&combo);
    option.editable = combo.isEditable();
    const QRect field = combo.style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, &combo);
    QStringList cut;
    for (int n = 0; n < combo.count(); ++n)
        if (!is_name(combo.itemText(n)) && (!is_in_table(combo) || n == combo.currentIndex()) && field.width() < width_of(combo, combo.itemText(n)))
            cut << combo.itemText(n);
    if (is_list_cut(combo, option)) cut << QStringLiteral("the list of ") + combo.currentText();
    return cut;
}

QStringList cut_heads(const QHeaderView& head) {
    QStringList cut;
    for (int n = 0; n < head.count(); ++n) {
        const QString text = head.model() ? head.model()->headerData(n, head.orientation()).toString() : QString();
        if (head.isSectionHidden(n) || text.isEmpty()) continue;
        if (head.sectionSize(n) < width_of(head, text)) cut << text;
    }
    return cut;
}

bool in_sight(const QWidget& widget, const QWidget& root) { return widget.isVisibleTo(&root) && widget.window() == root.window(); }

} // namespace

QStringList cut_off_on_page(const QWidget& root) {
    QStringList cut;
    for (const auto* button : root.findChildren<QAbstractButton*>())
        // A sign of one letter stands in a button of its own size.
        if (in_sight(*button, root) && button->text().size() > 1 && button->width() < button->minimumSizeHint().width())
            cut << told(*button, button->text());
    for (const auto* label : root.findChildren<QLabel*>()) {
        if (!in_sight(*label, root) || label->wordWrap() || label->text().isEmpty() || label->visibleRegion().isEmpty()) continue;
        if (!is_name(label->text()) && is_cut(*label)) cut << told(*label, label->text());
    }
    for (const auto* tabs : root.findChildren<QTabBar*>())
        if (in_sight(*tabs, root) && tabs->width() < tabs->sizeHint().width() && !tabs->usesScrollButtons())
            cut << told(*tabs, QStringLiteral("tabs"));
    return cut;
}

QStringList cut_off_in_form(const QWidget& root) {
    QStringList cut = cut_off_on_page(root);
    for (const auto* button : root.findChildren<QAbstractButton*>())
        if (in_sight(*button, root) && !button->text().isEmpty() && button->height() < button->minimumSizeHint().height())
            cut << told(*button, button->text());
    for (const auto* label : root.findChildren<QLabel*>())
        if (in_sight(*label, root) && !label->text().isEmpty() && !is_name(label->text()) && is_cut(*label)) cut << told(*label, label->text());
    for (const auto* combo : root.findChildren<QComboBox*>()) {
        if (!in_sight(*combo, root)) continue;
        for (const QString& entry : cut_entries(*combo)) cut << told(*combo, entry);
    }
    for (const auto* edit : root.findChildren<QLineEdit*>()) {
        constexpr int margins_px = 6; // of the line and the cursor, which a field keeps at both sides together
        if (in_sight(*edit, root) && edit->text().isEmpty() && edit->contentsRect().width() - margins_px < width_of(*edit, edit->placeholderText()))
            cut << told(*edit, edit->placeholderText());
    }
    for (const auto* box : root.findChildren<QGroupBox*>())
        if (in_sight(*box, root) && box->width() < box->minimumSizeHint().width()) cut << told(*box, box->title());
    for (const auto* tabs : root.findChildren<QTabBar*>())
        if (in_sight(*tabs, root) && tabs->width() < tabs->sizeHint().width()) cut << told(*tabs, QStringLiteral("tabs"));
    for (const auto* head : root.findChildren<QHeaderView*>())
        if (in_sight(*head, root) && head->orientation() == Qt::Horizontal)
            for (const QString& text : cut_heads(*head)) cut << told(*head->parentWidget(), text);
    for (const auto* area : root.findChildren<QScrollArea*>())
        if (in_sight(*area, root) && area->widget() && area->horizontalScrollBarPolicy() == Qt::ScrollBarAlwaysOff &&
            area->widget()->width() > area->viewport()->width())
            cut << told(*area, QStringLiteral("%1 px of %2").arg(area->viewport()->width()).arg(area->widget()->width()));
    cut.removeDuplicates();
    return cut;
}

} // namespace ullage::test
