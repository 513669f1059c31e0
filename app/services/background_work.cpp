// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/background_work.h"

#include "style/spacing.h"

#include <QApplication>
#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QElapsedTimer>
#include <QEvent>
#include <QEventLoop>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <chrono>
#include <exception>
#include <future>
#include <thread>

namespace ullage {

namespace {

constexpr std::chrono::milliseconds unnoticed(40); ///< what ends within it needs no turn of the event loop
constexpr int shown_after_ms = 300;                ///< a dialog that flashes up tells nobody anything
constexpr int bar_every_ms = 100;
constexpr int turn_every_ms = 20;
constexpr int bar_steps = 1000;

/// The words with places to break a line within each that is long, such as a file's name: else what does not fit in one line is cut off.
QString breakable(const QString& words) {
    constexpr int most_unbroken = 12;
    QString text;
    int unbroken = 0;
    for (const QChar letter : words) {
        unbroken = letter.isSpace() ? 0 : unbroken + 1;
        if (unbroken > most_unbroken && !letter.isLowSurrogate() && !letter.isMark()) {
            text += QChar(0x200B); // zero width space
            unbroken = 1;
        }
        text += letter;
    }
    return text;
}

/// What is done, and its Cancel.
class WorkDialog final : public QDialog {
    Q_DECLARE_TR_FUNCTIONS(ullage::WorkDialog)

public:
    WorkDialog(QWidget* parent, const QString& words, WorkProgress& progress, Cancelling cancelling = Cancelling::offered)
        : QDialog(parent), progress_(progress), words_(new QLabel(breakable(words))), bar_(new QProgressBar) {
        setObjectName(QStringLiteral("workDialog"));
        setWindowTitle(QCoreApplication::applicationName());
        setWindowModality(Qt::ApplicationModal);
        setWindowFlag(Qt::WindowCloseButtonHint, false);
        words_->setObjectName(QStringLiteral("workLabel"));
        words_->setTextFormat(Qt::PlainText);
        words_->setWordWrap(true);
        words_->setAccessibleName(words);
        words_->setMinimumWidth(32 * fontMetrics().averageCharWidth());
        bar_->setObjectName(QStringLiteral("workBar"));
        bar_->setTextVisible(false);
        bar_->setAccessibleName(words);
        bar_->setRange(0, 0);
        auto* column = new QVBoxLayout(this);
        column->setContentsMargins(spacing::page_margin_px, spacing::page_margin_px, spacing::page_margin_px, spacing::page_margin_px);
        column->setSpacing(spacing::panel_gap_px);
        for (QWidget* part : {static_cast<QWidget*>(words_), static_cast<QWidget*>(bar_)}) column->addWidget(part);
        if (cancelling == Cancelling::not_possible) return;
        auto* buttons = new QDialogButtonBox; // which shows its buttons again and again, whatever they are told
        cancel_ = buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
        cancel_->setObjectName(QStringLiteral("cancelWorkButton"));
        connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
        column->addWidget(buttons);
    }

    void look() {
        if (progress_.of() <= 0) return;
        bar_->setRange(0, bar_steps);
        bar_->setValue(static_cast<int>(progress_.done() * bar_steps / progress_.of()));
    }

    /// Also by Escape; the dialog stays until the work has heeded it.
    void reject() override {
        if (!cancel_) return;
        progress_.cancel();
        cancel_->setEnabled(false);
        words_->setText(tr("Stopping…"));
        words_->setAccessibleName(words_->text());
    }

private:
    WorkProgress& progress_;
    QLabel* words_;
    QProgressBar* bar_;
    QPushButton* cancel_ = nullptr;
};

/// Keeps input from every window but the dialog's, also before the dialog is seen.
class InputGate final : public QObject {
public:
    explicit InputGate(const QWidget& open) : open_(open) { QCoreApplication::instance()->installEventFilter(this); }

protected:
    bool eventFilter(QObject* target, QEvent* event) override {
        switch (event->type()) {
        case QEvent::Close:
        case QEvent::MouseButtonPress:
        case QEvent::MouseButtonRelease:
        case QEvent::MouseButtonDblClick:
        case QEvent::Wheel:
        case QEvent::KeyPress:
        case QEvent::KeyRelease:
        case QEvent::Shortcut:
        case QEvent::ShortcutOverride:
        case QEvent::ContextMenu:
        case QEvent::InputMethod:
        case QEvent::TouchBegin:
        case QEvent::DragEnter:
        case QEvent::DragMove:
        case QEvent::Drop: break;
        default: return false;
        }
        const auto* widget = qobject_cast<QWidget*>(target);
        // The windows of the platform stand before their widgets, where the event is judged again.
        if (widget == nullptr && event->type() != QEvent::Shortcut && event->type() != QEvent::Close) return false;
        if (widget == &open_ || open_.isAncestorOf(widget)) return false;
        event->ignore();
        return true;
    }

private:
    const QWidget& open_;
};

} // namespace

void work_beside(QWidget* window, const QString& words, const std::function<void(WorkProgress& progress)>& work, Cancelling cancelling) {
    WorkProgress progress;
    QEventLoop loop;
    std::promise<void> promised;
    std::future<void> ended = promised.get_future();
    std::jthread thread([&] {
        try {
            work(progress);
            promised.set_value();
        } catch (...) {
            promised.set_exception(std::current_exception());
        }
        QMetaObject::invokeMethod(&loop, &QEventLoop::quit, Qt::QueuedConnection);
    });
    if (ended.wait_for(unnoticed) != std::future_status::ready) {
        WorkDialog dialog(window ? window->window() : QApplication::activeWindow(), words, progress, cancelling);
        const InputGate gate(dialog);
        QTimer looking;
        QObject::connect(&looking, &QTimer::timeout, &dialog, &WorkDialog::look);
        looking.start(bar_every_ms);
        QTimer::singleShot(shown_after_ms, &dialog, &QWidget::show);
        loop.exec();
    }
    thread.join();
    ended.get();
}

void work_in_turns(QWidget* window, const QString& words,
                   const std::function<void(WorkProgress& progress, const std::function<bool()>& turn)>& work) {
    WorkProgress progress;
    WorkDialog dialog(window ? window->window() : QApplication::activeWindow(), words, progress);
    const InputGate gate(dialog);
    QElapsedTimer begun, turned;
    begun.start();
    turned.start();
    work(progress, [&] {
        if (turned.elapsed() < turn_every_ms) return !progress.cancelled();
        if (begun.elapsed() > shown_after_ms) dialog.show();
        dialog.look();
        QCoreApplication::processEvents();
        turned.restart();
        return !progress.cancelled();
    });
}

} // namespace ullage
