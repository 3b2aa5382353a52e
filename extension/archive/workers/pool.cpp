#include "extension/archive/workers/pool.hpp"

#include "extension/archive/workers/scratch.hpp"
#include "extension/archive/workers/seat.hpp"
#include "extension/archive/workers/signals.hpp"

#include <nlohmann/json.hpp>

#include <poll.h>

#include <algorithm>
#include <array>
#include <deque>
#include <memory>
#include <system_error>

namespace hearthcell::archive {
namespace {

constexpr int look_every = 200;              // ms
constexpr std::size_t most_false_starts = 3; // of each worker, with no workbook done by any in between

constexpr std::chrono::seconds longest_drawing{900}; // a worker ends its own office long before

template <class Work> auto asking(Work const& work) {
    try {
        return work();
    } catch (std::system_error const& problem) {
        throw CannotRun(problem.what());
    }
}

} // namespace

class Pool::Work {
public:
    Work(Task const& task, Progress& progress) : progress_(progress) {
        for (std::size_t workbook = 0; workbook < task.inputs.workbooks.size(); ++workbook)
            waiting_.push_back(workbook);
        ran_.states.resize(waiting_.size());
        auto const seats = std::clamp<std::size_t>(waiting_.size(), 1, task.options.workers);
        for (unsigned seat = 0; seat < seats; ++seat)
            seats_.push_back(std::make_unique<Seat>(task, scratch_.folder, seat));
    }

    ~Work() {
        if (well_)
            end_workers();
    }
    Work(Work const&) = delete;
    Work& operator=(Work const&) = delete;

    Ran run() {
        while (!finished()) {
            hand_out();
            wait();
            if ((ran_.signal = signals_.arrived()) != 0)
                return std::move(ran_);
        }
        well_ = true;
        return std::move(ran_);
    }

    Drawn draw(std::string const& pages, std::string const& name) {
        Drawn drawn{"", 0};
        for (int attempt = 0; attempt < 2; ++attempt) {
            auto const taken =
                std::find_if(seats_.begin(), seats_.end(), [](auto const& seat) { return seat->taken(); });
            Seat& seat = taken == seats_.end() ? *seats_.front() : **taken;
            if (!seat.taken())
                seat.start();
            seat.tell({{"pages", pages}, {"name", name}});
            drawn = result_of_drawing(seat);
            if (drawn.why_not.empty())
                break;
            seat.leave();
            well_ = drawn.signal == 0;
            if (!well_)
                break;
        }
        return drawn;
    }

private:
    [[nodiscard]] bool any_busy() const {
        return std::any_of(seats_.begin(), seats_.end(), [](auto const& seat) { return seat->busy(); });
    }

    [[nodiscard]] bool finished() const { return waiting_.empty() && again_.empty() && !any_busy(); }

    void hand_out() {
        for (auto const& seat : seats_) {
            if (seat->busy())
                continue;
            if (!waiting_.empty()) {
                give(*seat, waiting_);
            } else if (!again_.empty() && !any_busy()) {
                give(*seat, again_); // once more, with nothing beside it that could be to blame
                return;
            }
        }
    }

    void give(Seat& seat, std::deque<std::size_t>& from) {
        if (!seat.taken())
            seat.start();
        std::size_t const workbook = from.front();
        from.pop_front();
        if (!seat.give(workbook)) { // it died while it waited, which is no workbook's fault
            seat.leave();
            from.push_front(workbook);
        }
    }

    void wait() {
        std::vector<pollfd> lines{{signals_.descriptor(), POLLIN, 0}};
        for (auto const& seat : seats_)
            lines.push_back({seat->taken() ? seat->socket() : -1, POLLIN, 0});
        ::poll(lines.data(), lines.size(), look_every);
        for (std::size_t number = 0; number < seats_.size(); ++number) {
            if (lines[number + 1].revents != 0)
                listen(*seats_[number]);
            else if (seats_[number]->overdue())
                lost(*seats_[number], Reason::timed_out, "its worker hung");
        }
        progress_.tick();
    }

