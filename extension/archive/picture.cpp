#include "extension/archive/picture.hpp"

#include "functions/edition.hpp"

#include <nlohmann/json.hpp>

namespace hearthcell::archive {
namespace {

constexpr auto usual = "summary.ods", other = "summary-of-archive.ods";

std::string name_in(std::filesystem::path const& output) {
    return Records(output).claimed(usual) ? other : usual;
}

/// The pages that were drawn last.
std::filesystem::path drawn_pages(std::filesystem::path const& output) {
    return Records(output).folder() / "pages";
}

/// In the file's own words, so that the same pages need not be drawn again.
std::string text_of(Reports const& reports) {
    nlohmann::json const pages{{"program", edition}, {"pages", reports.pages()}};
    return pages.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

int draw(Pool& pool, std::filesystem::path const& output, std::string const& text, std::string& why_not) {
    auto const fresh = Records(output).folder() / "pages-to-draw";
    std::filesystem::remove(drawn_pages(output));
    {
        WholeFile file(fresh);
        file.write(text);
        file.put_in_place(false);
    }
    Drawn const drawn = pool.draw(fresh.filename(), name_in(output));
    why_not = drawn.why_not;
    if (why_not.empty())
        std::filesystem::rename(fresh, drawn_pages(output));
    else
        std::filesystem::remove(fresh);
    return drawn.signal;
}

} // namespace

int make_picture(Pool& pool, std::filesystem::path const& output, Reports& reports) {
    std::string const text = text_of(reports);
    if (content_of(drawn_pages(output)) == text && std::filesystem::exists(output / name_in(output)))
        return 0;
    std::string why_not;
    int signal = 0;
    try {
        signal = draw(pool, output, text, why_not);
    } catch (CannotRun const& problem) {
        why_not = problem.what();
    } catch (std::system_error const& problem) {
        why_not = problem.code().message();
    }
    if (!why_not.empty())
        reports.list(name_in(output), {Reason::not_written, why_not, 1});
    return signal;
}

void remove_picture(std::filesystem::path const& output) {
    if (std::filesystem::remove(drawn_pages(output))) // else none of ours is there
        std::filesystem::remove(output / name_in(output));
}

} // namespace hearthcell::archive
