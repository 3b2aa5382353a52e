#include "tests/archive/runs/processes.hpp"

#include "tests/support/content.hpp"

#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <iterator>
#include <sstream>

namespace hearthcell::tests::archive {

std::vector<pid_t> all_processes() {
    std::vector<pid_t> ids;
    for (auto const& entry : std::filesystem::directory_iterator("/proc")) {
        std::string const name = entry.path().filename();
        if (name.find_first_not_of("0123456789") == std::string::npos)
            ids.push_back(std::stoi(name));
    }
    std::sort(ids.begin(), ids.end());
    return ids;
}

Facts facts_of(pid_t process) {
    std::string const line = content("/proc/" + std::to_string(process) + "/stat");
    std::size_t const open = line.find('('), close = line.rfind(')');
    if (open == std::string::npos || close == std::string::npos)
        return {};
    std::istringstream rest(line.substr(close + 1));
    return {line.substr(open + 1, close - open - 1), {std::istream_iterator<std::string>(rest), {}}};
}

std::vector<pid_t> children_of(std::vector<pid_t> const& parents, std::string const& name) {
    std::vector<pid_t> children;
    for (pid_t const process : all_processes()) {
        Facts const facts = facts_of(process);
        if (facts.name == name && facts.fields.at(0) != "Z" &&
            std::find(parents.begin(), parents.end(), std::stoi(facts.fields.at(1))) != parents.end())
            children.push_back(process);
    }
    return children;
}

double processor_time(pid_t process) {
    constexpr std::size_t user = 11, system = 12; // of the fields after the name
    Facts const facts = facts_of(process);
    if (facts.fields.size() <= system)
        return 0;
    return std::stod(facts.fields[user]) / double(::sysconf(_SC_CLK_TCK)) +
           std::stod(facts.fields[system]) / double(::sysconf(_SC_CLK_TCK));
}

} // namespace hearthcell::tests::archive
