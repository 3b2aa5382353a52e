#pragma once
// The add-in itself: an object that has a method for each function of the catalogue, and tells Calc what it is.

#include "extension/addin/object.hpp"
#include "extension/addin/results.hpp"

#include "functions/catalogue/function.hpp"

#include <string>

namespace hearthcell::addin {

class Stove final : public Object {
public:
    Stove();

private:
    struct Method {
        std::u16string name;
        Function const* function;
    };

    bool carry_out(Call const& call) const override;
    [[nodiscard]] Function const* function_called(std::u16string_view name) const;

    std::vector<Method> methods_; ///< by name
    Results results_;
};

} // namespace hearthcell::addin
