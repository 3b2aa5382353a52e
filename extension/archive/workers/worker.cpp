#include "extension/archive/workers/worker.hpp"

#include "extension/archive/files/shown.hpp"
#include "extension/archive/files/whole_file.hpp"
#include "extension/archive/inventory/look.hpp"
#include "extension/archive/recalculation/collected_columns.hpp"
#include "extension/archive/recalculation/links.hpp"
#include "extension/archive/recalculation/workbook.hpp"
#include "extension/archive/records/changes_csv.hpp"
#include "extension/archive/records/csv.hpp"
#include "extension/archive/records/finished.hpp"
#include "extension/archive/records/old_and_new_csv.hpp"
#include "extension/archive/report/draw_pages.hpp"
#include "extension/archive/workers/message.hpp"
#include "extension/archive/workers/scratch.hpp"
#include "extension/archive/workers/warm_office.hpp"
#include "extension/archive/workers/watchdog.hpp"
#include "extension/office/text.hpp"

#include <nlohmann/json.hpp>

#include <poll.h>
#include <unistd.h>

#include <cstdlib>
#include <new>
#include <system_error>

namespace hearthcell::archive {
namespace {

using nlohmann::json;

constexpr double drawing_time = 300; // seconds; usually one

class Worker {
public:
    Worker(Task const& task, int scheduler, std::filesystem::path const& scratch)
        : task_(task), scratch_(scratch), records_(task.output),
          watchdog_(scheduler, scratch, {task.options.time_limit, task.options.memory_limit << 20}),
          office_(task.package, task.options.recycle, watchdog_) {
        // Deep enough that a link to "../../site.ods" does not end at the root, where it would be saved as another one.
        bench_ = scratch;
        for (int level = 1; level <= folders_above_copy; ++level)
            bench_ /= std::to_string(level);
    }

    json answer(std::size_t number) {
        Input const& input = task_.inputs.workbooks.at(number);
        json answer{{"workbook", number}};
        try {
            Finished const finished = attempt(number, input);
            answer["finished"] = true;
            answer["problems"] = finished.problems.size();
            answer["copy"] = finished.copy_size.has_value();
        } catch (Trouble const& trouble) {
            answer["finished"] = false;
            answer["reason"] = words(trouble.reason);
            answer["detail"] = line_of(trouble.what(), longest_detail);
        }
        std::error_code ignored;
        std::filesystem::remove_all(bench_, ignored);
        return answer;
    }

    /// The scheduler's order to draw a summary: pages that lie with the records.
    json draw(json const& order) {
        auto const text = content_of(records_.folder() / order.at("pages").get<std::string>());
        auto const folder = as_deep_as(task_.output, scratch_ / "summary"); // the office does not see the output
        auto const aside = folder / "summary.ods";
        std::string why_not;
        try {
            std::filesystem::create_directories(folder);
            auto pages = json::parse(text.value_or("")).at("pages").get<std::vector<Page>>();
            move_links(pages, task_.output, folder);
            with_office(drawing_time, std::nullopt, [&](office::Office& office) { draw_pages(office, pages, aside); });
            WholeFile summary(task_.output / order.at("name").get<std::string>());
            summary.append(aside);
            summary.put_in_place();
        } catch (NoOffice const&) {
            throw;
        } catch (std::system_error const& problem) {
            why_not = problem.code().message();
        } catch (std::exception const& problem) {
            why_not = problem.what();
        }
        std::error_code ignored;
        std::filesystem::remove(aside, ignored);
        return why_not.empty() ? json{{"drawn", true}} : json{{"not_drawn", line_of(why_not, longest_detail)}};
    }

private:
    /// Our own readers at work, within the limits.
    template <class Work> auto reading(std::size_t number, Work const& work) {
        Watchdog::Reading const watched(watchdog_, number);
        return work();
    }

