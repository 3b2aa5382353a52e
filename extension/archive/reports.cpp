#include "archive/reports.hpp"

#include "archive/csv.hpp"
#include "archive/whole_file.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

namespace hearthcell::archive {
namespace {

constexpr off_t kept_room = 1 << 18; // problems.csv of a thousand workbooks that found the disk full

std::vector<std::string> headings_of_collected(std::vector<std::string> const& names) {
    std::vector<std::string> headings{"file"};
    for (std::string const& name : names) {
        headings.push_back(name);
        headings.push_back(name + " unit");
    }
    return headings;
}

class Reports {
public:
    Reports(Task const& task, Ran const& ran)
        : task_(task), ran_(ran), records_(task.output), changes_(task.output / "changes.csv") {
        summary_.edition = task.edition;
        summary_.workbooks = task.inputs.workbooks.size();
        for (std::string const& name : task.options.collect)
            summary_.collected.emplace_back(name, 0);
        problems_text_ = csv_row({"file", "reason", "detail", "attempts"});
        collected_text_ = csv_row(headings_of_collected(task.options.collect));
    }

    Summary write() {
        write_changes(csv_row(change_headings));
        auto other = task_.inputs.problems.begin(); // both lists are in the order of their files
        for (std::size_t number = 0; number < task_.inputs.workbooks.size(); ++number) {
            Input const& input = task_.inputs.workbooks[number];
            for (; other != task_.inputs.problems.end() && other->first < input.relative; ++other)
                list(other->first, other->second);
            if (auto const failed = ran_.failed.find(number); failed != ran_.failed.end())
                list(input.relative, failed->second);
            else
                add(input);
        }
        for (; other != task_.inputs.problems.end(); ++other)
            list(other->first, other->second);
        finish();
        return summary_;
    }

private:
    void add(Input const& input) {
        auto const finished = records_.find(input.relative);
        if (!finished)
            return list(input.relative, {Reason::not_written, "its record cannot be read again", 1});
        summary_.add(*finished);
        for (Problem const& problem : finished->problems)
            list(input.relative, problem);
        std::vector<std::string> row{input.relative};
        for (Collected const& one : finished->collected) {
            row.push_back(one.value);
            row.push_back(one.unit);
        }
        collected_text_ += csv_row(row);
        try {
            if (!no_changes_ && finished->rows_size > 0)
                changes_.append(records_.rows_of_changes(input.relative));
        } catch (std::system_error const& problem) {
            no_changes_ = problem;
        }
    }

    void list(std::string const& file, Problem const& problem) {
        ++summary_.problems[std::string(words(problem.reason))];
        problems_text_ +=
            csv_row({file, std::string(words(problem.reason)), problem.detail, std::to_string(problem.attempts)});
    }

    void write_changes(std::string const& text) {
        try {
            changes_.write(text);
        } catch (std::system_error const& problem) {
            no_changes_ = problem;
        }
    }

    void finish() {
        // The largest first: when it finds no room, the others can still say so.
        try {
            if (!no_changes_)
                changes_.put_in_place();
        } catch (std::system_error const& problem) {
            no_changes_ = problem;
        }
        if (no_changes_)
            list("changes.csv", {Reason::not_written, no_changes_->code().message(), 1});
        std::filesystem::path const collected = task_.output / "collected.csv";
        if (!task_.options.collect.empty())
            write(collected, collected_text_);
        else
            std::filesystem::remove(collected); // of an earlier run with other options
        write(task_.output / "problems.csv", problems_text_);
        write(task_.output / "summary.txt", text_of(summary_));
    }

    static void write(std::filesystem::path const& place, std::string const& text) {
        WholeFile file(place);
        file.write(text);
        file.put_in_place();
    }

    Task const& task_;
    Ran const& ran_;
    Records records_;
    Summary summary_;
    WholeFile changes_;
    std::optional<std::system_error> no_changes_;
    std::string problems_text_, collected_text_;
};

} // namespace

OutputFolder::OutputFolder(std::filesystem::path const& output) : state_(Records(output).folder()) {
    for (char const* report : {"changes.csv", "collected.csv", "problems.csv", "summary.txt"})
        if (std::filesystem::exists(output / report) && !std::filesystem::exists(state_))
            throw std::runtime_error((output / report).string() +
                                     " is not ours to replace: take another output folder");
    std::filesystem::create_directories(state_);
    lock_ = ::open((state_ / "lock").c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0666);
    if (lock_ < 0)
        throw std::system_error(errno, std::generic_category(), output.string());
    if (::flock(lock_, LOCK_EX | LOCK_NB) != 0)
        throw std::runtime_error("another run is at work in " + output.string());
    // The room is in the lock's own file, which is there all the time anyway.
    if (int const problem = ::posix_fallocate(lock_, 0, kept_room); problem != 0)
        throw std::system_error(problem, std::generic_category(), output.string());
}

OutputFolder::~OutputFolder() {
    release_room();
    ::close(lock_);
}

void OutputFolder::release_room() {
    if (::ftruncate(lock_, 0) != 0) { // then the room stays kept, which harms nobody
    }
}

Summary write_reports(Task const& task, Ran const& ran) {
    return Reports(task, ran).write();
}

} // namespace hearthcell::archive
