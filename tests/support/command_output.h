// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdio>
#include <string>
#include <sys/wait.h>

namespace ullage::test {

struct CommandOutput {
    int exit_code = -1;
    std::string text; ///< standard output and error
};

/// Runs a shell command to its end.
inline CommandOutput run_command(const std::string& command) {
    CommandOutput output;
    FILE* pipe = popen((command + " 2>&1").c_str(), "r");
    if (!pipe) return output;
    std::array<char, 4096> buffer;
    for (std::size_t n; (n = fread(buffer.data(), 1, buffer.size(), pipe)) > 0;) output.text.append(buffer.data(), n);
    const int status = pclose(pipe);
    output.exit_code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return output;
}

} // namespace ullage::test
