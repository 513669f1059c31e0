// SPDX-License-Identifier: GPL-3.0-or-later
#include "places.h"

#include "models/logbook_tree_model.h"
#include "support/source_dir.h"

#include <QAbstractItemView>
#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QComboBox>
#include <QDialog>
#include <QGraphicsView>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTabBar>
#include <QTabWidget>
#include <QTextEdit>
#include <QTreeView>

#include <algorithm>

namespace ullage::test {

namespace {

/// Parts that Qt makes of a control: its own interface speaks for them.
bool is_part_of_a_control(const QWidget& widget) {
    if (qobject_cast<const QHeaderView*>(&widget) || qobject_cast<const QMenu*>(&widget)) return true;
    const QWidget* above = widget.parentWidget();
    return above && (qobject_cast<const QComboBox*>(above) || qobject_cast<const QAbstractSpinBox*>(above) || qobject_cast<const QTabBar*>(above) ||
                     qobject_cast<const QAbstractItemView*>(above));
}

bool is_control(const QWidget& widget) {
    return qobject_cast<const QAbstractButton*>(&widget) || qobject_cast<const QLineEdit*>(&widget) || qobject_cast<const QComboBox*>(&widget) ||
           qobject_cast<const QAbstractSpinBox*>(&widget) || qobject_cast<const QAbstractItemView*>(&widget) ||
           qobject_cast<const QPlainTextEdit*>(&widget) || qobject_cast<const QTextEdit*>(&widget) || qobject_cast<const QProgressBar*>(&widget) ||
           qobject_cast<const QTabBar*>(&widget) || qobject_cast<const QGraphicsView*>(&widget) || widget.inherits("ullage::VesselRow") ||
           (!qobject_cast<const QLabel*>(&widget) && !qobject_cast<const QScrollArea*>(&widget) && widget.focusPolicy() != Qt::NoFocus &&
            !widget.focusProxy() && !qobject_cast<const QAbstractSlider*>(&widget) && !widget.isWindow());
}

/// The form or dialog above the window; null where there is none.
QDialog* dialog_in_sight(const QWidget& window) {
    for (auto* dialog : window.findChildren<QDialog*>())
        if (dialog->isVisible()) return dialog;
    return nullptr;
}

/// What Tab goes through from `first` until it comes back, in order.
QList<QWidget*> press_tab_around(QWidget& root) {
    QList<QWidget*> visited;
    root.activateWindow();
    QApplication::processEvents();
    if (!QApplication::focusWidget() || QApplication::focusWidget()->window() != &root) root.setFocus();
    constexpr int most = 400;
    for (int turn = 0; turn < most; ++turn) {
        QWidget* at = QApplication::focusWidget();
        if (!at) at = &root;
        QTest::keyClick(at, Qt::Key_Tab);
        QWidget* now = QApplication::focusWidget();
        if (!now || now->window() != &root || (!visited.isEmpty() && now == visited.first())) break;
        if (visited.contains(now)) break; // a circle that leaves some out
        visited << now;
    }
    return visited;
}

} // namespace

const QList<QWidget*>& Place::tabbed_through() {
    if (!tabbed_through_) {
        (void)press_tab_around(root); // the first time rows get chosen, and buttons can then be used
        tabbed_through_ = press_tab_around(root);
    }
    return *tabbed_through_;
}

QList<QWidget*> controls_of(QWidget& root) {
    QList<QWidget*> found;
    for (auto* widget : root.findChildren<QWidget*>())
        if (widget->isVisibleTo(&root) && widget->window() == root.window() && !is_part_of_a_control(*widget) && is_control(*widget)) found << widget;
    return found;
}

QString called(const QWidget& widget) {
    QString words = QString::fromLatin1(widget.metaObject()->className()) + QLatin1Char(' ') + widget.objectName();
    if (widget.parentWidget())
        words += QStringLiteral(" in ") + QString::fromLatin1(widget.parentWidget()->metaObject()->className()) + QLatin1Char(' ') +
                 widget.parentWidget()->objectName();
    return words;
}

QString spoken_name(QWidget& widget) {
    auto* face = QAccessible::queryAccessibleInterface(&widget);
    if (!face) return {};
    if (!qobject_cast<QComboBox*>(&widget)) return face->text(QAccessible::Name);
    // Qt tells as the name of a choice what is chosen; what it is comes from its label, or from its description.
    for (const auto& [teller, relation] : face->relations())
        if (relation == QAccessible::Label) return teller->text(QAccessible::Name);
    return face->text(QAccessible::Description);
}

void AccessTest::SetUp() {
    WindowTest::SetUp();
    trigger("sampleLogbookAction");
    ASSERT_TRUE(document.isOpen()) << message().toStdString();
    // What is done here stays out of the sample that other tests open.
    prompts.to_save = file("bench.ullage");
    trigger("saveCopyAction");
    window->openLogbook(file("bench.ullage"));
    ASSERT_TRUE(document.isOpenAt(file("bench.ullage"))) << message().toStdString();
    // A test that runs, and a load list, so that there is something to end and to change.
    window->showUnit(document.units().front().uuid);
    start_run();
    LoadList list;
    list.name = "Camp";
    list.appliances.push_back({});
    list.appliances.back().name = "Lamp";
    list.appliances.back().power_w = 12;
    list.appliances.back().hours_per_day = 4;
    ASSERT_TRUE(document.addLoadList(list)) << "the load list";
    settle();
}

void AccessTest::settle() const {
    constexpr int settling_ms = 25; // for layouts and texts that follow in a later turn
    QTest::qWait(settling_ms);
}

void AccessTest::at_every_tab(QWidget& root, QWidget& part, const QString& place, const Look& look) {
    QList<QTabWidget*> outer;
    for (auto* tabs : part.findChildren<QTabWidget*>())
        if (tabs->isVisible() && std::ranges::none_of(outer, [tabs](const QTabWidget* other) { return other->isAncestorOf(tabs); })) outer << tabs;
    if (outer.isEmpty()) {
        Place here(root, place);
        look(here);
    }
    for (auto* tabs : outer) {
        const int before = tabs->currentIndex();
        for (int tab = 0; tab < tabs->count(); ++tab) {
            if (!tabs->isTabVisible(tab) || !tabs->isTabEnabled(tab)) continue;
            tabs->setCurrentIndex(tab);
            settle();
            at_every_tab(root, *tabs->widget(tab), place + QStringLiteral(", ") + tabs->tabText(tab), look);
        }
        tabs->setCurrentIndex(before);
    }
}

void AccessTest::at_every_page(const Look& look) {
    auto& tree = *find<QTreeView>("logbookTree");
    const auto& pages = *find<QStackedWidget>("pagesStack");
    for (QModelIndex row = tree.model()->index(0, 0); row.isValid(); row = tree.indexBelow(row)) {
        if (!(row.flags() & Qt::ItemIsSelectable)) continue;
        tree.setCurrentIndex(row);
        settle();
        at_every_tab(*window, *pages.currentWidget(), row.data().toString(), look);
    }
}

void AccessTest::open_every_entry(const QString& where, const std::function<void()>& go_there, const QSet<QString>& menus, const Look& look) {
    go_there();
    settle();
    for (auto* entry : window->findChildren<QAction*>()) {
        const QString name = entry->objectName();
        const bool opens = entry->text().endsWith(QStringLiteral("…")) || menus.contains(name);
        if (!opens || name.isEmpty() || !entry->isEnabled() || window->action(name) != entry) continue;
        entry->trigger();
        settle();
        QDialog* dialog = dialog_in_sight(*window);
        if (!dialog) {
            go_there(); // it may have led elsewhere
            continue;
        }
        const QString place = where + QStringLiteral(": ") + dialog->windowTitle();
        if (auto* more = dialog->findChild<QPushButton*>(QStringLiteral("moreFieldsButton")); more && more->isVisible()) more->click();
        settle();
        at_every_tab(*dialog, *dialog, place, look);
        dialog->reject();
        QApplication::processEvents();
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
}

void AccessTest::at_every_dialog(const Look& look) {
    const QSet<QString> others{QStringLiteral("keysAndWordsAction"), QStringLiteral("methodAction"), QStringLiteral("aboutAction"),
                               QStringLiteral("checkInstallationAction"), QStringLiteral("cautionsAction")};
    prompts.to_open = {QString::fromStdString((source_dir() / "sample-data" / "02-pelm-900-drain-64-w.csv").string())};
    open_every_entry(
        QStringLiteral("a unit"), [this] { window->showUnit(document.units().front().uuid); }, others, look);
    std::vector<RunId> looked_at{document.runs().front()->run.uuid};
    for (const auto* record : document.runs())
        if (record->run.end == RunEnd::still_running) looked_at.push_back(record->run.uuid);
    for (const RunId& run : looked_at)
        open_every_entry(
            document.run(run)->run.end == RunEnd::still_running ? QStringLiteral("a running test") : QStringLiteral("a run"),
            [this, run] { window->showRun(run); }, {}, look);
    open_every_entry(
        QStringLiteral("load lists"), [this] { window->showLoadLists(); }, {}, look);
    open_every_entry(
        QStringLiteral("comparison"), [this] { window->showComparison(); }, {}, look);
}

void AccessTest::everywhere(const Look& look) {
    at_every_page(look);
    at_every_dialog(look);
}

void Complaints::add(const QString& place, const QString& what) {
    if (known_.contains(what)) return;
    known_ << what;
    complaints_ << place + QStringLiteral(": ") + what;
}

void Complaints::expect_none(int at_least) const {
    EXPECT_GE(looked_at_, at_least) << "hardly anything was looked at";
    EXPECT_TRUE(complaints_.isEmpty()) << complaints_.size() << " complaints\n" << complaints_.join(QLatin1Char('\n')).toStdString();
}

} // namespace ullage::test
