// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/parts/vessel_key.h"

#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"

#include <QGridLayout>
#include <QLabel>
#include <QPainter>

namespace ullage {

namespace {

enum class Part { delivered, no_load, missing, expected };

/// A small sample of one part.
class Swatch final : public QWidget {
public:
    Swatch(Part part, QWidget* parent) : QWidget(parent), part_(part) { setFixedSize(20, 14); }

protected:
    void paintEvent(QPaintEvent*) override {
        const Palette& palette = current_palette();
        QPainter painter(this);
        const QRect box = rect().adjusted(0, 0, -1, -1);
        switch (part_) {
        case Part::delivered: painter.fillRect(box, palette.delivered); break;
        case Part::no_load:
            painter.setRenderHint(QPainter::Antialiasing);
            painter.setPen(QPen(palette.gauge_implied, 2));
            painter.setClipRect(box);
            for (int x = -box.height(); x < box.width(); x += 5) painter.drawLine(x, box.bottom(), x + box.height(), box.top());
            break;
        case Part::missing:
            painter.setPen(palette.ink);
            painter.drawRect(box);
            break;
        case Part::expected:
            painter.setPen(QPen(palette.soft, 1, Qt::DashLine));
            painter.drawLine(box.left(), box.center().y(), box.right(), box.center().y());
            break;
        }
    }

private:
    Part part_;
};

} // namespace

VesselKey::VesselKey(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("vesselKey"));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(spacing::grid_px);
    grid->setVerticalSpacing(spacing::half_px + 2);
    auto* head = new QLabel(tr("How to read this"), this);
    set_text_style(*head, Tone::soft);
    grid->addWidget(head, 0, 0, 1, 2);
    const std::pair<Part, QString> parts[] = {
        {Part::delivered, tr("delivered at the socket; the bracket is the 95\u00a0% interval")},
        {Part::no_load, tr("taken by the no-load draw, where that is known")},
        {Part::missing, tr("missing: own draw, conversion, or less than the label; one run cannot separate them")},
        {Part::expected, tr("typical at the socket (common practice, no source), 75 to 80\u00a0% of rated")},
    };
    int row = 1;
    for (const auto& [part, words] : parts) {
        auto* label = new QLabel(words, this);
        label->setWordWrap(true);
        grid->addWidget(new Swatch(part, this), row, 0, Qt::AlignTop);
        grid->addWidget(label, row, 1);
        ++row;
    }
    grid->setColumnStretch(1, 1);
}

} // namespace ullage