    /// Throws Trouble where another attempt, or another run, may end better.
    Finished attempt(std::size_t number, Input const& input) {
        try {
            std::filesystem::create_directories(bench_);
            Format const format = format_of(input.source).value();
            PrivateCopy copy{bench_ / ("workbook" + std::string(ending(format))), input.source, format, {}};
            Copied const original = reading(number, [&] { return copy_and_hash(input.source, copy.file, largest()); });
            std::string const key = task_.key(number, original.hash);
            if (auto known = records_.find(input.relative, key))
                return *known;
            return do_it(number, copy, original, key);
        } catch (std::system_error const& problem) { // of our own files: no room, no permission
            throw Trouble(Reason::not_written, problem.code().message());
        } catch (std::bad_alloc const&) { // which says nothing of the next workbook
            throw Trouble(Reason::too_large, "there is not enough memory for it");
        }
    }

    [[nodiscard]] std::uint64_t largest() const { return task_.options.size_limit << 20; }

    Finished do_it(std::size_t number, PrivateCopy& copy, Copied const& original, std::string const& key) {
        if (task_.options.inventory)
            return only_look(number, copy, original, key);
        Input const& input = task_.inputs.workbooks.at(number);
        Recalculated result;
        try {
            copy.stored = reading(number, [&] { return inspect(copy.file, copy.format, largest()); });
            std::unique_ptr<PlannedWorkbook> planned;
            if (task_.examples && copy.stored)
                planned = reading(number, [&] { return planned_workbook(number, copy); });
            result = in_office(number, copy, planned.get());
        } catch (Trouble const& trouble) {
            if (may_pass(trouble.reason))
                throw;
            result.outcome.problems.push_back({trouble.reason, trouble.what()});
            if (!task_.options.collect.empty())
                result.outcome.collected.emplace_back(columns_of(task_.options.collect).size());
        }
        std::string rows;
        for (Change const& change : result.changes)
            rows += csv_row(fields_of(input.relative, change));
        std::string compared;
        for (ComparedRow const& row : result.compared)
            compared += csv_row(fields_of(input.relative, task_.options.compare.at(row.pair), row));
        Finished finished{std::move(result.outcome), key, {}, rows.size(), compared.size(), original.state};
        if (!result.saved.empty())
            finished.copy_size = deliver(result.saved, input.relative, original.mode);
        records_.keep(input.relative, finished, rows, compared);
        return finished;
    }

    /// Without an office. The facts of the sheets lie where rows of changes do otherwise.
    Finished only_look(std::size_t number, PrivateCopy const& copy, Copied const& original, std::string const& key) {
        Looked looked;
        try {
            looked = reading(number, [&] { return look_at(copy.file, copy.format, largest()); });
        } catch (Trouble const& trouble) {
            if (may_pass(trouble.reason))
                throw;
            looked.problems.push_back({trouble.reason, trouble.what()});
        }
        std::string const facts = written(looked.sheets);
        Finished const finished{
            {{}, std::move(looked.problems), {}, {}, {}, {}, {}}, key, {}, facts.size(), 0, original.state};
        records_.keep(task_.inputs.workbooks.at(number).relative, finished, facts);
        return finished;
    }

    std::unique_ptr<PlannedWorkbook> planned_workbook(std::size_t number, PrivateCopy const& copy) {
        ExampleSet const& examples = *task_.examples;
        auto planned = std::make_unique<PlannedWorkbook>(largest());
        read_contents(copy.file, copy.format, largest(), planned->room, planned->contents);
        auto const& labels = examples.labels.at(number);
        if (!are_labels_of(planned->contents, labels, examples.same)) {
            planned->plan.problems.push_back({Reason::not_carried, "it could not be looked at, or was changed since"});
            return planned;
        }
        planned->seen.emplace(planned->contents, labels, examples.same);
        planned->plan = plan_for(examples, task_.inputs.workbooks.at(number).relative, *planned->seen);
        return planned;
    }

