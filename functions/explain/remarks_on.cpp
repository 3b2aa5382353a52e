#include "functions/explain/remarks_on.hpp"

#include "functions/call/columns.hpp"
#include "functions/call/wordy.hpp"

namespace hearthcell {
namespace {

constexpr std::string_view odd = "Odd: ";

} // namespace

Sentences remarks_on(Function const& function, std::span<Value const> values) {
    Columnar const* columnar = std::get_if<Columnar>(&function.kernel);
    if (columnar != nullptr && columnar->remark != nullptr)
        return columnar->remark(Columns(function, values).given());
    Wordy const* wordy = std::get_if<Wordy>(&function.kernel);
    if (wordy == nullptr || wordy->remark == nullptr)
        return {};
    std::vector<Value> given(values.begin(), values.end());
    prepare_words(function, given);
    return wordy->remark(given);
}

bool is_odd(std::string_view remark) {
    return remark.starts_with(odd);
}

std::string without_odd(std::string_view remark) {
    return std::string(is_odd(remark) ? remark.substr(odd.size()) : remark);
}

} // namespace hearthcell
