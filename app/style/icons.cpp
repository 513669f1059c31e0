// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/icons.h"

#include "style/theme.h"

#include <QFile>
#include <QIconEngine>
#include <QPainter>
#include <QPixmap>
#include <QSvgRenderer>

#include <memory>

namespace ullage {
namespace {

const char* file_name(Glyph glyph) {
    switch (glyph) {
    case Glyph::record: return "record";
    case Glyph::mark: return "mark";
    case Glyph::report: return "report";
    case Glyph::export_out: return "export";
    case Glyph::import_in: return "import";
    case Glyph::unit: return "unit";
    case Glyph::meter: return "meter";
    case Glyph::load_list: return "load-list";
    case Glyph::run: return "run";
    case Glyph::compare: return "compare";
    case Glyph::sizing: return "sizing";
    case Glyph::panel_input: return "panel-input";
    case Glyph::note: return "note";
    case Glyph::doubt: return "doubt";
    case Glyph::fault: return "fault";
    case Glyph::good: return "good";
    case Glyph::add: return "add";
    case Glyph::amend: return "amend";
    case Glyph::withdraw: return "withdraw";
    case Glyph::remove: return "remove";
    case Glyph::undo: return "undo";
    case Glyph::redo: return "redo";
    case Glyph::settings: return "settings";
    case Glyph::sun: return "sun";
    case Glyph::moon: return "moon";
    case Glyph::search: return "search";
    case Glyph::open: return "open";
    case Glyph::close: return "close";
    case Glyph::help: return "help";
    case Glyph::chart: return "chart";
    case Glyph::clock: return "clock";
    case Glyph::photo: return "photo";
    }
    return "note";
}

QColor tone_colour(GlyphTone tone, const Palette& p) {
    switch (tone) {
    case GlyphTone::ink: return p.ink;
    case GlyphTone::soft: return p.soft;
    case GlyphTone::accent: return p.accent;
    case GlyphTone::on_accent: return p.on_accent;
    case GlyphTone::good: return p.good;
    case GlyphTone::doubt: return p.gauge_implied;
    case GlyphTone::fault: return p.fault_ink;
    }
    return p.ink;
}

class GlyphEngine : public QIconEngine {
public:
    GlyphEngine(Glyph glyph, GlyphTone tone) : glyph_(glyph), tone_(tone) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
        const QColor colour = tone_colour(tone_, current_palette());
        if (colour != rendered_ || !renderer_) render(colour);
        painter->save();
        if (mode == QIcon::Disabled) painter->setOpacity(painter->opacity() * 0.45);
        const int side = qMin(rect.width(), rect.height());
        QRectF square(0, 0, side, side);
        square.moveCenter(QRectF(rect).center());
        renderer_->render(painter, square);
        painter->restore();
    }

    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
        QPixmap map(size);
        map.fill(Qt::transparent);
        QPainter painter(&map);
        paint(&painter, QRect(QPoint(), size), mode, state);
        return map;
    }

    QIconEngine* clone() const override { return new GlyphEngine(glyph_, tone_); }
    QString key() const override { return QStringLiteral("ullage-glyph"); }
    bool isNull() override { return false; }

private:
    /// Most icons stand in menus that nobody opens: each is read when it is painted first.
    void render(const QColor& colour) {
        QFile file(QStringLiteral(":/ullage/icons/%1.svg").arg(QLatin1String(file_name(glyph_))));
        QByteArray coloured = file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
        coloured.replace("currentColor", colour.name().toLatin1());
        if (!renderer_) renderer_ = std::make_unique<QSvgRenderer>();
        renderer_->load(coloured);
        rendered_ = colour;
    }

    Glyph glyph_;
    GlyphTone tone_;
    QColor rendered_;
    std::unique_ptr<QSvgRenderer> renderer_;
};

} // namespace

QIcon glyph_icon(Glyph glyph, GlyphTone tone) { return QIcon(new GlyphEngine(glyph, tone)); }

} // namespace ullage
