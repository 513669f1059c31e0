// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/clock.h"
#include "base/large_pieces.h"
#include "base/late_part.h"
#include "base/message.h"
#include "base/result.h"
#include "base/work_folder.h"
#include "cli/drawing/drawing_commands.h"
#include "cli/live/live_commands.h"
#include "cli/text/commands.h"
#include "document/document.h"
#include "services/appearance.h"
#include "services/awake.h"
#include "services/notifier.h"
#include "services/prompts.h"
#include "services/secret_store.h"
#include "services/settings.h"
#include "style/languages.h"
#include "style/words.h"
#include "window/main_window.h"
#include "window/remembered_page.h"

#include <QApplication>
#include <QFile>
#include <QIcon>
#include <QLocale>
#include <QTimer>

#include <fcntl.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <optional>
#include <string>
#include <string_view>
#include <system_error>
#include <utility>
#include <vector>

namespace {

/// Qt aborts the process where it finds no display, so that is asked first.
bool display_is_named() {
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
        if (const char* value = std::getenv(name); value && *value) return true;
    return false;
}

/// What the program is asked to do, and in which language: `--language CODE` may stand anywhere behind its name.
struct Asked {
    std::vector<std::string> args;
    std::optional<QString> language; ///< empty where the option has no code behind it
};

Asked asked_of(int argc, char** argv) {
    constexpr std::string_view option = "--language";
    Asked asked;
    for (int i = 1; i < argc; ++i) {
        const std::string_view word = argv[i];
        if (word == option) asked.language = i + 1 < argc ? QString::fromLocal8Bit(argv[++i]) : QString();
        else if (word.starts_with(option) && word.substr(option.size()).starts_with('='))
            asked.language = QString::fromLocal8Bit(argv[i]).section('=', 1);
        else asked.args.emplace_back(word);
    }
    return asked;
}

/// For the window the settings decide where nothing is asked, for commands the environment does.
void speak_as_asked(const std::optional<QString>& asked, const QString& in_settings = {}) {
    ullage::speak(asked ? *asked : ullage::language_to_speak(in_settings, QLocale::system().uiLanguages()));
}

int run_window(int argc, char** argv, const Asked& asked) {
    ullage::take_memory_in_large_pieces();
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("Ullage"));
    QApplication::setDesktopFileName(QStringLiteral("ullage"));
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/ullage/desktop/ullage.svg")));
    ullage::Settings settings;
    speak_as_asked(asked.language, settings.language());
    const ullage::SystemClock clock;
    const auto named = asked.args.empty() ? std::nullopt : std::optional(QFile::decodeName(asked.args.front().c_str()));
    const auto logbook = ullage::logbook_of_start(settings, clock, named);
    ullage::prepare_appearance(application, settings);
    ullage::Document document(clock);
    ullage::DialogPrompts prompts;
    ullage::DesktopNotifier notifier;
    ullage::DesktopInhibitor inhibitor;
    ullage::DesktopSecretStore secrets;
    ullage::MainWindow window(document, settings, prompts, {&notifier, &inhibitor, &secrets, true});
    // The page that is opened is part of what is styled, once; a logbook that takes longer to open has the window wait in sight.
    bool shown = false;
    const auto show = [&] {
        if (std::exchange(shown, true)) return;
        ullage::apply_appearance(application, settings);
        window.show();
    };
    constexpr int longest_unseen_ms = 150;
    QTimer::singleShot(longest_unseen_ms, &window, show);
    if (logbook) window.openAhead(*logbook);
    show();
    return QApplication::exec();
}

/// All commands, as the help lists them.
std::vector<ullage::Command> all_commands() {
    std::vector<ullage::Command> commands = ullage::text_commands();
    for (const auto* more : {&ullage::drawing_commands(), &ullage::live_commands()}) commands.insert(commands.end(), more->begin(), more->end());
    return commands;
}

/// Charts and pages are drawn by Qt, but need no display.
int run_drawing(int argc, char** argv, const Asked& asked) {
    if (!display_is_named()) qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    speak_as_asked(asked.language);
    return ullage::run_command(asked.args, all_commands(), std::cout, std::cerr);
}

