#include "functions/explain/remarks_on.hpp"

#include "functions/call/columns.hpp"
#include "functions/call/wordy.hpp"

namespace hearthcell {

Remarks remarks_on(Function const& function, std::span<Value const> values, Language language) {
    Columnar const* columnar = std::get_if<Columnar>(&function.kernel);
    if (columnar != nullptr && columnar->remark != nullptr)
        return columnar->remark(Columns(function, values).given(), language);
    Wordy const* wordy = std::get_if<Wordy>(&function.kernel);
    if (wordy == nullptr || wordy->remark == nullptr)
        return {};
    std::vector<Value> given(values.begin(), values.end());
    prepare_words(function, given);
    return wordy->remark(given, language);
}

} // namespace hearthcell
