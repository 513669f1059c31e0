// SPDX-License-Identifier: GPL-3.0-or-later
// Some parts of the program stand on large libraries that most starts never call, yet would wait for: with what these bring they are a fourth of all
// that is loaded. In the program that ships these parts lie in a file beside it, the late part, which is loaded when the first of them is asked for;
// elsewhere they are linked in.
#pragma once

#include "base/result.h"

#include <atomic>
#include <filesystem>
#include <vector>

namespace ullage {

/// Opens the late part in the first of these places where it lies; at least one. Its content is that of now: a program that is replaced while it runs
/// goes on with the part that it was made with. Its name has the program's version, and nothing else tells it from that of another build. Errors:
/// not_found, where `where` is the first place; io, with the system's words, where one of them cannot be opened.
[[nodiscard]] Result<void> hold_late_part(const std::vector<std::filesystem::path>& places);

/// Loads what hold_late_part() has opened, once; any thread. Good where that was never asked, as then all parts are linked in. Errors: damaged, with
/// the system's words.
[[nodiscard]] Result<void> load_late_part();
/// The late part is there but lacks what is asked for, as that of another version would.
[[nodiscard]] Error other_late_part();

/// The place of a function that may be in the late part. To be a variable that is initialised while the program is compiled.
template <class Function>
class LateFunction {
public:
    /// Loads the late part if need be; any thread. Never null. Errors: those of load_late_part(), and other_late_part().
    [[nodiscard]] Result<Function*> get() const {
        if (Function* const function = function_.load()) return function;
        if (const Result<void> loaded = load_late_part(); !loaded) return loaded.error();
        if (Function* const function = function_.load()) return function;
        return other_late_part();
    }
    /// What LateEntry does.
    void set(Function* function) { function_.store(function); }

private:
    std::atomic<Function*> function_{nullptr};
};

/// Puts a function into its place when what it stands in is loaded; to be a variable beside the function.
struct LateEntry {
    template <class Function>
    LateEntry(LateFunction<Function>& place, Function* function) {
        place.set(function);
    }
};

} // namespace ullage
