// SPDX-License-Identifier: GPL-3.0-or-later
// What live sources may send, and the texts by which they are described.
#include "fuzz/fuzz_target.h"
#include "fuzz/mutator.h"
#include "live/live_events.h"
#include "live/live_lines.h"
#include "live/live_source.h"
#include "live/mqtt_packets.h"
#include "live/payload_number.h"
#include "live/readout.h"
#include "live/sample_gate.h"
#include "live/scpi_answer.h"

#include <fmt/format.h>

#include <string>
#include <utility>
#include <vector>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

std::vector<std::string> live_texts_to_spoil() {
    return {
        R"({"kind":"modbus-tcp","address":"192.0.2.10:1502","station":3,"read":"power holding 52 as f32 low-word-first in kW\nregister input 342 as u64 times 0.1"})",
        R"({"kind":"mqtt","address":"broker.example.org","tls":true,"user":"bench","read":"power bench/plug#/a/0/power\nregister bench/energy in kWh"})",
        R"({"kind":"iec62056-21","address":"/dev/ttyUSB0","line":"300 7E1","interval_s":15,"read":"register 1.8.0\npower 16.7.0"})",
        R"({"kind":"scpi-tcp","address":"[2001:db8::7]:5025","read":"power MEAS:POW? item 2"})",
        R"({"meters":[{"power":430.2,"energy":"812.4 Wh","deep":{"a":[1,2,{"b":null}]}}]})",
        "230.1 V;1.87 A;430.2 W;812.4 Wh\r\n230.0 V;1.86 A;429.9 W;812.5 Wh\r\n230.2 V;1.88 A;431.0 W;812.6 Wh\r\n231 V;1.9 A;430 W;812.7 Wh\n230 V;1 A;5 W;1 Wh\n",
        "/XYZ5 meter\r\n\x02"
        "1-0:1.8.0*255(000812.4*kWh)\r\n16.7.0(0.43*kW)32.7.0(230*V)\r\n!\r\n\x03\x4a",
        "+4.302E+02,812.4,9.91E37\n",
        std::string("\x20\x02\0\0\x90\x04\0\x01\0\x80\x31\x15\0\x01p{\"a\":{\"0\":431.50}}\x30\x08\0\x03p/q431\xd0\0", 45)};
}

class LiveFuzz final : public FuzzTarget {
public:
    LiveFuzz(std::uint64_t seed, const fs::path& into) : texts_(live_texts_to_spoil(), seed), path_(into / "fuzz_live.txt") {
        for (const char* line : {"power p#/meters/0/power", "register p#/meters/0/energy", "voltage p", "current p#/meters/0/deep/a/2/b"})
            fields_.push_back(field_from(SourceKind::mqtt, line).value());
        for (const LiveField& field : fields_) pointers_.push_back(&field);
        codes_ = {field_from(SourceKind::readout, "register 1.8.0").value(), field_from(SourceKind::readout, "power 16.7.0").value()};
        answer_ = field_from(SourceKind::scpi_tcp, "power FETC? item 2").value();
    }

    bool one() override {
        const std::string text = texts_.next();
        write_bytes_to(path_, text);
        ++inputs_;
        return description_holds(text) && values_hold(text) && lines_hold(text) && readout_holds(text) && packets_hold(text);
    }

    [[nodiscard]] std::string tally() const override { return fmt::format("{} texts, {} of them sources, {} samples", inputs_, sources_, samples_); }

private:
    bool description_holds(const std::string& text) {
        const auto source = source_from(text);
        if (!source) return !source.error().sentence().empty() || broken("an error of a source says nothing");
        ++sources_;
        const auto again = source_from(source_text(source.value()));
        return (again && again.value() == source.value()) || broken("a source changes when it is written and read");
    }

    bool values_hold(const std::string& text) {
        const auto numbers = numbers_in(text, pointers_);
        for (const auto& number : numbers)
            if (!finite(number)) return broken("a number of a payload is not finite");
        if (!finite(number_in_answer(text, answer_))) return broken("a number of an answer is not finite");
        return take({0, numbers[1], numbers[0], numbers[2], numbers[3]});
    }

    bool lines_hold(const std::string& text) {
        LiveLines lines({});
        LineCutter cutter;
        bool good = true;
        for (int i = 0; i < 3; ++i) cutter.take(text, [&](std::string_view line) { good = take(lines.read(line)) && good; });
        return good;
    }

    bool readout_holds(const std::string& text) {
        (void)identification_in(text);
        ReadoutBlock block;
        if (block.take(text) != ReadoutBlock::State::whole) return true;
        for (const LiveField& code : codes_)
            if (!finite(block.value(code))) return broken("a number of a read-out is not finite");
        return true;
    }

    /// However they come, the packets are the same, and none is longer than the bytes or the bound.
    bool packets_hold(const std::string& text) {
        constexpr std::size_t most_bytes = 30;
        std::vector<std::string> together, apart;
        const auto cut = [](MqttCutter& cutter, std::string_view bytes, std::vector<std::string>& found) {
            cutter.take(bytes);
            while (const auto packet = cutter.next()) found.push_back(packet->topic + ' ' + packet->payload);
        };
        MqttCutter whole(most_bytes), pieces(most_bytes);
        cut(whole, text, together);
        for (std::size_t at = 0; at < text.size();) {
            const std::size_t piece = 1 + texts_.pick(9);
            cut(pieces, std::string_view(text).substr(at, piece), apart);
            at += piece;
        }
        if (together != apart || whole.state() != pieces.state()) return broken("packets differ when they come in pieces");
        for (const std::string& packet : together)
            if (packet.size() > most_bytes) return broken("a packet is longer than the bound");
        return true;
    }

    /// Through the gate and the detector, as a session has it.
    bool take(const TraceSample& values) {
        steady_ms_ += static_cast<std::int64_t>(texts_.pick(3000));
        const auto clock_ms = 1'810'000'800'000 + static_cast<UtcMs>(texts_.pick(10'000'000));
        const auto sample = gate_.take({values, clock_ms, steady_ms_, texts_.pick(20) == 0});
        if (!sample) return true;
        ++samples_;
        for (const auto& value : {sample->register_wh, sample->power_w, sample->voltage_v, sample->current_a})
            if (!finite(value)) return broken("a sample is not finite");
        if (sample->time_ms <= last_ms_) return broken("a sample is not later than the one before");
        last_ms_ = sample->time_ms;
        detector_.take(*sample);
        for (const LiveEvent& event : detector_.take_events())
            if (event.evidence.empty() || event.by_ms < event.moment_ms) return broken("an event without evidence, or that ends before it begins");
        return true;
    }

    Mutator texts_;
    fs::path path_;
    std::vector<LiveField> fields_, codes_;
    std::vector<const LiveField*> pointers_;
    LiveField answer_;
    SampleGate gate_;
    EventDetector detector_{0.1};
    std::int64_t steady_ms_ = 0;
    UtcMs last_ms_ = 0;
    long inputs_ = 0, sources_ = 0, samples_ = 0;
};

} // namespace

std::unique_ptr<FuzzTarget> fuzz_live(std::uint64_t seed, const fs::path& into) { return std::make_unique<LiveFuzz>(seed, into); }

} // namespace ullage::test
