// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shipped/program.h"
#include "support/has_text.h"

#include <gtest/gtest.h>

#include <memory>

namespace ullage::test {

/// A logbook that the program made of all sample data, with its log, its charge, its load list and its PV sheets, and with a photo.
class Shipped : public testing::Test {
protected:
    static void SetUpTestSuite();
    static void TearDownTestSuite();

    /// Runs the program and expects it to end well without a word on stderr.
    static Ended good(const std::vector<std::string>& args);
    /// Runs it with `--output FILE` and expects a file; returns its bytes.
    static std::string written(std::vector<std::string> args, const std::string& name);
    static std::string file(const std::string& name) { return (*home_ / name).string(); }
    static const TempFolder& home() { return *home_; }
    static std::string logbook() { return file("sample.ullage"); }
    /// Another logbook, with a run of "Lantern 900" that is still running.
    static std::string running_logbook(const std::string& name);

private:
    static std::unique_ptr<TempFolder> home_;
};

/// A file of the folder sample-data.
[[nodiscard]] std::string sample_file(const std::string& name);

} // namespace ullage::test
