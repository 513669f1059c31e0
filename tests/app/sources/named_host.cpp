// SPDX-License-Identifier: GPL-3.0-or-later
#include "named_host.h"

#include <gtest/gtest.h>

#include <dlfcn.h>
#include <netdb.h>

#include <map>
#include <mutex>

namespace {

// Names are looked up on threads of Qt's.
std::mutex names_lock;
std::map<std::string, std::vector<std::string>> known_names;

int ask_system(const char* node, const char* service, const addrinfo* hints, addrinfo** found) {
    static const auto ask = reinterpret_cast<decltype(&::getaddrinfo)>(::dlsym(RTLD_NEXT, "getaddrinfo"));
    return ask(node, service, hints, found);
}

} // namespace

extern "C" __attribute__((visibility("default"))) int getaddrinfo(const char* node, const char* service, const addrinfo* hints, addrinfo** found) {
    std::vector<std::string> addresses;
    {
        const std::lock_guard guard(names_lock);
        const auto known = known_names.find(node ? node : "");
        if (known == known_names.end()) return ask_system(node, service, hints, found);
        addresses = known->second;
    }
    if (addresses.empty()) return EAI_NONAME;
    addrinfo literal = hints ? *hints : addrinfo{};
    literal.ai_flags = AI_NUMERICHOST; // also where the machine has no address of the family
    *found = nullptr;
    addrinfo** end = found;
    for (const std::string& address : addresses) {
        if (const int fault = ask_system(address.c_str(), service, &literal, end)) return fault;
        while (*end) end = &(*end)->ai_next;
    }
    return 0;
}

namespace ullage::test {

NamedHost::NamedHost(const std::string& name, const std::vector<std::string>& addresses) : name_(name) {
    const std::lock_guard guard(names_lock);
    known_names[name_] = addresses;
}

NamedHost::~NamedHost() {
    const std::lock_guard guard(names_lock);
    known_names.erase(name_);
}

} // namespace ullage::test
