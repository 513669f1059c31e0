// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/theme.h"

#include "style/base_style.h"
#include "style/style_sheet.h"

#include <QAbstractScrollArea>
#include <QApplication>
#include <QEvent>
#include <QHeaderView>
#include <QPalette>
#include <QPointer>
#include <QScrollArea>
#include <QSet>
#include <QSplitter>
#include <QStackedWidget>
#include <QStyle>
#include <QStyleFactory>

#include <memory>
#include <optional>
#include <utility>

// Outside the namespace: the macro declares a function of global scope.
static void load_resources() { Q_INIT_RESOURCE(ullage); }

namespace ullage {
namespace {

struct State {
    Theme theme = Theme::system;
    const Palette* palette = &light_palette();
    std::optional<bool> dark_at_start; // the desktop's own palette, read before ours covers it
    bool platform_dark = false;        // what the platform last answered
    bool applying = false;
    QPointer<QStyle> style; // the application's
};

State& state() {
    static State only;
    return only;
}

bool looks_dark(const QPalette& palette) { return palette.color(QPalette::Window).lightnessF() < palette.color(QPalette::WindowText).lightnessF(); }

// Qt 6.4 has no public question for this; its Fusion style asks the platform when it makes a standard palette.
bool platform_is_dark() {
    const std::unique_ptr<QStyle> fusion(QStyleFactory::create(QStringLiteral("Fusion")));
    return fusion && looks_dark(fusion->standardPalette());
}

/// While it lives, no widget is told that its style changes, which would have each lay itself out.
class Unseen final : public QObject {
public:
    explicit Unseen(QApplication& application) { application.installEventFilter(this); }

protected:
    bool eventFilter(QObject*, QEvent* event) override { return event->type() == QEvent::StyleChange; }
};

/// Whether somebody hid the widget or what it stands in, unlike what waits for its window to be shown. Pages of a stack are not put away, as its size
/// follows from all of them, nor are scroll bars, which come and go while their area is laid out.
bool is_put_away(const QWidget& widget) {
    for (const QWidget* part = &widget; part && !part->isWindow(); part = part->parentWidget()) {
        if (!part->isHidden() || !part->testAttribute(Qt::WA_WState_ExplicitShowHide)) continue;
        const auto* stack = qobject_cast<const QStackedWidget*>(part->parentWidget());
        const bool of_an_area = qobject_cast<const QAbstractScrollArea*>(part->parentWidget()) != nullptr;
        if (!of_an_area && (!stack || stack->indexOf(part) < 0)) return true;
    }
    return false;
}

/// Has what is put away styled when it comes into sight. Qt takes longer to style a widget than to make it, and most of what is put away, as bars
/// and lines of fields are, is never seen.
class StyledWhenShown final : public QObject {
public:
    static StyledWhenShown& instance() {
        static StyledWhenShown only;
        return only;
    }

    /// To be called before a style sheet is set: Qt styles anew what is marked as polished.
    void begin(QApplication& application) {
        QSet<const QObject*> waiting; // made anew, as what has gone since may have left its address to another
        for (QWidget* widget : QApplication::allWidgets()) {
            const bool polished = widget->testAttribute(Qt::WA_WState_Polished);
            if (polished ? widget->isWindow() || !is_put_away(*widget) : !waiting_.contains(widget)) continue;
            widget->setAttribute(Qt::WA_WState_Polished, false);
            waiting.insert(widget);
        }
        waiting_ = std::move(waiting);
        application.removeEventFilter(this);
        application.installEventFilter(this);
        setting_ = true;
    }
    void end() { setting_ = false; }

protected:
    bool eventFilter(QObject* target, QEvent* event) override {
        if (event->type() == QEvent::Show) {
            if (waiting_.remove(target)) style(*target);
            if (unmeasured_.remove(target)) forgetSize(*target);
            return false;
        }
        const bool style_change = event->type() == QEvent::StyleChange;
        if (!setting_ || (!style_change && event->type() != QEvent::FontChange)) return false;
        if (style_change && waiting_.contains(target)) return true;
        const auto* widget = qobject_cast<QWidget*>(target);
        if (!widget || widget->isVisible()) return false;
        // The part of a header that its sections are in has all of its table measured each time, as it does when it is shown.
        if (const auto* header = qobject_cast<const QHeaderView*>(widget->parentWidget()); header && header->viewport() == widget) {
            unmeasured_.insert(target);
            return true;
        }
        return style_change && (qobject_cast<const QScrollArea*>(widget) || qobject_cast<const QSplitter*>(widget)); // laid out when they are shown
    }

private:
    /// What is not measured when it is shown is the header itself, whose size is kept until it is told of other words.
    static void forgetSize(const QObject& sections) {
        if (auto* header = qobject_cast<QHeaderView*>(sections.parent())) header->headerDataChanged(header->orientation(), 0, header->count() - 1);
    }
    static void style(QObject& widget) {
        for (const QEvent::Type what : {QEvent::Polish, QEvent::StyleChange}) {
            QEvent event(what);
            QCoreApplication::sendEvent(&widget, &event);
        }
    }

