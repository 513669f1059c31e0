// SPDX-License-Identifier: GPL-3.0-or-later
// What a person meets while work goes on beside the window: its progress, its Cancel, and a window that takes no input.
#include "services/appearance.h"
#include "services/background_work.h"
#include "window_fixture.h"

#include "support/large_logbook.h"

#include <QAction>
#include <QCloseEvent>
#include <QComboBox>
#include <QDialog>
#include <QDir>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFile>
#include <QLabel>
#include <QMainWindow>
#include <QMimeData>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>
#include <QWheelEvent>
#include <QWindow>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <functional>
#include <stdexcept>
#include <thread>

namespace ullage::test {
namespace {

constexpr auto patience = std::chrono::minutes(1);

/// The dialog of the work that goes on; null while there is none.
QDialog* work_dialog() {
    for (QWidget* each : QApplication::topLevelWidgets())
        if (each->objectName() == QLatin1String("workDialog")) return qobject_cast<QDialog*>(each);
    return nullptr;
}

/// Does `act` once, as soon as the dialog of the work is seen.
class WhenSeen {
public:
    explicit WhenSeen(std::function<void(QDialog& dialog)> act) : act_(std::move(act)) {
        QObject::connect(&timer_, &QTimer::timeout, [this] {
            QDialog* dialog = work_dialog();
            if (dialog == nullptr || !dialog->isVisible()) return;
            timer_.stop();
            done_ = true;
            act_(*dialog);
        });
        timer_.start(5);
    }
    [[nodiscard]] bool done() const { return done_; }

private:
    std::function<void(QDialog&)> act_;
    QTimer timer_;
    std::atomic<bool> done_ = false;
};

/// Waits in the work, whatever is asked; false where that took too long.
bool wait_for(const std::function<bool()>& what) {
    for (const auto until = std::chrono::steady_clock::now() + patience; !what();) {
        if (std::chrono::steady_clock::now() > until) return false;
        std::this_thread::sleep_for(std::chrono::milliseconds(1));
    }
    return true;
}

/// A window that counts what reaches it.
class BesideTest : public testing::Test {
protected:
    BesideTest() {
        auto* column = new QVBoxLayout;
        for (QWidget* part : {static_cast<QWidget*>(edit), static_cast<QWidget*>(button)}) column->addWidget(part);
        auto* middle = new QWidget;
        middle->setLayout(column);
        window.setCentralWidget(middle);
        auto* action = new QAction(&window);
        action->setShortcut(Qt::CTRL | Qt::Key_S);
        window.addAction(action);
        QObject::connect(action, &QAction::triggered, [this] { ++shortcuts; });
        QObject::connect(button, &QPushButton::clicked, [this] { ++clicks; });
        window.show();
        window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
        edit->setFocus();
    }

