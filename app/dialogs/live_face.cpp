// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/live_face.h"

#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"

#include <QLabel>
#include <QLocale>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage {

namespace {

constexpr double strip_ms = 120'000;
constexpr int strip_lines = 3;

std::optional<double> shown_value(const TraceSample& sample) {
    for (const auto& value : {sample.power_w, sample.register_wh, sample.voltage_v, sample.current_a})
        if (value) return value;
    return std::nullopt;
}

QString with_unit(double value, int decimals, const char* unit) {
    return QStringLiteral("%1\u202f%2").arg(QLocale().toString(value, 'f', decimals), QLatin1String(unit));
}

QStringList all_words(const TraceSample& sample) {
    QStringList words;
    if (sample.power_w) words << with_unit(*sample.power_w, 1, "W");
    if (sample.register_wh) words << with_unit(*sample.register_wh, 1, "Wh");
    if (sample.voltage_v) words << with_unit(*sample.voltage_v, 1, "V");
    if (sample.current_a) words << with_unit(*sample.current_a, 2, "A");
    return words;
}

} // namespace

QString value_words(const TraceSample& sample) { return all_words(sample).value(0); }

QString further_words(const TraceSample& sample) { return all_words(sample).mid(1).join(QStringLiteral(" · ")); }

QString age_words(std::int64_t age_ms) {
    const auto seconds = age_ms / 1000;
    if (seconds < 120) return LiveFace::tr("%1 s ago").arg(seconds);
    if (seconds < 7200) return LiveFace::tr("%1 min ago").arg(seconds / 60);
    return LiveFace::tr("%1 h ago").arg(seconds / 3600);
}

/// The last two minutes, the newest at the right.
class LiveFace::Strip final : public QWidget {
public:
    explicit Strip(QWidget* parent) : QWidget(parent) { setMinimumHeight(fontMetrics().height() * strip_lines); }

    void setPoints(std::vector<QPointF> points) { // x: ms before the newest; y: value
        points_ = std::move(points);
        update();
    }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const Palette& colours = current_palette();
        painter.setPen(QPen(colours.line, 1));
        painter.drawLine(QPointF(0, height() - 0.5), QPointF(width(), height() - 0.5));
        if (points_.size() < 2) return;
        const auto [least, most] = std::ranges::minmax_element(points_, {}, [](const QPointF& point) { return point.y(); });
        // A steady value lies in the middle, not on its noise blown up: at least a twentieth of it fills the height.
        const double middle = (least->y() + most->y()) / 2;
        const double span = std::max({most->y() - least->y(), std::abs(middle) / 20, 1e-9});
        QPolygonF line;
        for (const QPointF& point : points_)
            line << QPointF(width() * (1 - point.x() / strip_ms), height() / 2.0 - (point.y() - middle) / span * (height() - 6.0));
        painter.setPen(QPen(colours.delivered, 1.5));
        painter.drawPolyline(line);
    }

private:
    std::vector<QPointF> points_;
};

LiveFace::LiveFace(QWidget* parent)
    : QWidget(parent), value_(new QLabel), further_(new QLabel), about_(new QLabel), trouble_(new QLabel), strip_(new Strip(this)) {
    setObjectName(QStringLiteral("liveFaceWidget"));
    value_->setObjectName(QStringLiteral("liveValueLabel"));
    about_->setObjectName(QStringLiteral("liveAboutLabel"));
    further_->setObjectName(QStringLiteral("liveFurtherLabel"));
    trouble_->setObjectName(QStringLiteral("liveTroubleLabel"));
    set_text_style(*value_, Tone::ink, TextSize::title);
    set_text_style(*further_, Tone::ink);
    set_text_style(*about_, Tone::soft);
    set_text_style(*trouble_, Tone::fault);
    for (QLabel* label : {about_, trouble_}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::half_px);
    for (QWidget* part : std::initializer_list<QWidget*>{value_, further_, about_, strip_, trouble_}) column->addWidget(part);
    showNothing();
}

void LiveFace::showNothing() {
    value_->setText(QStringLiteral("–"));
    further_->clear();
    about_->setText(tr("Not tried yet. Try shows what comes; nothing is recorded."));
    trouble_->clear();
    trouble_->hide();
    strip_->setPoints({});
}

void LiveFace::showSession(const LiveSession& session) {
    const LiveState state = session.state();
    value_->setText(state.latest ? value_words(*state.latest) : QStringLiteral("–"));
    further_->setText(state.latest ? further_words(*state.latest) : QString());
    QStringList about;
    if (state.age_ms) about << age_words(*state.age_ms);
    else about << (state.link == LiveState::Link::connected ? tr("connected, nothing has come yet") : tr("connecting"));
    if (state.per_second) about << tr("%1 a second").arg(QLocale().toString(*state.per_second, 'g', 2));
    if (state.left_out + state.misunderstood > 0) about << tr("%1 left out").arg(state.left_out + state.misunderstood);
    if (!session.found().isEmpty()) about << session.found();
    about_->setText(about.join(QStringLiteral(" · ")));
    trouble_->setText(state.trouble);
    trouble_->setVisible(!state.trouble.isEmpty());
    std::vector<QPointF> points;
    if (!session.recent().empty()) {
        const UtcMs newest_ms = session.recent().back().time_ms;
        for (const TraceSample& sample : session.recent())
            if (const auto value = shown_value(sample)) points.emplace_back(static_cast<double>(newest_ms - sample.time_ms), *value);
    }
    strip_->setPoints(std::move(points));
}

} // namespace ullage