    Recalculated in_office(std::size_t number, PrivateCopy const& copy, PlannedWorkbook* planned) {
        Recalculated result;
        with_office(task_.options.time_limit, number, [&](office::Office& office) {
            if (planned == nullptr) {
                result = recalculate(office, copy, task_.options, task_.edition);
                return;
            }
            if (!formats_)
                formats_ = formats_of(office, *task_.examples, bench_ / "example", largest());
            Carrying const carrying{*planned, *formats_, *task_.examples};
            result = recalculate(office, copy, task_.options, task_.edition, &carrying);
        });
        return result;
    }

    /// Throws Trouble; the office is another one afterwards when it was to blame.
    template <class Work> void with_office(double time_limit, std::optional<std::size_t> workbook, Work const& work) {
        office::Office& office = office_.get();
        watchdog_.arm(time_limit, workbook);
        try {
            work(office);
            watchdog_.disarm();
        } catch (std::exception const& problem) {
            auto const passed = watchdog_.disarm();
            bool const dead = passed || dynamic_cast<office::Gone const*>(&problem) != nullptr || !stays_alive(office);
            if (dead)
                office_.drop();
            if (passed)
                throw *passed;
            if (dead)
                throw Trouble(Reason::crashed, "LibreOffice ended while it had the workbook");
            if (dynamic_cast<Trouble const*>(&problem) != nullptr ||
                dynamic_cast<std::bad_alloc const*>(&problem) != nullptr)
                throw;
            throw Trouble(Reason::failed, problem.what());
        }
    }

    /// The connection may break a moment before the process is seen to be dead.
    static bool stays_alive(office::Office& office) {
        for (int look = 0; look < 10 && office.alive(); ++look)
            std::this_thread::sleep_for(std::chrono::milliseconds(20));
        return office.alive();
    }

    std::uint64_t deliver(std::filesystem::path const& saved, std::string const& relative, unsigned mode) {
        std::filesystem::path const place = task_.output / relative;
        if (std::filesystem::exists(std::filesystem::symlink_status(place)) && !records_.claimed(relative))
            throw Trouble(Reason::not_written, "a file that this program did not write is in the way");
        std::filesystem::create_directories(place.parent_path());
        records_.claim(relative, hash_of_file(saved));
        WholeFile copy(place, (mode & 0666U) | 0600U);
        copy.append(saved);
        copy.put_in_place();
        return std::filesystem::file_size(place);
    }

    Task const& task_;
    std::filesystem::path scratch_, bench_;
    Records records_;
    Watchdog watchdog_;
    WarmOffice office_;
    std::optional<ExampleFormats> formats_; // of the run's examples, read once
};

/// Clearing up is the scheduler's, who can do it even when a worker is killed; unless it is itself no more.
void clear_up_alone(int scheduler, std::filesystem::path const& scratch) {
    pollfd line{scheduler, POLLRDHUP, 0};
    if (::poll(&line, 1, 0) <= 0)
        return;
    clear_away(scratch);
    clear_away_if_last(scratch.parent_path());
}

} // namespace

void work(Task const& task, int scheduler, std::filesystem::path const& scratch) {
    int status = 0;
    try {
        ::setenv("TMPDIR", scratch.c_str(), 1); // the office's profile goes there, too
        Worker worker(task, scheduler, scratch);
        while (auto const message = receive(scheduler)) {
            if (message->contains("end"))
                break;
            json const answer = message->contains("pages") ? worker.draw(*message)
                                                           : worker.answer(message->at("workbook").get<std::size_t>());
            if (!send(scheduler, answer))
                break;
        }
    } catch (NoOffice const& problem) {
        send(scheduler, {{"no_office", line_of(problem.what(), longest_detail)}});
        status = 1;
    } catch (std::exception const& problem) {
        send(scheduler, {{"broken", line_of(problem.what(), longest_detail)}});
        status = 1;
    }
    clear_up_alone(scheduler, scratch);
    ::_exit(status); // what the scheduler registered to be done at its own end is not ours to do
}

} // namespace hearthcell::archive
