#pragma once
// An environment variable, for programs that are started meanwhile.

#include <cstdlib>
#include <optional>
#include <string>

namespace hearthcell::tests {

/// Has another value as long as this object lives.
class ChangedVariable {
public:
    ChangedVariable(std::string name, std::string const& value) : name_(std::move(name)) {
        if (char const* const before = std::getenv(name_.c_str()))
            before_ = before;
        ::setenv(name_.c_str(), value.c_str(), 1);
    }
    ~ChangedVariable() { before_ ? ::setenv(name_.c_str(), before_->c_str(), 1) : ::unsetenv(name_.c_str()); }
    ChangedVariable(ChangedVariable const&) = delete;
    ChangedVariable& operator=(ChangedVariable const&) = delete;

private:
    std::string const name_;
    std::optional<std::string> before_;
};

} // namespace hearthcell::tests
