// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace ullage {

/// "How to read this": the parts of a vessel with a sample of each, drawn as the vessels are.
class VesselKey final : public QWidget {
    Q_OBJECT
public:
    explicit VesselKey(QWidget* parent = nullptr);
};

} // namespace ullage
