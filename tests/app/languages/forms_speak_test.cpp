// SPDX-License-Identifier: GPL-3.0-or-later
// Every form and dialog of the window in each language, on a screen of 1280x800.
#include "dialogs/copies_form.h"
#include "dialogs/join_form.h"
#include "dialogs/leave_form.h"
#include "dialogs/password_form.h"
#include "dialogs/photo_dialog.h"
#include "dialogs/source_form.h"
#include "fitting.h"
#include "missing_texts.h"
#include "places.h"
#include "services/appearance.h"
#include "style/languages.h"
#include "support/source_dir.h"
#include "window/guide_bar.h"

#include <QAction>
#include <QComboBox>
#include <QDialog>
#include <QDir>
#include <QFile>
#include <QRegularExpression>

#include <set>

namespace ullage::test {
namespace {

/// Small desktops are 1280x800.
constexpr QSize screen_px(1280, 800);

/// The classes of app/dialogs that people see; a form that others are made from is none.
std::set<QString> all_forms() {
    static const QRegularExpression pattern(QStringLiteral("^class (\\w+) (?:final )?: public (?:QDialog|FormDialog|ReportForm) "),
                                            QRegularExpression::MultilineOption);
    const QDir folder(QString::fromStdString((source_dir() / "app/dialogs").string()));
    std::set<QString> found;
    for (const QString& name : folder.entryList({QStringLiteral("*.h")})) {
        QFile file(folder.filePath(name));
        EXPECT_TRUE(file.open(QFile::ReadOnly)) << name.toStdString();
        for (auto each = pattern.globalMatch(QString::fromUtf8(file.readAll())); each.hasNext();) found.insert(each.next().captured(1));
    }
    found.erase(QStringLiteral("FormDialog"));
    return found;
}

class FormsSpeak : public AccessTest, public testing::WithParamInterface<const char*> {
protected:
    void SetUp() override {
        speak(QString::fromLatin1(GetParam()));
        missing_ = std::make_unique<MissingTexts>(QString::fromLatin1(GetParam()));
        QCoreApplication::installTranslator(missing_.get());
        AccessTest::SetUp();
        apply_appearance(*qApp, settings);
    }
    void TearDown() override {
        window.reset();
        QCoreApplication::removeTranslator(missing_.get());
        speak(QStringLiteral("en"));
    }

    void look(Place& place) {
        const QWidget& root = place.root;
        complaints_.looked_at_one();
        forms_.insert(QString::fromLatin1(root.metaObject()->className()).section(QStringLiteral("::"), -1));
        if (root.width() > screen_px.width() || root.height() > screen_px.height())
            complaints_.add(place.name, QStringLiteral("%1x%2 px are too large").arg(root.width()).arg(root.height()));
        for (const QString& text : cut_off_in_form(place.root)) complaints_.add(place.name, text);
    }
    void look_at(QDialog* dialog) {
        dialog->setAttribute(Qt::WA_DeleteOnClose, false);
        const std::unique_ptr<QDialog> kept(dialog);
        dialog->open();
        settle();
        at_every_tab(*dialog, *dialog, dialog->windowTitle(), [this](Place& place) { look(place); });
    }
    /// What the entry opens for a file.
    void look_at_form_of(const char* entry, const char* path) {
        prompts.to_open = {QString::fromStdString((source_dir() / path).string())};
        trigger(entry);
        settle();
        for (auto* dialog : window->findChildren<QDialog*>()) {
            if (!dialog->isVisible()) continue;
            at_every_tab(*dialog, *dialog, dialog->windowTitle(), [this](Place& place) { look(place); });
            for (const auto* roles : dialog->findChildren<QComboBox*>(QStringLiteral("role1Combo")))
                EXPECT_EQ(roles->findText(QStringLiteral("unused")), -1) << entry << " offers roles in English";
            dialog->reject();
            return QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        }
        ADD_FAILURE() << entry << " opened no form: " << message().toStdString();
    }
    void look_at_source() {
        for (const SourceKind kind : all_source_kinds) {
            LiveSource source;
            source.kind = kind;
            look_at(new SourceForm(document.meters().front(), source, window.get()));
        }
    }
    void look_at_join() {
        JoinArrival unit{JoinedKind::unit, "a", say(phrase("joining", "unit %1"), "Pelm 900")};
        JoinDifference differs{JoinedKind::unit, JoinMatter::differs, "b", say(phrase("joining", "unit %1"), "Osk 1200")};
        differs.fields = {{say(phrase("joining", "rated energy (Wh)")), "1200", "1210"}};
        const JoinPlan plan{{unit}, {differs}, {}};
        look_at(new JoinForm(plan, QStringLiteral("bench.ullage"), window.get()));
    }
    void look_at_photo() {
        Photo photo;
        photo.file_name = "display.jpg";
        photo.size_bytes = 3'400'000;
        photo.taken = PhotoMoment{document.runs().front()->readings.front().values.time_ms, true};
        QImage image(1600, 1200, QImage::Format_RGB32);
        image.fill(Qt::gray);
        look_at(new PhotoDialog(photo, {image, image, QSize(4000, 3000)}, "UTC", window.get()));
    }

