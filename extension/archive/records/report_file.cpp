#include "extension/archive/records/report_file.hpp"

namespace hearthcell::archive {
namespace {

constexpr std::size_t most_in_memory = 1 << 20;

} // namespace

void ReportFile::add(std::string_view text) {
    waiting_ += text;
    if (waiting_.size() < most_in_memory)
        return;
    if (!file_)
        file_.emplace(place_);
    file_->write(waiting_);
    waiting_.clear();
}

void ReportFile::put_in_place() {
    if (!file_)
        file_.emplace(place_);
    file_->write(waiting_);
    file_->put_in_place();
}

} // namespace hearthcell::archive