    void listen(Seat& seat) {
        auto const message = seat.hear();
        if (!message)
            return lost(seat, Reason::crashed, "its worker ended");
        for (char const* trouble : {"no_office", "broken"})
            if (message->contains(trouble))
                return false_start(seat, message->at(trouble).get<std::string>());
        if (message->contains("finished"))
            take(seat, *message);
    }

    void take(Seat& seat, nlohmann::json const& answer) {
        auto const workbook = answer.at("workbook").get<std::size_t>();
        seat.done();
        if (answer.contains("last_words"))
            seat.leave();
        false_starts_ = 0;
        if (answer.at("finished").get<bool>()) {
            ran_.states[workbook] = answer.at("copy").get<bool>() ? Ran::State::has_copy : Ran::State::without_copy;
            progress_.done(answer.at("problems").get<std::size_t>());
        } else
            fail(workbook, reason_of(answer.at("reason").get<std::string>()), answer.at("detail").get<std::string>());
    }

    void lost(Seat& seat, Reason reason, std::string const& detail) {
        auto const workbook = seat.workbook();
        seat.leave();
        if (workbook)
            fail(*workbook, reason, detail);
    }

    void fail(std::size_t workbook, Reason reason, std::string const& detail) {
        int const attempts = ++attempts_[workbook];
        bool const may_be_bad_luck =
            reason == Reason::timed_out || reason == Reason::memory_limit || reason == Reason::crashed;
        if (may_be_bad_luck && attempts < 2) {
            again_.push_back(workbook);
            return;
        }
        ran_.failed[workbook] = {reason, detail, attempts};
        ran_.states[workbook] = Ran::State::without_copy;
        progress_.done(1);
    }

    void false_start(Seat& seat, std::string const& why) {
        auto const workbook = seat.workbook();
        seat.leave();
        if (++false_starts_ >= most_false_starts * seats_.size())
            throw CannotRun(why);
        if (workbook)
            waiting_.push_front(*workbook);
    }

    Drawn result_of_drawing(Seat& seat) {
        auto const end = std::chrono::steady_clock::now() + longest_drawing;
        while (std::chrono::steady_clock::now() < end) {
            std::array<pollfd, 2> lines{{{signals_.descriptor(), POLLIN, 0}, {seat.socket(), POLLIN, 0}}};
            ::poll(lines.data(), lines.size(), look_every);
            if (int const signal = signals_.arrived(); signal != 0)
                return {"stopped", signal};
            if (lines[1].revents == 0)
                continue;
            auto const message = seat.hear();
            if (!message)
                return {"its worker ended", 0};
            for (char const* trouble : {"no_office", "broken", "not_drawn"})
                if (message->contains(trouble))
                    return {message->at(trouble).get<std::string>(), 0};
            if (message->contains("drawn"))
                return {"", 0};
        }
        return {"its worker hung", 0};
    }

    void end_workers() {
        for (auto const& seat : seats_)
            seat->ask_to_end();
        for (auto const& seat : seats_) // each closes its line when its office has ended
            while (seat->taken() && seat->hear()) {
            }
    }

    Progress& progress_;
    Signals signals_;
    Scratch scratch_;
    std::vector<std::unique_ptr<Seat>> seats_; // before the scratch folder goes
    std::deque<std::size_t> waiting_, again_;
    std::map<std::size_t, int> attempts_;
    std::size_t false_starts_ = 0;
    bool well_ = false; // nothing cut it off: the workers are asked to end, and not just ended
    Ran ran_;
};

Pool::Pool(Task const& task, Progress& progress) {
    asking([&] { work_ = std::make_unique<Work>(task, progress); });
}

Pool::~Pool() = default;

Ran Pool::run() {
    return asking([&] { return work_->run(); });
}

Drawn Pool::draw(std::string const& pages, std::string const& name) {
    return asking([&] { return work_->draw(pages, name); });
}

} // namespace hearthcell::archive
