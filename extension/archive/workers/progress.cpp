#include "extension/archive/workers/progress.hpp"

#include <nlohmann/json.hpp>

#include <unistd.h>

#include <array>
#include <cmath>
#include <cstdio>

namespace hearthcell::archive {
namespace {

using std::chrono::duration;
using std::chrono::steady_clock;
using namespace std::chrono_literals;

std::string of_time(double seconds) {
    auto const whole = static_cast<long>(std::ceil(seconds));
    if (whole < 100)
        return std::to_string(whole) + " s";
    if (whole < 6000)
        return std::to_string((whole + 30) / 60) + " min";
    return std::to_string((whole + 1800) / 3600) + " h";
}

} // namespace

Progress::Progress(std::size_t workbooks, Telling telling)
    : all_(workbooks), telling_(telling), terminal_(telling == Telling::words && ::isatty(STDERR_FILENO) != 0),
      start_(steady_clock::now()), last_(start_) {
    if (telling_ == Telling::lines_of_json)
        show(true); // how much there is to do
}

Progress::~Progress() {
    if (terminal_ && shown_)
        std::fputs("\r\033[K", stderr); // the summary follows
    else if (!terminal_)
        show(true);
}

void Progress::done(std::size_t problems) {
    ++done_;
    problems_ += problems;
    show(false);
}

void Progress::tick() {
    show(false);
}

std::string Progress::words() const {
    double const seconds = duration<double>(steady_clock::now() - start_).count();
    double const rate = seconds > 0 ? static_cast<double>(done_) / seconds : 0;
    std::string text = std::to_string(done_) + " of " + std::to_string(all_) + " files";
    if (done_ > 0) {
        std::array<char, 32> number{};
        std::snprintf(number.data(), number.size(), ", %.3g a second", rate);
        text += number.data();
        if (done_ < all_)
            text += ", " + of_time(static_cast<double>(all_ - done_) / rate) + " left";
    }
    if (problems_ > 0)
        text += ", " + std::to_string(problems_) + (problems_ == 1 ? " problem" : " problems");
    return text;
}

std::string Progress::line_of_json() const {
    return nlohmann::json{{"done", done_}, {"all", all_}, {"problems", problems_}}.dump();
}

void Progress::show(bool now) {
    bool const often = terminal_ || telling_ == Telling::lines_of_json;
    auto const pause = often ? 200ms : 10'000ms;
    if (telling_ == Telling::nothing || (!now && steady_clock::now() - last_ < pause))
        return;
    last_ = steady_clock::now();
    shown_ = true;
    std::string const text = telling_ == Telling::lines_of_json ? line_of_json() : words();
    std::fprintf(stderr, terminal_ ? "\r\033[K%s" : "%s\n", text.c_str());
    std::fflush(stderr);
}

} // namespace hearthcell::archive
