// SPDX-License-Identifier: GPL-3.0-or-later
// What the logbook states of the method, in place of the program's own figures, and the columns that it keeps.
#include "document/document_state.h"
#include "measure/method_settings.h"

namespace ullage {

namespace {

/// Sets every figure that `to` states and clears the others; up to the first that is refused.
Result<void> put_method(Logbook& book, const std::map<std::string, double>& to) {
    for (const MethodSetting& setting : all_method_settings()) {
        const std::string key(setting.key);
        const auto stated = to.find(key);
        if (auto done = stated == to.end() ? book.clear_method_setting(key) : book.set_method_setting(key, stated->second); !done) return done;
    }
    return {};
}

} // namespace

const std::map<std::string, double>& Document::method() const { return state_->method; }

Result<void> Document::setMethod(const std::map<std::string, double>& stated) {
    if (!state_->book) return State::nothingOpen();
    for (const auto& [key, value] : stated)
        if (auto good = check_method_setting(key, value); !good) return good;
    if (state_->method == stated) return {};
    const std::map<std::string, double> before = state_->method;
    if (auto put = put_method(*state_->book, stated); !put) {
        (void)put_method(*state_->book, before);
        return put;
    }
    Change change;
    change.method = true;
    state_->push(
        {tr("edit method"), tr("Changed method")}, change, [stated](Logbook& book) { return put_method(book, stated); },
        [before](Logbook& book) { return put_method(book, before); });
    return {};
}

std::map<std::string, std::string> Document::columnSets() const {
    if (!state_->book) return {};
    auto sets = state_->book->column_sets();
    return sets ? std::move(sets).value() : std::map<std::string, std::string>();
}

Result<void> Document::setColumnSet(const std::string& name, const std::string& keys) {
    if (!state_->book) return State::nothingOpen();
    return keys.empty() ? state_->book->clear_column_set(name) : state_->book->set_column_set(name, keys);
}

Result<void> Document::State::readMethod() {
    auto read = book->method_settings();
    if (!read) return read.error();
    method = std::move(read).value();
    casebook.set_options(options_from(method));
    return {};
}

} // namespace ullage
