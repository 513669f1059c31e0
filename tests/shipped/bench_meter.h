// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <thread>

namespace ullage::test {

/// A pair of descriptors of which one is a terminal without a screen.
class PseudoTerminal {
public:
    PseudoTerminal();
    ~PseudoTerminal();
    PseudoTerminal(const PseudoTerminal&) = delete;
    PseudoTerminal& operator=(const PseudoTerminal&) = delete;

    /// Why there is none; empty where there is.
    [[nodiscard]] const std::string& trouble() const { return trouble_; }
    /// The file that a program opens as a terminal.
    [[nodiscard]] const std::string& device() const { return device_; }
    /// The other end, which does not wait.
    [[nodiscard]] int end() const { return end_; }
    /// What is written to the terminal from now on fails.
    void hang_up();

private:
    std::string trouble_, device_;
    int end_ = -1, kept_ = -1; ///< kept open, so that the terminal stays while no program has it
};

/// A meter at a serial line, which says twenty times a second what it shows: a register that rises from 100 Wh, and 400.5 W.
class BenchMeter {
public:
    BenchMeter();

    [[nodiscard]] const std::string& trouble() const { return line_.trouble(); }
    [[nodiscard]] const std::string& device() const { return line_.device(); }
    /// It is unplugged, line and all.
    void unplug();

private:
    PseudoTerminal line_;
    std::jthread speaking_;
};

} // namespace ullage::test
