#pragma once
// A sample of many things that pass one by one, in room that does not grow with their number.

#include <cstdint>
#include <utility>
#include <vector>

namespace hearthcell::archive {

/// Every nth of them, from the first on: all until there are too many, then every second, and so on.
template <class Thing> class EveryNth {
public:
    explicit EveryNth(std::size_t most) : most_(most) {}

    void add(Thing thing) {
        if (seen_++ % every_ != 0)
            return;
        kept_.push_back(std::move(thing));
        if (kept_.size() <= most_)
            return;
        every_ *= 2;
        for (std::size_t at = 1; 2 * at < kept_.size(); ++at)
            kept_[at] = std::move(kept_[2 * at]);
        kept_.resize((kept_.size() + 1) / 2);
    }

    [[nodiscard]] std::vector<Thing> const& kept() const { return kept_; }
    [[nodiscard]] std::uint64_t every() const { return every_; }

private:
    std::size_t most_;
    std::uint64_t every_ = 1, seen_ = 0;
    std::vector<Thing> kept_;
};

} // namespace hearthcell::archive
