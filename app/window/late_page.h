// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>

#include <functional>
#include <utility>

namespace ullage {

/// A page of the window that is made when something first asks for it, so that the first page in sight does not wait for the others.
template <class Page>
class LatePage {
public:
    /// `name`: the object name of the page, by which it is known before it is there.
    explicit LatePage(const char* name) : name_(QString::fromLatin1(name)) {}

    /// How the page is made, and what is done with it then; that may ask for the page.
    void comeFrom(std::function<Page*()> make, std::function<void()> made) {
        make_ = std::move(make);
        made_ = std::move(made);
    }
    [[nodiscard]] const QString& name() const { return name_; }
    [[nodiscard]] bool isMade() const { return page_ != nullptr; }
    [[nodiscard]] const QWidget* widget() const { return widget_; } ///< null while it is not made

    Page* get() {
        if (!page_) {
            page_ = make_();
            widget_ = page_;
            made_();
        }
        return page_;
    }
    Page* operator->() { return get(); }
    Page& operator*() { return *get(); }
    operator Page*() { return get(); }

    // Comparing does not make the page.
    friend bool operator==(const QWidget* widget, const LatePage& page) { return page.widget_ && widget == page.widget_; }
    friend bool operator==(QWidget* widget, const LatePage& page) { return page.widget_ && widget == page.widget_; }

private:
    QString name_;
    std::function<Page*()> make_;
    std::function<void()> made_;
    Page* page_ = nullptr;
    const QWidget* widget_ = nullptr; // here the page's class need not be known
};

} // namespace ullage
