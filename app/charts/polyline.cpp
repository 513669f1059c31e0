// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/polyline.h"

#include <cmath>
#include <optional>

namespace ullage {
namespace {

struct Segment {
    QPointF from;
    QPointF to;
};

// Liang and Barsky (1984): the part of a segment inside a rectangle, by its parameter range [enter, leave].
std::optional<Segment> inside(const Segment& segment, const QRectF& window) {
    const QPointF d = segment.to - segment.from;
    double enter = 0;
    double leave = 1;
    const double p[] = {-d.x(), d.x(), -d.y(), d.y()};
    const double q[] = {segment.from.x() - window.left(), window.right() - segment.from.x(), segment.from.y() - window.top(),
                        window.bottom() - segment.from.y()};
    for (int edge = 0; edge < 4; ++edge) {
        if (p[edge] == 0) {
            if (q[edge] < 0) return std::nullopt;
            continue;
        }
        const double at = q[edge] / p[edge];
        if (p[edge] < 0) enter = std::max(enter, at);
        else leave = std::min(leave, at);
    }
    if (enter > leave) return std::nullopt;
    return Segment{enter == 0 ? segment.from : segment.from + enter * d, leave == 1 ? segment.to : segment.from + leave * d};
}

class Pieces {
public:
    explicit Pieces(const QRectF& window) : window_(window) {}

    void lineTo(const QPointF& point) {
        if (last_) {
            if (const auto part = inside({*last_, point}, window_)) {
                if (current_.isEmpty() || current_.last() != part->from) {
                    finish();
                    current_.append(part->from);
                }
                current_.append(part->to);
            } else {
                finish();
            }
        }
        last_ = point;
    }

    void breakOff() {
        finish();
        last_.reset();
    }

    std::vector<QList<QPointF>> take() {
        finish();
        return std::move(done_);
    }

    [[nodiscard]] const std::optional<QPointF>& last() const { return last_; }

private:
    void finish() {
        if (current_.size() > 1) done_.push_back(current_);
        current_.clear();
    }

    QRectF window_;
    std::optional<QPointF> last_;
    QList<QPointF> current_;
    std::vector<QList<QPointF>> done_;
};

} // namespace

std::optional<QPointF> AxisMap::map(double x, double y) const {
    if (!std::isfinite(x) || !std::isfinite(y) || (x_logarithmic && x <= 0) || (y_logarithmic && y <= 0)) return std::nullopt;
    return QPointF(x_logarithmic ? std::log10(x) : x, y_logarithmic ? std::log10(y) : y);
}

std::vector<QList<QPointF>> curve_pieces(const std::vector<ChartPoint>& points, const std::vector<std::size_t>& indices, bool steps,
                                         const AxisMap& axes, const QRectF& window) {
    Pieces pieces(window);
    for (const std::size_t index : indices) {
        const auto place = axes.map(points[index].x, points[index].y);
        if (!place) {
            pieces.breakOff();
            continue;
        }
        if (steps && pieces.last()) pieces.lineTo({place->x(), pieces.last()->y()});
        pieces.lineTo(*place);
    }
    return pieces.take();
}

} // namespace ullage
