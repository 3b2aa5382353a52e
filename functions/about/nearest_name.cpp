#include "functions/about/nearest_name.hpp"

#include "functions/catalogue/catalogue.hpp"
#include "functions/catalogue/names.hpp"

#include <algorithm>
#include <numeric>
#include <string>
#include <vector>

namespace hearthcell {
namespace {

constexpr std::size_t longest = 40; ///< no name of a function is as long

std::string plain(std::string_view name) {
    std::string text;
    Letters letters(name);
    for (char letter = letters.next(); letter != 0; letter = letters.next())
        text += letter;
    return text;
}

/// How many letters are to be left out, put in or changed to make one of the other (Levenshtein).
std::size_t distance(std::string_view one, std::string_view other) {
    std::vector<std::size_t> costs(other.size() + 1);
    std::iota(costs.begin(), costs.end(), 0);
    for (std::size_t i = 0; i < one.size(); ++i) {
        std::size_t diagonal = costs[0];
        costs[0] = i + 1;
        for (std::size_t j = 0; j < other.size(); ++j) {
            std::size_t const changed = diagonal + (one[i] == other[j] ? 0 : 1);
            diagonal = costs[j + 1];
            costs[j + 1] = std::min({changed, costs[j] + 1, diagonal + 1});
        }
    }
    return costs.back();
}

} // namespace

Function const* nearest_function(std::string_view name) {
    std::string const typed = plain(without_prefix(name).substr(0, longest));
    Function const* nearest = nullptr;
    std::size_t least = 3;
    for (Group const& group : catalogue())
        for (Function const& function : group.functions) {
            std::size_t const far = distance(typed, plain(function.name));
            if (far < least) {
                nearest = &function;
                least = far;
            }
        }
    return nearest;
}

} // namespace hearthcell
