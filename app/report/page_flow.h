// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "report/flowed_text.h"
#include "style/palette.h"

#include <QString>

#include <functional>
#include <utility>

class QPainter;
class QPdfWriter;

namespace ullage {

/// Sizes of letters in a printed report.
enum class PrintSize { title, chapter, section, body, small, figure };

/// What keeps the last page from holding a few lines only.
struct PageFit {
    double gaps = 1;        ///< of the space between things
    int short_page = 0;     ///< the page that ends early, so that more stands on the next; 0: none
    double short_by_mm = 0; ///< by this much
};

/// A page after the other from top to bottom: where the next thing goes, and what stands at head and foot of each. It goes over
/// the same content twice: once without painter, to count the pages, then with one. Lengths in the device's units.
class PageFlow {
public:
    /// `total_pages` 0 while they are counted. `running` stands at the head of every page but the first, `foot` at the foot.
    PageFlow(QPdfWriter& writer, QPainter* painter, QString running, QString foot, int total_pages, const PageFit& fit = {});

    [[nodiscard]] double mm(double length_mm) const;
    [[nodiscard]] QFont font(PrintSize size) const;
    [[nodiscard]] QPaintDevice& device() const;
    [[nodiscard]] QPainter* painter() const { return painter_; } ///< null while pages are counted
    [[nodiscard]] const Palette& palette() const { return light_palette(); }

    [[nodiscard]] double left() const { return left_; }
    [[nodiscard]] double width() const { return width_; }
    [[nodiscard]] double y() const { return y_; }
    [[nodiscard]] double room() const { return bottom_ - y_; }         ///< left on this page
    [[nodiscard]] double pageHeight() const { return bottom_ - top_; } ///< of an empty page
    [[nodiscard]] double taken() const { return y_ - top_; }           ///< of this page
    [[nodiscard]] int page() const { return page_; }

    void down(double length) { y_ += length; }
    /// Space between two things; none at the top of a page.
    void gap(double length_mm);
    /// Goes to a new page unless `height` is left on this one, or the page is empty.
    void ensure(double height);
    void newPage();
    /// Sets a text over as many pages as it takes.
    void text(const QString& text, PrintSize size, const QColor& colour, double indent = 0, const QList<TextAccent>& accents = {});
    void rule(double thickness_mm = 0.15);

    /// See ReportLook::turn; once it has said no, what is set does not matter any more.
    void setTurn(std::function<bool()> turn) { turn_ = std::move(turn); }
    [[nodiscard]] bool goesOn() { return goes_on_ = goes_on_ && (!turn_ || turn_()); }

private:
    void beginPage();
    void headAndFoot();

    QPdfWriter& writer_;
    QPainter* painter_;
    QString running_, foot_;
    int total_pages_, page_ = 1;
    PageFit fit_;
    double left_, width_, top_, bottom_ = 0, y_ = 0;
    std::function<bool()> turn_;
    bool goes_on_ = true;
};

} // namespace ullage
