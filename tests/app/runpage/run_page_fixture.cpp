// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_page_fixture.h"

#include "pages/parts/question_bar.h"
#include "style/theme.h"

#include <QApplication>
#include <QTest>
#include <QVBoxLayout>

#include <csignal>

#include <sys/resource.h>

namespace ullage::test {

void RunPageTest::SetUp() {
    apply_theme(*qApp, Theme::light);
    const auto made = document.create(QString::fromStdString((folder / "bench.ullage").string()));
    ASSERT_TRUE(made) << made.error().sentence();
    Unit osk;
    osk.name = "Osk 1200";
    osk.rated_energy_wh = 1200;
    osk.rated_output_w = 600;
    unit = document.addUnit(osk).value();
    Meter socket;
    socket.name = "socket meter A";
    socket.step_wh = 1;
    socket.limit_percent = 1;
    meter = document.addMeter(socket).value();
    ullage::Run drain;
    drain.unit_uuid = unit.uuid;
    drain.meter_uuid = meter.uuid;
    drain.started_full = true;
    drain.load = "projector and work lights";
    drain.time_zone = "Europe/Paris";
    run = document.addRun(drain).value();
}

void RunPageTest::TearDown() {
    window.reset();
    apply_theme(*qApp, Theme::light);
}

void RunPageTest::recordSample(std::size_t count) {
    const UtcMs start_ms = clock.now_ms();
    for (std::size_t i = 0; i < count; ++i) {
        const SampleReading& sample = sticking_drain[i];
        clock.set_ms(start_ms + sample.minutes * 60'000);
        ReadingValues values;
        values.time_ms = clock.now_ms();
        values.gauge_percent = sample.gauge_percent;
        values.register_wh = sample.register_wh;
        values.remark = sample.remark;
        const auto noted = document.record(run.uuid, values);
        ASSERT_TRUE(noted) << noted.error().sentence();
    }
}

void RunPageTest::showPage() {
    window = std::make_unique<QWidget>();
    auto* layout = new QVBoxLayout(window.get());
    layout->setContentsMargins(216, 0, 0, 0);
    page = new RunPage(document);
    QObject::connect(page, &RunPage::error, window.get(), [this](const QString& sentence) { errors.append(sentence); });
    layout->addWidget(page);
    window->resize(1280, 800);
    page->showRun(run.uuid);
    window->show();
    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    page->focusEntry();
}

void RunPageTest::type(const char* field, const char* text) {
    auto* edit = find<QLineEdit>(field);
    ASSERT_NE(edit, nullptr);
    ASSERT_TRUE(edit->isVisible()) << field;
    edit->setFocus();
    edit->selectAll();
    QTest::keyClick(edit, Qt::Key_Delete);
    // Simulated keys are ASCII only; an input method inserts the rest.
    for (const QChar letter : QString::fromUtf8(text)) {
        if (letter.unicode() < 0x80) QTest::keyClick(edit, letter.toLatin1());
        else edit->insert(letter);
    }
}

void RunPageTest::press(Qt::Key key, Qt::KeyboardModifiers modifiers) {
    QWidget* focus = QApplication::focusWidget();
    ASSERT_NE(focus, nullptr);
    QTest::keyClick(focus, key, modifiers);
}

std::vector<Reading> RunPageTest::readings() const {
    std::vector<Reading> standing;
    for (const Reading& reading : record().readings)
        if (!reading.withdrawn) standing.push_back(reading);
    return standing;
}

QString RunPageTest::focusName() const {
    const QWidget* focus = QApplication::focusWidget();
    return focus == nullptr ? QString() : focus->objectName();
}

QString RunPageTest::questionText() const {
    const auto* bar = find<QuestionBar>("questionBar");
    return bar->isVisible() ? bar->question() : QString();
}

struct FullDisk::Limits {
    rlimit before{};
    void (*handler)(int) = nullptr;
};

FullDisk::FullDisk() : limits_(std::make_unique<Limits>()) {
    limits_->handler = std::signal(SIGXFSZ, SIG_IGN);
    getrlimit(RLIMIT_FSIZE, &limits_->before);
    rlimit none = limits_->before;
    none.rlim_cur = 0;
    setrlimit(RLIMIT_FSIZE, &none);
}

FullDisk::~FullDisk() {
    setrlimit(RLIMIT_FSIZE, &limits_->before);
    std::signal(SIGXFSZ, limits_->handler);
}

} // namespace ullage::test
