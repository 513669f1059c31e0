// SPDX-License-Identifier: GPL-3.0-or-later
#include "shipped/bench_meter.h"

#include <fcntl.h>
#include <unistd.h>

#include <chrono>
#include <cstdlib>

namespace ullage::test {

PseudoTerminal::PseudoTerminal() : end_(::posix_openpt(O_RDWR | O_NOCTTY | O_NONBLOCK | O_CLOEXEC)) {
    if (end_ < 0 || ::grantpt(end_) + ::unlockpt(end_) != 0) {
        trouble_ = "the system gives no pseudo terminal";
        return;
    }
    device_ = ::ptsname(end_);
    kept_ = ::open(device_.c_str(), O_RDWR | O_NOCTTY | O_CLOEXEC);
}

PseudoTerminal::~PseudoTerminal() { hang_up(); }

void PseudoTerminal::hang_up() {
    for (int* descriptor : {&kept_, &end_})
        if (*descriptor >= 0) ::close(*descriptor);
    kept_ = end_ = -1;
}

BenchMeter::BenchMeter()
    : speaking_([end = line_.end()](const std::stop_token& stop) {
          for (double wh = 100; !stop.stop_requested(); wh += 0.1) {
              const std::string line = std::to_string(wh) + " Wh;400.5 W\n";
              (void)!::write(end, line.data(), line.size());
              std::this_thread::sleep_for(std::chrono::milliseconds(50));
          }
      }) {}

void BenchMeter::unplug() {
    speaking_ = {};
    line_.hang_up();
}

} // namespace ullage::test
