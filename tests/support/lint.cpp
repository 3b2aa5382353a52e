#include "support/lint.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace hearthcell::tests {

void for_every_function(std::function<void(Function const&)> const& act) {
    for (Group const& group : catalogue())
        for (Function const& function : group.functions)
            act(function);
}
void for_every_argument(std::function<void(Function const&, Argument const&, std::string const&)> const& act) {
    for_every_function([&](Function const& function) {
        for (Argument const& argument : function.arguments)
            act(function, argument, std::string(function.name) + ", " + std::string(argument.name));
    });
}

void expect_tidy(std::string_view text, std::string_view whose) {
    ASSERT_FALSE(text.empty()) << whose;
    EXPECT_FALSE(text.ends_with('.') || text.ends_with(' ') || text.ends_with(';')) << whose << ": " << text;
    EXPECT_FALSE(text.starts_with(' ')) << whose << ": " << text;
    EXPECT_EQ(text.find("  "), std::string_view::npos) << whose << ": " << text;
    EXPECT_EQ(std::ranges::count(text, '"') % 2, 0) << whose << ": " << text;
    EXPECT_EQ(std::ranges::count(text, '('), std::ranges::count(text, ')')) << whose << ": " << text;
}

void expect_functions_named_in(std::string_view text, std::string_view whose) {
    constexpr std::string_view prefix = "STOVE.";
    for (std::size_t at = text.find(prefix); at != std::string_view::npos; at = text.find(prefix, at + 1)) {
        std::string_view name = text.substr(at + prefix.size());
        auto const end = std::ranges::find_if_not(name, [](char c) { return is_upper(c) || is_digit(c); });
        name = name.substr(0, std::size_t(end - name.begin()));
        if (name.empty()) // the prefix itself is spoken of
            continue;
        EXPECT_NE(find_function(name), nullptr) << whose << " names STOVE." << name << ", which is not there";
    }
}

} // namespace hearthcell::tests