    /// Types, clicks and presses keys in the window.
    void use_window() {
        QTest::keyClicks(edit, QStringLiteral("98"));
        QTest::keyClick(window.windowHandle(), Qt::Key_7); // as the desktop gives it
        QTest::mouseClick(button, Qt::LeftButton);
        QTest::mouseClick(window.windowHandle(), Qt::LeftButton, {}, button->mapTo(&window, button->rect().center()));
        QTest::keyClick(edit, Qt::Key_S, Qt::ControlModifier);
        QWheelEvent wheel({}, {}, {}, {0, 120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
        QApplication::sendEvent(edit, &wheel);
        QMimeData words;
        words.setText(QStringLiteral("dropped"));
        QDragEnterEvent enter({3, 3}, Qt::CopyAction, &words, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(edit, &enter);
        QDropEvent drop({3, 3}, Qt::CopyAction, &words, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(edit, &drop);
    }

    QMainWindow window;
    QLineEdit* edit = new QLineEdit;
    QPushButton* button = new QPushButton(QStringLiteral("Press"));
    int clicks = 0, shortcuts = 0;
};

TEST_F(BesideTest, progress_goes_up_as_the_work_says_and_before_it_says_so_the_bar_only_moves) {
    std::atomic<int> seen = -1;
    int told = 0, greatest = -1;
    bool ascending = true;
    QTimer looking;
    QObject::connect(&looking, &QTimer::timeout, [&] {
        const QDialog* dialog = work_dialog();
        if (dialog == nullptr || !dialog->isVisible()) return;
        const auto* bar = dialog->findChild<QProgressBar*>(QStringLiteral("workBar"));
        if (bar->maximum() == 0) {
            if (seen < 0) seen = 0;
            return;
        }
        const int quarter = 4 * bar->value() / bar->maximum();
        ascending = ascending && quarter >= greatest;
        greatest = std::max(greatest, quarter);
        seen = quarter;
    });
    looking.start(5);
    work_beside(&window, QStringLiteral("Counting"), [&](WorkProgress& progress) {
        EXPECT_TRUE(wait_for([&] { return seen == 0; })) << "the bar does not show that work goes on";
        for (int quarter = 1; quarter <= 4; ++quarter, ++told) {
            progress.at(quarter, 4);
            EXPECT_TRUE(wait_for([&] { return seen == quarter; })) << quarter;
        }
    });
    EXPECT_EQ(told, 4);
    EXPECT_TRUE(ascending);
    EXPECT_EQ(work_dialog(), nullptr) << "it goes with the work";
}

TEST_F(BesideTest, cancel_is_told_to_the_work_which_ends_without_a_result_and_the_dialog_says_so_until_then) {
    for (const bool by_key : {false, true}) {
        std::atomic<bool> heeded = false;
        const WhenSeen seen([&](QDialog& dialog) {
            auto* cancel = dialog.findChild<QPushButton*>(QStringLiteral("cancelWorkButton"));
            if (by_key) QTest::keyClick(&dialog, Qt::Key_Escape);
            else QTest::mouseClick(cancel, Qt::LeftButton);
            EXPECT_EQ(dialog.findChild<QLabel*>(QStringLiteral("workLabel"))->text(), QStringLiteral("Stopping…"));
            EXPECT_FALSE(cancel->isEnabled());
            EXPECT_TRUE(dialog.isVisible()) << "the work has not heeded it yet";
            heeded = true;
        });
        const auto result = result_beside(&window, QStringLiteral("Working"), [&](WorkProgress& progress) {
            EXPECT_TRUE(wait_for([&] { return progress.cancelled() && heeded; }));
            return 7;
        });
        EXPECT_TRUE(seen.done());
        EXPECT_EQ(result, std::nullopt);
    }
    EXPECT_EQ(result_beside(&window, QStringLiteral("Working"), [](WorkProgress&) { return 7; }), 7);
}

TEST_F(BesideTest, keys_clicks_wheel_and_drops_do_not_reach_the_window_before_the_dialog_is_seen_nor_after) {
    std::atomic<int> tried = 0;
    QTimer::singleShot(60, [&] { // the dialog comes after 300 ms
        EXPECT_TRUE(work_dialog() != nullptr && !work_dialog()->isVisible());
        use_window();
        ++tried;
    });
    const WhenSeen seen([&](QDialog&) {
        use_window();
        ++tried;
    });
    work_beside(&window, QStringLiteral("Working"), [&](WorkProgress&) { EXPECT_TRUE(wait_for([&] { return tried == 2; })); });
    QApplication::processEvents();
    EXPECT_EQ(edit->text(), QString());
    EXPECT_EQ(clicks, 0);
    EXPECT_EQ(shortcuts, 0);
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    use_window();
    QApplication::processEvents();
    EXPECT_TRUE(edit->text().contains(QStringLiteral("98"))) << edit->text().toStdString();
    EXPECT_GT(clicks, 0);
    EXPECT_GT(shortcuts, 0);
}

TEST_F(BesideTest, the_window_cannot_be_closed_while_it_waits_and_can_afterwards) {
    const WhenSeen seen([&](QDialog&) {
        EXPECT_FALSE(window.close());
        QCloseEvent close; // as the desktop gives it
        QApplication::sendEvent(window.windowHandle(), &close);
        EXPECT_TRUE(window.isVisible());
    });
    work_beside(&window, QStringLiteral("Working"), [&](WorkProgress& progress) {
        EXPECT_TRUE(wait_for([&] { return seen.done(); }));
        EXPECT_FALSE(progress.cancelled()) << "nobody asked for that";
    });
    EXPECT_TRUE(window.isVisible());
    EXPECT_TRUE(window.close());
}

TEST_F(BesideTest, what_the_work_throws_is_thrown_where_it_was_asked_for_and_the_window_takes_input_again) {
    EXPECT_THROW(work_beside(&window, QStringLiteral("Working"),
                             [](WorkProgress&) {
                                 std::this_thread::sleep_for(std::chrono::milliseconds(400));
                                 throw std::runtime_error("no more");
                             }),
                 std::runtime_error);
    EXPECT_EQ(work_dialog(), nullptr);
    QTest::keyClicks(edit, QStringLiteral("98"));
    EXPECT_EQ(edit->text(), QStringLiteral("98"));
}

TEST_F(BesideTest, work_in_turns_keeps_input_out_too_and_is_told_of_cancel) {
    const WhenSeen seen([&](QDialog& dialog) {
        use_window();
        EXPECT_FALSE(window.close());
        QTest::mouseClick(dialog.findChild<QPushButton*>(QStringLiteral("cancelWorkButton")), Qt::LeftButton);
    });
    bool stopped = false;
    const auto until = std::chrono::steady_clock::now() + patience;
    work_in_turns(&window, QStringLiteral("Drawing"), [&](WorkProgress&, const std::function<bool()>& turn) {
        while (!stopped && std::chrono::steady_clock::now() < until) stopped = !turn();
    });
    EXPECT_TRUE(stopped);
    EXPECT_EQ(edit->text(), QString());
    EXPECT_EQ(clicks + shortcuts, 0);
}

TEST_F(BesideTest, what_cannot_be_stopped_offers_no_cancel_and_does_not_heed_escape) {
    const TempFolder folder;
    Settings settings(QString::fromStdString((folder / "settings.ini").string()));
    apply_appearance(*qApp, settings); // under a style sheet Qt shows the buttons of a box again
    const WhenSeen seen([&](QDialog& dialog) {
        QTest::keyClick(&dialog, Qt::Key_Escape);
        for (const auto* button : dialog.findChildren<QPushButton*>()) EXPECT_FALSE(button->isVisible()) << button->text().toStdString();
        EXPECT_EQ(dialog.findChild<QLabel*>(QStringLiteral("workLabel"))->text(), QStringLiteral("Writing"));
    });
    work_beside(
        &window, QStringLiteral("Writing"),
        [&](WorkProgress& progress) {
            EXPECT_TRUE(wait_for([&] { return seen.done(); }));
            EXPECT_FALSE(progress.cancelled());
        },
        Cancelling::not_possible);
    EXPECT_TRUE(seen.done());
    qApp->setStyleSheet({});
}

TEST_F(BesideTest, the_dialog_shows_all_its_words_also_in_large_text_and_of_a_long_name) {
    const TempFolder folder;
    Settings settings(QString::fromStdString((folder / "settings.ini").string()));
    const QString name = QStringLiteral("a_logbook_whose_name_somebody_made_as_long_as_a_file_system_takes_it_") + QString(120, QLatin1Char('x')) +
                         QStringLiteral(".ullage");
    for (const Theme theme : {Theme::light, Theme::dark})
        for (const int step : {0, Settings::most_text_step})
            for (const QString& words : {QStringLiteral("Making the report"), QStringLiteral("Opening %1").arg(name)}) {
                settings.setTheme(theme);
                settings.setTextStep(step);
                apply_appearance(*qApp, settings);
                const WhenSeen seen([&](QDialog& dialog) {
                    QApplication::processEvents();
                    const auto* label = dialog.findChild<QLabel*>(QStringLiteral("workLabel"));
                    EXPECT_GE(label->height(), label->heightForWidth(label->width())) << words.toStdString();
                    const QRect taken = label->fontMetrics().boundingRect(QRect(0, 0, label->width(), 10'000), Qt::TextWordWrap, label->text());
                    EXPECT_LE(taken.width(), label->width()) << "cut off: " << label->text().toStdString();
                    const auto* cancel = dialog.findChild<QPushButton*>(QStringLiteral("cancelWorkButton"));
                    EXPECT_GE(cancel->width(), cancel->sizeHint().width());
                    EXPECT_GE(cancel->height(), cancel->sizeHint().height());
                    EXPECT_LE(dialog.width(), 1280);
                    if (const QString where = qEnvironmentVariable("ULLAGE_SHOTS"); !where.isEmpty()) {
                        EXPECT_TRUE(
                            dialog.grab().save(QStringLiteral("%1/work-%2-%3-%4.png").arg(where).arg(int(theme)).arg(step).arg(words.size())));
                    }
                });
                work_beside(&window, words, [&](WorkProgress& progress) {
                    progress.at(2, 5);
                    EXPECT_TRUE(wait_for([&] { return seen.done(); }));
                });
            }
    settings.setTheme(Theme::system);
    settings.setTextStep(0);
    apply_appearance(*qApp, settings);
}

/// The window on a logbook of which a report takes a while.
class LongReportTest : public WindowTest {
protected:
    void SetUp() override {
        WindowTest::SetUp();
        const auto made = make_large_logbook(file("many.ullage").toStdString(), 100, 1, 400); // as many rows as a report may have
        ASSERT_TRUE(made) << made.error().sentence();
        window->openLogbook(file("many.ullage"));
        ASSERT_TRUE(document.isOpen()) << message().toStdString();
        trigger("comparisonAction");
        ASSERT_TRUE(
            QTest::qWaitFor([this] { return enabled("comparisonReportAction") && find<QPushButton>("copyTableButton")->isEnabled(); }, 60'000));
    }
    [[nodiscard]] QStringList files() const {
        return QDir(QString::fromStdString(folder.path().string())).entryList(QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot);
    }
};

TEST_F(LongReportTest, cancelling_a_report_leaves_no_file_nor_a_changed_one_and_the_form_says_so) {
    for (const int form : {0, 1}) { // PDF and HTML
        prompts.to_save = file(form == 0 ? "all.pdf" : "all.html");
        for (const bool old : {false, true}) {
            if (old) write(form == 0 ? "all.pdf" : "all.html", "an older report");
            const QStringList before = files();
            trigger("comparisonReportAction");
            find<QComboBox>("formCombo")->setCurrentIndex(form);
            const QString paper = find<QComboBox>("paperCombo")->currentText();
            const WhenSeen seen([&](QDialog& dialog) {
                QTest::keyClick(find<QComboBox>("paperCombo"), Qt::Key_Down);
                EXPECT_FALSE(window->close());
                QTest::mouseClick(dialog.findChild<QPushButton*>(QStringLiteral("cancelWorkButton")), Qt::LeftButton);
            });
            click("submitButton");
            ASSERT_TRUE(seen.done()) << "the report was made before anybody could cancel it";
            EXPECT_EQ(find<QComboBox>("paperCombo")->currentText(), paper) << "a key reached the form";
            EXPECT_TRUE(window->isVisible());
            EXPECT_EQ(files(), before);
            if (old) {
                QFile kept(prompts.to_save);
                ASSERT_TRUE(kept.open(QFile::ReadOnly));
                EXPECT_EQ(kept.readAll(), QByteArray("an older report"));
            }
            auto* asked = find<QWidget>("reportForm");
            ASSERT_TRUE(asked->isVisible());
            bool said = false;
            for (const auto* label : asked->findChildren<QLabel*>())
                said = said || (label->isVisible() && label->text().contains(QStringLiteral("cancelled; nothing was written")));
            EXPECT_TRUE(said);
            asked->close();
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        }
    }
}

} // namespace
} // namespace ullage::test
