// SPDX-License-Identifier: GPL-3.0-or-later
#include "shipped/program.h"

#include <atomic>
#include <csignal>
#include <cstdlib>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <sys/wait.h>
#include <unistd.h>

extern char** environ;

namespace ullage::test {

namespace {

std::vector<char*> pointers(std::vector<std::string>& words) {
    std::vector<char*> all;
    for (std::string& word : words) all.push_back(word.data());
    all.push_back(nullptr);
    return all;
}

std::vector<std::string> environment_of(const TempFolder& home, const std::map<std::string, std::string>& given) {
    std::map<std::string, std::string> all;
    for (char** each = environ; *each; ++each) {
        const std::string text = *each;
        if (const std::size_t sign = text.find('='); sign != std::string::npos) all[text.substr(0, sign)] = text.substr(sign + 1);
    }
    std::filesystem::create_directories(home / "tmp");
    all["HOME"] = home.path().string();
    all["TMPDIR"] = (home / "tmp").string();
    for (const char* name : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"}) all.erase(name);
    for (const auto& [name, value] : given) all[name] = value;
    std::vector<std::string> lines;
    for (const auto& [name, value] : all) lines.push_back(name + '=' + value);
    return lines;
}

} // namespace

Program::Program(const TempFolder& home, const std::vector<std::string>& args, const std::map<std::string, std::string>& environment,
                 const std::string& output) {
    static std::atomic<int> count = 0;
    const char* program = std::getenv("ULLAGE_PROGRAM");
    if (!program) throw std::runtime_error("ULLAGE_PROGRAM names no program; run this through ctest");
    const std::string stem = (home / ("process-" + std::to_string(++count))).string();
    out_path_ = output.empty() ? stem + ".out" : output;
    err_path_ = stem + ".err";
    std::vector<std::string> words{program}, lines = environment_of(home, environment);
    words.insert(words.end(), args.begin(), args.end());
    const std::vector<char*> argv = pointers(words), envp = pointers(lines);
    child_ = ::fork();
    if (child_ != 0) return;
    ::dup2(::open("/dev/null", O_RDONLY), STDIN_FILENO);
    ::dup2(::open(out_path_.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600), STDOUT_FILENO);
    ::dup2(::open(err_path_.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600), STDERR_FILENO);
    ::execve(argv[0], argv.data(), envp.data());
    ::_exit(127);
}

Program::~Program() {
    if (!runs()) return;
    send(SIGKILL);
    ::waitpid(child_, &status_, 0);
}

bool Program::runs() {
    if (!ended_ && ::waitpid(child_, &status_, WNOHANG) != 0) ended_ = true;
    return !ended_;
}

void Program::send(int signal) const { ::kill(child_, signal); }

Ended Program::end() {
    if (!ended_) ::waitpid(child_, &status_, 0);
    ended_ = true;
    Ended end;
    if (WIFEXITED(status_)) end.code = WEXITSTATUS(status_);
    if (WIFSIGNALED(status_)) end.signal = WTERMSIG(status_);
    if (std::filesystem::is_regular_file(out_path_)) end.out = bytes_of(out_path_);
    end.err = bytes_of(err_path_);
    return end;
}

Ended run_program(const TempFolder& home, const std::vector<std::string>& args, const std::map<std::string, std::string>& environment,
                  const std::string& output) {
    return Program(home, args, environment, output).end();
}

std::string bytes_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

} // namespace ullage::test