    QSet<const QObject*> waiting_;    ///< whatever is made at the address of one that has gone is styled once more
    QSet<const QObject*> unmeasured_; ///< of headers; what is made at the address of one that has gone is no worse for it
    bool setting_ = false;
};

QPalette widget_palette(const Palette& p) {
    QPalette q;
    q.setColor(QPalette::Window, p.ground);
    q.setColor(QPalette::WindowText, p.ink);
    q.setColor(QPalette::Base, p.panel);
    q.setColor(QPalette::AlternateBase, p.ground);
    q.setColor(QPalette::Text, p.ink);
    q.setColor(QPalette::PlaceholderText, p.soft);
    q.setColor(QPalette::Button, p.panel);
    q.setColor(QPalette::ButtonText, p.ink);
    q.setColor(QPalette::BrightText, p.fault_ink);
    q.setColor(QPalette::Light, blended(p.ink, p.panel, p.dark ? 0.12 : 0.02));
    q.setColor(QPalette::Midlight, blended(p.ink, p.panel, 0.08));
    q.setColor(QPalette::Mid, p.line);
    q.setColor(QPalette::Dark, blended(p.ink, p.line, 0.25));
    q.setColor(QPalette::Shadow, p.dark ? QColor(0, 0, 0) : p.soft);
    q.setColor(QPalette::Highlight, p.selection);
    q.setColor(QPalette::HighlightedText, p.ink);
    q.setColor(QPalette::Link, p.accent);
    q.setColor(QPalette::LinkVisited, p.accent);
    q.setColor(QPalette::ToolTipBase, p.panel);
    q.setColor(QPalette::ToolTipText, p.ink);
    const QColor off = blended(p.soft, p.panel, 0.65);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::HighlightedText})
        q.setColor(QPalette::Disabled, role, off);
    return q;
}

} // namespace

ThemeNotifier& ThemeNotifier::instance() {
    static ThemeNotifier only;
    return only;
}

bool ThemeNotifier::eventFilter(QObject* watched, QEvent* event) {
    State& s = state();
    if (event->type() == QEvent::ThemeChange && s.theme == Theme::system && !s.applying) {
        auto* application = qobject_cast<QApplication*>(QCoreApplication::instance());
        if (application && platform_is_dark() != s.platform_dark) {
            // The desktop has just told, so what its palette was at the start no longer counts.
            s.dark_at_start = false;
            apply_theme(*application, Theme::system);
        }
    }
    return QObject::eventFilter(watched, event);
}

bool desktop_is_dark() { return platform_is_dark() || state().dark_at_start.value_or(false); }

void prepare_theme(QApplication& application, Theme theme) {
    State& s = state();
    load_resources();
    if (!s.dark_at_start) {
        s.dark_at_start = looks_dark(QGuiApplication::palette());
        application.installEventFilter(&ThemeNotifier::instance());
    }
    s.applying = true;
    s.theme = theme;
    s.platform_dark = platform_is_dark();
    const bool dark = theme == Theme::dark || (theme == Theme::system && desktop_is_dark());
    s.palette = dark ? &dark_palette() : &light_palette();
    // Each of these goes through every widget there is, so the style stays: it asks for the colours whenever it draws. Changing a style sheet for
    // another is slower by far than taking it off first; what is between the two nobody sees.
    {
        const Unseen between(application);
        application.setStyleSheet(QString());
    }
    if (!s.style) {
        s.style = new BaseStyle;
        QApplication::setStyle(s.style);
    }
    QApplication::setPalette(widget_palette(*s.palette));
    s.applying = false;
}

void apply_theme(QApplication& application, Theme theme) {
    prepare_theme(application, theme);
    State& s = state();
    s.applying = true;
    StyledWhenShown::instance().begin(application);
    application.setStyleSheet(style_sheet(*s.palette, QApplication::font()));
    StyledWhenShown::instance().end();
    s.applying = false;
    emit ThemeNotifier::instance().themeChanged();
}

Theme current_theme() { return state().theme; }

const Palette& current_palette() { return *state().palette; }

} // namespace ullage