/// Meters are read by Qt's event loop.
int run_live(int argc, char** argv, const Asked& asked) {
    const QCoreApplication application(argc, argv);
    speak_as_asked(asked.language);
    return ullage::run_command(asked.args, all_commands(), std::cout, std::cerr);
}

/// Libraries speak to developers. Those who build the program, or set one of Qt's own variables for it, still hear them.
void silence_libraries() {
    if (qEnvironmentVariableIsSet("QT_LOGGING_RULES") || qEnvironmentVariableIsSet("QT_FATAL_WARNINGS")) return;
    qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString& message) {
        if (type == QtCriticalMsg || type == QtFatalMsg) std::cerr << "ullage: " << ullage::utf8_of(message) << '\n';
    });
}

/// Without the three standard descriptors a file that is opened would become one of them, and words would go into it. In their place stands what
/// can be neither read nor written, so that a result that goes nowhere is noticed.
void fill_standard_descriptors() {
    for (int number = 0; number <= 2; ++number)
        if (::fcntl(number, F_GETFD) < 0) (void)::open("/dev/null", number == 0 ? O_WRONLY : O_RDONLY); // takes the lowest free number
}

/// Large libraries that most starts do without lie in a file beside the program, or where an installation puts it.
ullage::Result<void> find_late_part() {
    constexpr std::string_view name = ULLAGE_LATE_PART;
    if (name.empty()) return {};
    std::error_code error;
    const std::filesystem::path folder = std::filesystem::read_symlink("/proc/self/exe", error).parent_path();
    if (error)
        return ullage::Error{ullage::Failure::io,
                             ullage::say(ullage::phrase("commands", "the program cannot tell where it lies (%1)"), error.message()), "/proc/self/exe",
                             ullage::say(ullage::phrase("commands", "mount /proc"))};
    return ullage::hold_late_part({folder / name, folder.parent_path() / "libexec" / "ullage" / name});
}

/// What crashed processes left in the folder for temporary files.
void sweep_temporary_folder() {
    std::error_code ignored;
    if (const std::filesystem::path folder = std::filesystem::temp_directory_path(ignored); !ignored) ullage::sweep_work_folders(folder);
}

} // namespace

int main(int argc, char** argv) {
    // The buffer of C's stdout forgets a line that a terminal has not taken, and says nothing; that of the stream does not.
    std::ios::sync_with_stdio(false);
    fill_standard_descriptors();
    silence_libraries();
    sweep_temporary_folder();
    const Asked asked = asked_of(argc, argv);
    if (asked.language) {
        if (const auto spoken = ullage::check_spoken(*asked.language); !spoken) {
            speak_as_asked({});
            std::cerr << "ullage: " << spoken.error().sentence() << '\n';
            return ullage::exit_usage;
        }
    }
    if (const auto found = find_late_part(); !found) {
        speak_as_asked(asked.language);
        std::cerr << "ullage: " << found.error().sentence() << '\n';
        return ullage::exit_bad_input;
    }
    const std::vector<std::string>& args = asked.args;
    const std::string first = args.empty() ? std::string() : args.front();
    if (std::ranges::count(ullage::drawing_commands(), first, &ullage::Command::name) > 0) return run_drawing(argc, argv, asked);
    if (std::ranges::count(ullage::live_commands(), first, &ullage::Command::name) > 0) return run_live(argc, argv, asked);
    const bool logbook_only = args.size() == 1 && !first.empty() && first.front() != '-' && !ullage::names_command(first, ullage::text_commands());
    if (!args.empty() && !logbook_only) {
        speak_as_asked(asked.language);
        return ullage::run_command(args, all_commands(), std::cout, std::cerr);
    }
    if (!display_is_named()) {
        speak_as_asked(asked.language);
        std::cerr << "ullage: "
                  << ullage::say(ullage::phrase("commands", "there is no display; use `ullage analyse LOGBOOK`, `ullage compare LOGBOOK` or "
                                                            "`ullage --help`"))
                  << '\n';
        return ullage::exit_bad_input;
    }
    return run_window(argc, argv, asked);
}
