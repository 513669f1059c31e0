// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/temp_folder.h"

#include <map>
#include <string>
#include <sys/types.h>
#include <vector>

namespace ullage::test {

/// How a process ended, and what it wrote.
struct Ended {
    int code = -1;  ///< its exit code; -1 where a signal ended it
    int signal = 0; ///< the signal that ended it; 0 where none did
    std::string out, err;
};

/// The program under test, named by the environment variable ULLAGE_PROGRAM, as a process: it meets this process in files and signals alone.
/// Each has the settings, the home and the temporary folder that stand in `home`.
class Program {
public:
    /// Starts the program. Further variables of its environment may be given, and where its standard output goes.
    Program(const TempFolder& home, const std::vector<std::string>& args, const std::map<std::string, std::string>& environment = {},
            const std::string& output = {});
    /// Kills what has not ended.
    ~Program();
    Program(const Program&) = delete;
    Program& operator=(const Program&) = delete;

    [[nodiscard]] bool runs();
    void send(int signal) const;
    /// Waits for the end, however long that takes: ctest ends what hangs.
    [[nodiscard]] Ended end();

private:
    std::string out_path_, err_path_;
    pid_t child_ = 0;
    int status_ = 0;
    bool ended_ = false;
};

/// The program from start to end.
[[nodiscard]] Ended run_program(const TempFolder& home, const std::vector<std::string>& args,
                                const std::map<std::string, std::string>& environment = {}, const std::string& output = {});

/// All bytes of a file; empty where there is none.
[[nodiscard]] std::string bytes_of(const std::string& path);

} // namespace ullage::test
