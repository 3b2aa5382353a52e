#include "extension/archive/run_reports.hpp"

namespace hearthcell::archive {
namespace {

/// On a full disk there may be no room for it; then the run cannot be joined with others, and can be made up for.
class CarefulIndex {
public:
    CarefulIndex(std::filesystem::path const& output, RunFacts const& facts) {
        attempt([&] { index_.emplace(output, facts); });
    }
    void add(RunEntry const& entry) {
        attempt([&] { index_->add(entry); });
    }
    void put_in_place() {
        attempt([&] { index_->put_in_place(); });
    }

private:
    template <class Work> void attempt(Work const& work) {
        try {
            if (well_)
                work();
        } catch (std::system_error const&) {
            well_ = false;
        }
    }
    std::optional<IndexWriter> index_;
    bool well_ = true;
};

class Filling {
public:
    Filling(Reports& reports, Task const& task)
        : reports_(reports), place_{task.output, task.inputs.base}, records_(task.output),
          index_(task.output, task.facts()) {}

    void workbook(std::string const& relative) {
        auto const finished = records_.find(relative);
        if (!finished)
            return failed({relative, true, record_lost});
        reports_.finished(relative, place_, *finished);
        index_.add({relative, true, std::nullopt});
    }

    void failed(RunEntry const& entry) {
        reports_.failed(entry.relative, place_, *entry.problem, entry.workbook);
        index_.add(entry);
    }

    void finish() { index_.put_in_place(); }

private:
    Reports& reports_;
    RunPlace place_;
    Records records_;
    CarefulIndex index_;
};

} // namespace

Problem const record_lost{Reason::not_written, "its record cannot be read again", 1};

void fill_reports(Reports& reports, Task const& task, Ran const& ran) {
    Filling filling(reports, task);
    auto other = task.inputs.problems.begin(); // both lists are in the order of their files
    auto const others_before = [&](std::string const* relative) {
        for (; other != task.inputs.problems.end() && (relative == nullptr || other->first < *relative); ++other)
            filling.failed({other->first, false, other->second});
    };
    for (std::size_t number = 0; number < task.inputs.workbooks.size(); ++number) {
        std::string const& relative = task.inputs.workbooks[number].relative;
        others_before(&relative);
        if (auto const failed = ran.failed.find(number); failed != ran.failed.end())
            filling.failed({relative, true, failed->second});
        else
            filling.workbook(relative);
    }
    others_before(nullptr);
    filling.finish();
}

} // namespace hearthcell::archive
