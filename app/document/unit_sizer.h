// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "sizing/sizing.h"

#include <QObject>

#include <memory>
#include <optional>

namespace ullage {

/// Sizes all units of the document for a load list: few of them at once, many in a thread of their own while the window goes on. Lives in the GUI
/// thread; the document must outlive it.
class UnitSizer final : public QObject {
    Q_OBJECT
public:
    explicit UnitSizer(Document& document, QObject* parent = nullptr) : QObject(parent), document_(document) {}
    ~UnitSizer() override; ///< stops what is being sized

    /// Sizes by what the document says now; sized() has come on return where the units are few. What was asked for before is given up.
    /// Preconditions: those of size_for().
    void start(const LoadList& list, const SizingChoices& choices);
    void cancel(); ///< nothing that was asked for comes any more
    [[nodiscard]] bool isWorking() const { return asked_ || (work_ && wanted_); }
    /// Has sized() come before it returns, where isWorking(); `beside` waits for what it is given.
    void finish(const Document::DoBeside& beside);

signals:
    void sized(const ullage::Sizing& sizing);
    void error(const QString& sentence); ///< sizing gave up

private:
    struct Asked {
        LoadList list;
        SizingChoices choices;
    };
    struct Work;

    void begin(Asked asked);
    void take(const std::shared_ptr<Work>& work);

    Document& document_;
    std::shared_ptr<Work> work_;
    bool wanted_ = false;        ///< what `work_` gives is still asked for
    std::optional<Asked> asked_; ///< to be begun when `work_` has ended
};

} // namespace ullage
