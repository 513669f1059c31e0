// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/live/live_commands.h"

#include "cli/live/watch_command.h"
#include "cli/text/command_options.h"
#include "live/live_field.h"

#include <memory>

namespace ullage {

namespace {

/// What --read takes, and what holds for all that is read.
std::string fields_help() {
    const auto line = [](const Message& words) { return words.text() + '\n'; };
    return line(say(phrase("commands", "What is read, one --read for each value: ROLE PLACE [as TYPE] [item N] [in UNIT] [times X]"))) + "  ROLE   " +
           line(say(phrase("commands", "register, power, voltage, current; gauge or output of the unit itself"))) + "  modbus-tcp, modbus-rtu  " +
           line(say(phrase("commands", "power holding 52 as f32 in W; registers count from 0; input or holding; types u16 s16 u32 s32"))) +
           "                          " + line(say(phrase("commands", "u64 s64 f32 f64; behind the type: low-word-first, bytes-swapped"))) +
           "                          " + line(say(phrase("commands", "sunspec imported, sunspec exported: the meter model that the device names"))) +
           "  mqtt                    " + line(say(phrase("commands", "power bench/plug/power, or power bench/plug#/power for JSON"))) +
           "  http                    " + line(say(phrase("commands", "power #/meters/0/power, or power body for a plain number"))) +
           "  lines                   " + line(say(phrase("commands", "power column 3 in W, or detect"))) +
           "  iec62056-21             register 1.8.0, power 16.7.0\n"
           "  scpi-tcp, scpi-device   power MEAS:POW? item 2\n" +
           line(say(phrase("commands", "A password is asked for at the terminal, or taken from ULLAGE_SOURCE_PASSWORD. It is not kept."))) +
           say(phrase("commands", "Meters in mains circuits are installed by licensed people; local codes come first.")).text();
}

Command::Run read_watch(CLI::App& command) {
    const auto arguments = std::make_shared<WatchArguments>();
    std::vector<std::string> kinds;
    for (const SourceKind kind : all_source_kinds) kinds.emplace_back(kind_word(kind));
    command.add_option("LOGBOOK", arguments->logbook, say(phrase("commands", "logbook file")))->required();
    auto* run =
        command
            .add_option("--run", arguments->run, say(phrase("commands", "number of the run; without it every running run whose meter has a source")))
            ->check(above_zero());
    command.add_option("--unit", arguments->unit, say(phrase("commands", "name of the unit")))->needs(run);
    auto* kind =
        command
            .add_option("--kind", arguments->kind, say(phrase("commands", "kind of the source; without it the one kept with the meter of the run")))
            ->check(CLI::IsMember(kinds));
    auto* address = command.add_option("--address", arguments->address, say(phrase("commands", "HOST[:PORT], a URL, or a device file")))->needs(kind);
    kind->needs(address)->needs(run);
    command.add_option("--read", arguments->read, say(phrase("commands", "one value that is read, see below")))->needs(kind)->allow_extra_args(false);
    command.add_option("--station", arguments->station, say(phrase("commands", "Modbus: unit identifier")))->needs(kind)->check(between(0, 255));
    command.add_option("--line", arguments->line, say(phrase("commands", "serial line: speed, bits, parity, stop bits, as in 9600 8N1")))
        ->needs(kind);
    command.add_option("--interval", arguments->interval_s, say(phrase("commands", "seconds between two questions")))
        ->needs(kind)
        ->check(between(0.1, 3600));
    command.add_flag("--tls", arguments->tls, say(phrase("commands", "MQTT: secured")))->needs(kind);
    command.add_option("--user", arguments->user, say(phrase("commands", "MQTT and HTTP: user name")))->needs(kind);
    auto* keep =
        command.add_flag("--keep", arguments->keep, say(phrase("commands", "keep this source with the meter of the run, for the next time")))
            ->needs(kind);
    command.add_flag("--try", arguments->trial, say(phrase("commands", "show what comes, record nothing")))->excludes(keep);
    command.add_flag("--until-off", arguments->until_off, say(phrase("commands", "end when every output has gone off")));
    command.add_option("--for", arguments->for_s, say(phrase("commands", "end after so many seconds")))->check(above_zero());
    command.footer(fields_help());
    return [arguments](std::ostream& out, std::ostream& err) { return watch_command(*arguments, out, err); };
}

} // namespace

const std::vector<Command>& live_commands() {
    static const std::vector<Command> commands{
        {"watch", phrase("commands", "Read meters live into running runs, without a window, until interrupted"), read_watch}};
    return commands;
}

} // namespace ullage
