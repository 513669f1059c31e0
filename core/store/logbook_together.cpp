// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/logbook_impl.h"
#include "store/logbook.h"

namespace ullage {

Result<void> Logbook::all_or_none(const std::function<Result<void>()>& work) {
    const Result<void> done = impl_->change([&]() -> Result<void> {
        impl_->together = true;
        impl_->together_failed = false;
        Result<void> outcome = work();
        impl_->together = false;
        // A change whose error `work` passed over may be half done.
        if (outcome && impl_->together_failed)
            return Error{Failure::refused, say(phrase("store", "one of several changes failed")), impl_->path.string(),
                         say(phrase("store", "none of them was made"))};
        return outcome;
    });
    impl_->together = false; // also where something was thrown
    if (!done) {
        // What they remember may be of changes that are undone.
        impl_->import_index.reset();
        impl_->run_traces = {};
    }
    return done;
}

} // namespace ullage
