// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <csignal>
#include <fcntl.h>
#include <optional>
#include <string>
#include <sys/wait.h>
#include <unistd.h>
#include <vector>

namespace ullage::test {

/// A program as a child process, killed at the end of its scope at the latest.
class ChildProcess {
public:
    /// Runs `words`: the program's path, then its arguments.
    explicit ChildProcess(std::vector<std::string> words_given) {
        int in[2], out[2];
        if (::pipe2(in, O_CLOEXEC) != 0 || ::pipe2(out, O_CLOEXEC) != 0) return;
        std::vector<char*> words;
        for (std::string& word : words_given) words.push_back(word.data());
        words.push_back(nullptr);
        child_ = ::fork();
        if (child_ == 0) {
            ::dup2(in[0], STDIN_FILENO);
            ::dup2(out[1], STDOUT_FILENO);
            ::execv(words[0], words.data());
            ::_exit(127);
        }
        ::close(in[0]);
        ::close(out[1]);
        input_ = in[1];
        output_ = out[0];
    }
    ~ChildProcess() {
        kill();
        ::close(output_);
    }
    ChildProcess(const ChildProcess&) = delete;
    ChildProcess& operator=(const ChildProcess&) = delete;

    /// The next complete line, or nothing when the child has ended.
    std::optional<std::string> line() {
        std::string text;
        char byte = 0;
        while (::read(output_, &byte, 1) == 1) {
            if (byte == '\n') return text;
            text += byte;
        }
        return std::nullopt;
    }

    /// SIGKILL: the process gets no chance to finish anything.
    void kill() {
        if (child_ <= 0) return;
        ::kill(child_, SIGKILL);
        wait();
    }

    /// Ends its input and waits for its orderly end.
    void finish() {
        ::close(input_);
        input_ = -1;
        if (child_ > 0) wait();
    }

private:
    void wait() {
        ::waitpid(child_, nullptr, 0);
        child_ = 0;
        if (input_ >= 0) ::close(input_);
        input_ = -1;
    }

    pid_t child_ = 0;
    int input_ = -1, output_ = -1;
};

} // namespace ullage::test
