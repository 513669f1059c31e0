// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <functional>
#include <ostream>
#include <string> // with <compare>, which moc cannot read first
#include <utility>

namespace ullage {

/// The identifier of a record of one kind: a UUID as text, or empty for a record that has none yet. `Tag` is of no other use than to tell the
/// kinds apart: an identifier is made of a text, and gives it back, only where that is said, and never becomes one of another kind.
template <typename Tag>
class Id {
public:
    Id() = default;
    explicit Id(std::string text) : text_(std::move(text)) {}

    [[nodiscard]] const std::string& text() const { return text_; }
    [[nodiscard]] bool empty() const { return text_.empty(); }

    friend bool operator==(const Id&, const Id&) = default;
    friend std::strong_ordering operator<=>(const Id&, const Id&) = default; ///< in the order of the texts

    /// For messages of tests.
    friend std::ostream& operator<<(std::ostream& out, const Id& id) { return out << id.text_; }

private:
    std::string text_;
};

using UnitId = Id<struct UnitTag>;
using MeterId = Id<struct MeterTag>;
using RunId = Id<struct RunTag>;
using ReadingId = Id<struct ReadingTag>;
using PhotoId = Id<struct PhotoTag>;
using TraceId = Id<struct TraceTag>;
using LoadListId = Id<struct LoadListTag>;
using PvSheetId = Id<struct PvSheetTag>;

} // namespace ullage

template <typename Tag>
struct std::hash<ullage::Id<Tag>> {
    std::size_t operator()(const ullage::Id<Tag>& id) const noexcept { return std::hash<std::string>()(id.text()); }
};
