// SPDX-License-Identifier: GPL-3.0-or-later
#include "window_fixture.h"

#include "window/message_bar.h"

#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFile>
#include <QMimeData>
#include <QStackedWidget>
#include <QUrl>

namespace ullage::test {

QString WindowTest::message() const {
    const auto* bar = window->findChild<MessageBar*>(QStringLiteral("messageBar"));
    return bar && bar->isVisible() ? bar->message() : QString();
}

QString WindowTest::page() const {
    const auto* pages = window->findChild<QStackedWidget*>(QStringLiteral("pagesStack"));
    return pages ? pages->currentWidget()->objectName() : QString();
}

void WindowTest::drop(const QStringList& files) {
    QMimeData data;
    QList<QUrl> urls;
    for (const auto& name : files) urls << QUrl::fromLocalFile(name);
    data.setUrls(urls);
    // As with a real pointer: whoever accepts the entering is offered the drop.
    QDragEnterEvent enter(QPoint(400, 400), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &enter);
    ASSERT_TRUE(enter.isAccepted());
    QDropEvent event(QPointF(400, 400), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &event);
    QApplication::processEvents();
}

void WindowTest::new_logbook(const char* name) {
    prompts.to_save = file(name);
    trigger("newLogbookAction");
    ASSERT_TRUE(document.isOpen()) << message().toStdString();
    prompts.to_save.clear();
}

void WindowTest::add_unit(const QString& name, const QString& rated) {
    trigger("addUnitAction");
    type("nameEdit", name);
    type("ratedEnergyEdit", rated);
    click("submitButton");
    // A closed form goes only with the next turn of the event loop, and its fields with it.
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

void WindowTest::add_meter(const QString& name) {
    trigger("addMeterAction");
    type("nameEdit", name);
    type("stepEdit", "1 Wh");
    type("limitEdit", "1 %");
    click("submitButton");
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

void WindowTest::start_run() {
    trigger("startRunAction");
    click("submitButton");
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

QByteArray WindowTest::sheet() {
    return "# unit: Tarrow 2k\n# rated_energy_wh: 2000\n# run: drain\n# started_full: yes\n# ended: stopped by tester\n"
           "# time_zone: UTC\n# bench: by the door\ntime,gauge_percent,register_wh,meter_w,display_w,mark,remark\n"
           "2027-05-06T10:00Z,100,0,,,,\n2027-05-06T12:00Z,82,360,,,,\n";
}

QString WindowTest::write(const char* name, const QByteArray& text) const {
    QFile out(file(name));
    EXPECT_TRUE(out.open(QFile::WriteOnly));
    EXPECT_EQ(out.write(text), text.size());
    return out.fileName();
}

} // namespace ullage::test