    std::unique_ptr<MissingTexts> missing_;
    std::set<QString> forms_;
    Complaints complaints_;
};

} // namespace

TEST_P(FormsSpeak, each_has_all_its_texts_fits_a_small_screen_and_cuts_no_word_off) {
    at_every_dialog([this](Place& place) { look(place); });
    window->showRun(document.runs().front()->run.uuid);
    look_at_form_of("importTableAction", "tests/corpus/tables/open-runs.csv");
    look_at_form_of("importLogAction", "sample-data/logs/12-pelm-900-drain-logged.csv");
    look_at_source();
    look_at_join();
    look_at_photo();
    look_at(new CopiesForm(
        {{"/a/bench.2027-05-14.ullage-copy", "2027-05-14", 400'000, 0}, {"/a/bench.2027-05-13.ullage-copy", "2027-05-13", 390'000, 0}},
        QStringLiteral("bench.ullage"), [](const BackupCopy&) { return QStringLiteral("3"); }, window.get()));
    look_at(new PasswordForm(QStringLiteral("bench"), QStringLiteral("192.0.2.10"), {}, window.get()));
    look_at(new LeaveForm({QStringLiteral("Osk 1200")}, 1, true, window.get()));
    for (const QString& name : all_forms()) EXPECT_TRUE(forms_.contains(name)) << name.toStdString() << " was not looked at";
    for (const std::string& text : missing_->texts) ADD_FAILURE() << "untranslated: " << text;
    complaints_.expect_none(40);
}

TEST_P(FormsSpeak, welcome_page_and_guided_run_cut_no_word_off) {
    prompts.to_save = file("first.ullage");
    trigger("guideAction");
    settle();
    const auto look_at_bar = [this] {
        settle();
        const auto* bar = window->findChild<GuideBar*>();
        ASSERT_TRUE(bar && bar->isVisible());
        complaints_.looked_at_one();
        for (const QString& text : cut_off_in_form(*bar)) complaints_.add(QStringLiteral("guide"), text);
    };
    look_at_bar();
    add_unit();
    look_at_bar();
    add_meter();
    look_at_bar();
    trigger("closeLogbookAction");
    settle();
    ASSERT_EQ(page(), QStringLiteral("welcomePage"));
    for (const QString& text : cut_off_in_form(*find<QWidget>("welcomePage"))) complaints_.add(QStringLiteral("welcome page"), text);
    complaints_.expect_none(3);
}

INSTANTIATE_TEST_SUITE_P(Each, FormsSpeak, testing::Values("de", "fr", "es"), [](const auto& each) { return std::string(each.param); });

} // namespace ullage::test
