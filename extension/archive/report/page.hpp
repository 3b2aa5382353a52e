#pragma once
// A page of the summary before it is drawn: what stands on it, and not how that is done in an office.

#include <nlohmann/json_fwd.hpp>

#include <filesystem>
#include <string>
#include <variant>
#include <vector>

namespace hearthcell::archive {

struct PageCell {
    std::variant<std::monostate, double, std::string> value = {};
    std::string link = {}; // the path of a file; empty: none
};

enum class Look { text, count, percent, number, day };

struct PageColumn {
    std::string heading;
    Look look = Look::text;
    int width = 20; // mm
};

struct PageTable {
    std::vector<PageColumn> columns = {}; // of the same widths in all tables of a page
    std::vector<std::vector<PageCell>> rows = {};
};

enum class ChartShape { bars, columns, points };

/// Drawn from columns of a table of the page.
struct PageChart {
    ChartShape shape = ChartShape::bars;
    std::string title = {}, x_title = {}, y_title = {};
    std::size_t labels = 0;               // the column of the names, or of x
    std::vector<std::size_t> series = {}; // columns of numbers
    bool of_points = false;               // from Page::points, else from the page's first table
    int height = 70;                      // mm
    bool days = false;                    // x is a day
    bool last_is_line = false;            // of points: the last series is a line to hold the others against
    double low = 0, high = 0;             // of both axes; nothing is said where they are the same
};

struct Page {
    std::string name = {}; // of its tab
    std::string title = {};
    std::vector<std::string> words = {}; // lines below the title
    std::vector<PageTable> tables = {};  // one below the other
    std::vector<std::string> notes = {}; // lines below them
    std::vector<PageChart> charts = {};  // side by side at the bottom
    PageTable points = {};               // for charts only: beside the page, not printed
};

/// A folder as deep below `below` as another one is below the root.
std::filesystem::path as_deep_as(std::filesystem::path const& folder, std::filesystem::path const& below);

/// Makes links lead from one folder where they led from the other: a summary is drawn elsewhere than it is to lie, and
/// an office writes links relative to where it saves.
void move_links(std::vector<Page>& pages, std::filesystem::path const& from, std::filesystem::path const& to);

void to_json(nlohmann::json& json, Page const& page);
void from_json(nlohmann::json const& json, Page& page);

} // namespace hearthcell::archive
