// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/drawing/drawing_commands.h"

#include "base/clock.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "document/document.h"
#include "formats/files/whole_file.h"
#include "models/logbook_tree_model.h"
#include "services/appearance.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "style/words.h"
#include "window/main_window.h"
#include "window/message_bar.h"

#include <CLI/CLI.hpp>

#include <QApplication>
#include <QBuffer>
#include <QByteArray>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QStackedWidget>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTreeView>

#include <algorithm>
#include <memory>
#include <optional>
#include <ostream>

namespace ullage {

namespace {

constexpr int percent_per_text_step = 10;
constexpr int settling_ms = 25; ///< for layouts and texts that follow in a later turn of the event loop

/// Shows the pages one after the other; `into` is empty where no picture is wanted.
class Tour {
public:
    Tour(MainWindow& window, QString into, std::ostream& out) : window_(window), into_(std::move(into)), out_(out) {}

    /// Follows the tree from top to bottom. Errors: io, a picture that cannot be written.
    Result<void> walk() {
        const auto* pages = window_.findChild<QStackedWidget*>(QStringLiteral("pagesStack"));
        auto* tree = window_.findChild<QTreeView*>(QStringLiteral("logbookTree"));
        for (QModelIndex row = tree->model()->index(0, 0); row.isValid(); row = tree->indexBelow(row)) {
            if (!(row.flags() & Qt::ItemIsSelectable)) continue;
            tree->setCurrentIndex(row);
            settle();
            QStringList place{row.data().toString()};
            if (const QString above = row.parent().data().toString(); row.data(LogbookTreeModel::RowRole).toInt() == int(LogbookTreeModel::Row::run))
                place.prepend(above);
            if (const auto shown = show(*pages->currentWidget(), place); !shown) return shown;
        }
        return {};
    }

private:
    void settle() {
        QElapsedTimer since;
        since.start();
        do QCoreApplication::processEvents(QEventLoop::AllEvents, settling_ms);
        while (since.elapsed() < settling_ms);
    }

    /// The tabs in sight that stand in no other tab below `part`.
    static QList<QTabWidget*> outerTabs(const QWidget& part) {
        QList<QTabWidget*> outer;
        for (QTabWidget* tabs : part.findChildren<QTabWidget*>()) {
            if (!tabs->isVisible()) continue;
            if (std::ranges::none_of(outer, [tabs](const QTabWidget* other) { return other->isAncestorOf(tabs); })) outer.push_back(tabs);
        }
        return outer;
    }

    Result<void> show(const QWidget& part, const QStringList& place) {
        const QList<QTabWidget*> all = outerTabs(part);
        if (all.isEmpty()) return keep(place);
        for (QTabWidget* tabs : all) {
            const int before = tabs->currentIndex();
            for (int tab = 0; tab < tabs->count(); ++tab) {
                if (!tabs->isTabVisible(tab) || !tabs->isTabEnabled(tab)) continue;
                tabs->setCurrentIndex(tab);
                settle();
                if (const auto shown = show(*tabs->widget(tab), place + QStringList{tabs->tabText(tab).remove(QLatin1Char('&'))}); !shown)
                    return shown;
            }
            tabs->setCurrentIndex(before);
        }
        return {};
    }

    Result<void> keep(const QStringList& place) {
        const QPixmap picture = window_.grab(); // paints the page also where no one looks
        const QString number = QStringLiteral("%1").arg(++pages_, 3, 10, QLatin1Char('0'));
        if (!into_.isEmpty())
            if (const auto written = write(picture, QDir(into_).filePath(number + QStringLiteral(".png"))); !written) return written;
        out_ << utf8_of(number) << "  " << utf8_of(place.join(QStringLiteral(", "))) << '\n' << std::flush;
        if (const QString says = window_.findChild<MessageBar*>()->message(); !says.isEmpty())
            out_ << "     " << line_of(say(phrase("commands", "says: %1"), utf8_of(says)));
        return {};
    }

    static Result<void> write(const QPixmap& picture, const QString& path) {
        QByteArray bytes;
        QBuffer buffer(&bytes);
        if (!buffer.open(QIODevice::WriteOnly) || !picture.save(&buffer, "PNG"))
            return Error{Failure::io, say(phrase("commands", "the picture cannot be made")), utf8_of(path),
                         say(phrase("commands", "ask for a smaller window"))};
        return write_whole_file(native_path(path), {bytes.constData(), static_cast<std::size_t>(bytes.size())});
    }

    MainWindow& window_;
    QString into_;
    std::ostream& out_;
    int pages_ = 0;
};

/// A folder to fill: nothing in it is replaced, so it must be new or empty.
Result<void> empty_folder(const QString& folder) {
    if (QDir(folder).exists() && !QDir(folder).isEmpty(QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot))
        return Error{Failure::refused, say(phrase("commands", "the folder is not empty")), utf8_of(folder),
                     say(phrase("commands", "name a new one"))};
    if (!QDir().mkpath(folder)) return Error{Failure::io, say(phrase("commands", "the folder cannot be made")), utf8_of(folder), {}};
    return {};
}

struct TourArguments {
    std::string source, folder;
    int width_px = 1280, height_px = 800, text_percent = 100;
    bool dark = false;
};

int tour_command(const TourArguments& arguments, std::ostream& out, std::ostream& err) {
    const QString into = QFile::decodeName(arguments.folder.c_str());
    if (!into.isEmpty())
        if (const auto made = empty_folder(into); !made) return refuse(err, made.error());
    const QTemporaryDir own; // the user's settings stay as they are
    Settings settings(own.filePath(QStringLiteral("settings.ini")));
    settings.setTheme(arguments.dark ? Theme::dark : Theme::light);
    settings.setTextStep((arguments.text_percent - 100) / percent_per_text_step);
    apply_appearance(*qApp, settings);
    const SystemClock clock;
    Document document(clock);
    DialogPrompts prompts;
    MainWindow window(document, settings, prompts);
    window.resize(arguments.width_px, arguments.height_px);
    window.show();
    window.openLogbook(QFile::decodeName(arguments.source.c_str()));
    if (!document.isOpen()) {
        tell(err, {utf8_of(window.findChild<MessageBar*>()->message())});
        return exit_bad_input;
    }
    if (const auto walked = Tour(window, into, out).walk(); !walked) return refuse(err, walked.error());
    return print({}, out, err, into.isEmpty() ? Message() : say(phrase("commands", "the pictures in %1 are complete"), arguments.folder));
}

} // namespace

Command::Run read_tour(CLI::App& command) {
    const auto arguments = std::make_shared<TourArguments>();
    command.add_option("LOGBOOK", arguments->source, say(phrase("commands", "logbook file")))->required();
    command.add_option("--into", arguments->folder, say(phrase("commands", "a new or empty folder: write a PNG of each page into it")));
    command.add_option("--width-px", arguments->width_px, say(phrase("commands", "of the window")))
        ->check(CLI::Range(640, 7680))
        ->capture_default_str();
    command.add_option("--height-px", arguments->height_px, say(phrase("commands", "of the window")))
        ->check(CLI::Range(480, 4320))
        ->capture_default_str();
    command.add_option("--text-percent", arguments->text_percent, say(phrase("commands", "size of texts, of that of the desktop")))
        ->check(CLI::Range(100 + percent_per_text_step * Settings::least_text_step, 100 + percent_per_text_step * Settings::most_text_step))
        ->capture_default_str();
    command.add_flag("--dark", arguments->dark, say(phrase("commands", "in the dark theme")));
    return [arguments](std::ostream& out, std::ostream& err) { return tour_command(*arguments, out, err); };
}

} // namespace ullage
