// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/live_source.h"

#include "base/number.h"
#include "model/limits.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <charconv>
#include <utility>

namespace ullage {

namespace {

constexpr std::string_view imported_words = "sunspec imported", exported_words = "sunspec exported", detect_words = "detect";
constexpr std::size_t most_fields = 64;

Error bad_source(const Message& where, const Message& what, const Message& remedy) { return {Failure::bad_input, what, where, remedy}; }

Result<void> check_words(const Phrase& field, std::string_view text, std::size_t most) {
    auto good = check_text({}, text, most);
    if (good) return good;
    Error error = good.error();
    error.where = say(field);
    return error;
}

bool is_device(SourceKind kind) {
    return kind == SourceKind::modbus_rtu || kind == SourceKind::serial_lines || kind == SourceKind::readout || kind == SourceKind::scpi_device;
}

int standard_port(const LiveSource& source) {
    switch (source.kind) {
    case SourceKind::modbus_tcp: return 502;
    case SourceKind::mqtt: return source.tls ? 8883 : 1883;
    case SourceKind::scpi_tcp: return 5025;
    default: return 0;
    }
}

bool whole(std::string_view text, int& number) {
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    return error == std::errc() && end == text.data() + text.size();
}

Result<void> check_address(const LiveSource& source) {
    const std::string& address = source.address;
    if (address.empty())
        return bad_source(say(phrase("live", "address")), say(phrase("live", "there is no address")),
                          say(phrase("live", "enter host, URL or device file")));
    if (auto text = check_words(phrase("live", "address"), address, longest_file_name); !text) return text;
    if (std::ranges::any_of(address, [](char c) { return static_cast<unsigned char>(c) <= 32; }))
        return bad_source(say(phrase("live", "address")), say(phrase("live", "an address holds no blanks")), say(phrase("live", "check it")));
    if (is_device(source.kind)) {
        if (address.front() != '/')
            return bad_source(say(phrase("live", "address")), say(phrase("live", "`%1` is no device file"), address),
                              say(phrase("live", "write it like /dev/ttyUSB0")));
        return {};
    }
    if (source.kind == SourceKind::http) {
        const bool plain = address.starts_with("http://"), secured = address.starts_with("https://");
        const auto host = address.find("//") + 2;
        if ((!plain && !secured) || host >= address.size() || address[host] == '/')
            return bad_source(say(phrase("live", "address")), say(phrase("live", "`%1` is no address of a web service"), address),
                              say(phrase("live", "write it like http://192.0.2.20/status")));
        if (address.substr(host, address.find('/', host) - host).find('@') != std::string::npos)
            return bad_source(say(phrase("live", "address")), say(phrase("live", "a user or password does not belong into the address")),
                              say(phrase("live", "the program asks for the password when it reads")));
        return {};
    }
    if (address.find('@') != std::string::npos || address.find('/') != std::string::npos)
        return bad_source(say(phrase("live", "address")), say(phrase("live", "`%1` is no host"), address),
                          say(phrase("live", "write it like 192.0.2.10 or meter.example.org:1502")));
    const auto peer = source.peer();
    if (peer.host.empty() || peer.port < 1 || peer.port > 65'535)
        return bad_source(say(phrase("live", "address")), say(phrase("live", "`%1` is no host with a port from 1 to 65535"), address),
                          say(phrase("live", "write it like 192.0.2.10:1502")));
    return {};
}

} // namespace

Result<LineSettings> line_settings_from(std::string_view text) {
    const Error form = bad_source(say(phrase("live", "line")), say(phrase("live", "`%1` is no setting of a serial line"), text),
                                  say(phrase("live", "write it like 9600 8N1 or 300 7E1")));
    const auto blank = text.find(' ');
    if (blank == std::string_view::npos || text.size() != blank + 4) return form;
    LineSettings settings;
    const char bits = text[blank + 1], stop = text[blank + 3];
    settings.parity = text[blank + 2];
    settings.data_bits = bits - '0';
    settings.stop_bits = stop - '0';
    if (!whole(text.substr(0, blank), settings.baud) || settings.baud < 50 || settings.baud > 4'000'000 || (bits != '7' && bits != '8') ||
        (stop != '1' && stop != '2') || std::string_view("NEO").find(settings.parity) == std::string_view::npos)
        return form;
    return settings;
}

std::string line_settings_text(const LineSettings& settings) {
    return fmt::format("{} {}{}{}", settings.baud, settings.data_bits, settings.parity, settings.stop_bits);
}

LiveSource::Peer LiveSource::peer() const {
    Peer peer{address, standard_port(*this)};
    // An IPv6 address stands in brackets.
    const auto close = address.front() == '[' ? address.find(']') : std::string::npos;
    const auto colon = close == std::string::npos ? address.find(':') : address.find(':', close);
    if (close != std::string::npos) peer.host = address.substr(1, close - 1);
    else peer.host = address.substr(0, colon);
    if (colon != std::string::npos && !whole(std::string_view(address).substr(colon + 1), peer.port)) peer.port = 0;
    return peer;
}

std::string LiveSource::title() const { return kind == SourceKind::http ? address : fmt::format("{} {}", kind_word(kind), address); }

Result<void> check(const LiveSource& source) {
    if (auto good = check_address(source); !good) return good;
    if (auto good = check_words(phrase("live", "user"), source.user, longest_name); !good) return good;
    if (is_modbus(source.kind) && (source.station < 0 || source.station > 255))
        return bad_source(say(phrase("live", "station")), say(phrase("live", "a station is a number from 0 to 255")),
                          say(phrase("live", "see the setting of the meter")));
    if (!(source.interval_s >= 0.1 && source.interval_s <= 3600))
        return bad_source(say(phrase("live", "interval")), say(phrase("live", "questions come between 0.1 and 3600 s apart")),
                          say(phrase("live", "enter seconds")));
    if (source.sunspec && !is_modbus(source.kind))
        return bad_source(say(phrase("live", "what is read")), say(phrase("live", "only Modbus has SunSpec models")),
                          say(phrase("live", "name fields")));
    if (source.fields.empty() && !source.sunspec && source.kind != SourceKind::serial_lines)
        return bad_source(say(phrase("live", "what is read")), say(phrase("live", "nothing is read")),
                          say(phrase("live", "name a field, such as `power …`")));
    if (source.fields.size() > most_fields)
        return bad_source(say(phrase("live", "what is read")), say(phrase("live", "these are too many fields")),
                          say(phrase("live", "name at most 64")));
    for (std::size_t i = 0; i < source.fields.size(); ++i)
        for (std::size_t j = i + 1; j < source.fields.size(); ++j)
            if (source.fields[i].role == source.fields[j].role)
                return bad_source(say(phrase("live", "what is read")), say(phrase("live", "%1 is named twice"), say_role(source.fields[i].role)),
                                  say(phrase("live", "leave one of them")));
    return {};
}

std::string fields_text(const LiveSource& source) {
    if (source.sunspec) return std::string(*source.sunspec == EnergyDirection::exported ? exported_words : imported_words);
    if (source.fields.empty()) return source.kind == SourceKind::serial_lines ? std::string(detect_words) : std::string();
    std::string text;
    for (const LiveField& field : source.fields) text += (text.empty() ? "" : "\n") + field_line(source.kind, field);
    return text;
}

Result<void> take_fields(LiveSource& source, std::string_view lines) {
    source.fields.clear();
    source.sunspec.reset();
    int number = 0;
    while (!lines.empty()) {
        const auto end = std::min(lines.find('\n'), lines.size());
        const auto line = trimmed(lines.substr(0, end));
        lines.remove_prefix(std::min(end + 1, lines.size()));
        ++number;
        if (line.empty() || (line == detect_words && source.kind == SourceKind::serial_lines)) continue;
        if (is_modbus(source.kind) && (line == imported_words || line == exported_words)) {
            source.sunspec = line == exported_words ? EnergyDirection::exported : EnergyDirection::imported;
            continue;
        }
        auto field = field_from(source.kind, line);
        if (!field) {
            Error error = field.error();
            error.where = say(phrase("live", "what is read, line %1"), say_number(number));
            return error;
        }
        source.fields.push_back(std::move(field).value());
    }
    return {};
}

std::string source_text(const LiveSource& source) {
    const LiveSource usual;
    nlohmann::ordered_json object;
    object["kind"] = std::string(kind_word(source.kind));
    object["address"] = source.address;
    if (is_modbus(source.kind) && source.station != usual.station) object["station"] = source.station;
    if (has_line_settings(source.kind)) object["line"] = line_settings_text(source.line);
    if (source.interval_s != usual.interval_s) object["interval_s"] = source.interval_s;
    if (source.tls) object["tls"] = true;
    if (!source.user.empty()) object["user"] = source.user;
    object["read"] = fields_text(source);
    return object.dump();
}

Result<LiveSource> source_from(std::string_view text) {
    const Error form = bad_source(say(phrase("live", "source")), say(phrase("live", "the description of a source is not understood")),
                                  say(phrase("live", "write it as `ullage watch --help` says, or set it up anew")));
    const auto object = nlohmann::json::parse(text.begin(), text.end(), nullptr, false);
    if (!object.is_object()) return form;
    LiveSource source;
    std::string read;
    try {
        const auto kind = kind_from(object.at("kind").get<std::string>());
        if (!kind)
            return bad_source(say(phrase("live", "source")), say(phrase("live", "this kind of source is not known")),
                              say(phrase("live", "use one that `ullage watch --help` lists")));
        source.kind = *kind;
        for (const auto& [key, value] : object.items()) {
            if (key == "address") source.address = value.get<std::string>();
            else if (key == "station") source.station = value.get<int>();
            else if (key == "interval_s") source.interval_s = value.get<double>();
            else if (key == "tls") source.tls = value.get<bool>();
            else if (key == "user") source.user = value.get<std::string>();
            else if (key == "read") read = value.get<std::string>();
            else if (key == "line") {
                auto line = line_settings_from(value.get<std::string>());
                if (!line) return line.error();
                source.line = line.value();
            } else if (key != "kind")
                return bad_source(say(phrase("live", "source")), say(phrase("live", "`%1` is no part of a source"), key),
                                  say(phrase("live", "leave it out")));
        }
    } catch (const nlohmann::json::exception&) {
        return form;
    }
    if (auto taken = take_fields(source, read); !taken) return taken.error();
    if (auto good = check(source); !good) return good.error();
    return source;
}

} // namespace ullage
