#pragma once
// A block, cell by cell.

#include "functions/contract/values.hpp"

namespace hearthcell {

/// How many cells there are up to the last one that holds anything.
inline std::size_t used_cells(Block const& block) {
    std::size_t count = block.numbers.size();
    while (count > 0 && is_absent(block.numbers[count - 1]))
        --count;
    return count;
}

/// Walks through a block in its order, texts included. The block must outlive it.
class Cells {
public:
    explicit Cells(Block const& values) : block_(&values) {}

    Value next() {
        double const number = block_->numbers[place_++];
        if (text_ < block_->texts.size() && block_->texts[text_].place + 1 == place_)
            return block_->texts[text_++].text;
        return is_absent(number) ? Value() : Value(number);
    }

private:
    Block const* block_;
    std::size_t place_ = 0, text_ = 0;
};

} // namespace hearthcell
