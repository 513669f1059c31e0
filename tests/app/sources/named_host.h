// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace ullage::test {

/// While it lives, this process finds the name at these addresses, in this order, or nowhere, whatever the machine's files and servers of names say:
/// the test program has a getaddrinfo(3) of its own before that of the system, which answers all else. Qt remembers what it has found for a minute,
/// so each test takes a name of its own.
class NamedHost {
public:
    NamedHost(const std::string& name, const std::vector<std::string>& addresses);
    ~NamedHost();
    NamedHost(const NamedHost&) = delete;
    NamedHost& operator=(const NamedHost&) = delete;

private:
    std::string name_;
};

} // namespace ullage::test
