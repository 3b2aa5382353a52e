#pragma once
// A quick look whether an XML text holds links at all.

#include <string>
#include <string_view>

namespace hearthcell::archive {

/// Whether an XML text may hold an attribute that HideLinks hides: says quickly that most do not.
class MayLink {
public:
    void feed(std::string_view piece);
    [[nodiscard]] bool found() const;

private:
    std::string start_, last_; // the last letters: a name may have begun in them
    bool found_ = false;
};

} // namespace hearthcell::archive
