#include "extension/archive/workers/inputs.hpp"

#include "extension/archive/files/format.hpp"

#include <algorithm>
#include <set>
#include <system_error>

namespace hearthcell::archive {
namespace {

namespace fs = std::filesystem;

fs::path whole_path(fs::path const& path) {
    fs::path whole = fs::absolute(path).lexically_normal();
    return whole.has_filename() ? whole : whole.parent_path(); // no slash at the end
}

bool lies_in(fs::path const& path, fs::path const& folder) {
    return std::mismatch(folder.begin(), folder.end(), path.begin(), path.end()).first == folder.end();
}

/// As far as it exists, with all links resolved.
fs::path real(fs::path const& path) {
    std::error_code problem;
    fs::path const found = fs::weakly_canonical(path, problem);
    return problem ? whole_path(path) : found;
}

fs::path common_folder(std::vector<fs::path> const& folders) {
    fs::path common = folders.front();
    for (fs::path const& folder : folders)
        while (!lies_in(folder, common))
            common = common.parent_path();
    return common;
}

class Search {
public:
    Search(fs::path base, fs::path output) : base_(std::move(base)), output_(std::move(output)) {}

    void file(fs::path const& path) {
        std::string const relative = path.lexically_relative(base_).string();
        if (format_of(path))
            found.workbooks.push_back({path, relative});
        else
            found.problems.emplace(relative, Problem{Reason::unsupported, "no .ods, .fods, .xlsx or .xls"});
    }

    void folder(fs::path const& path) {
        fs::path const true_path = real(path);
        if (std::find(open_.begin(), open_.end(), true_path) != open_.end()) {
            note(path, Reason::symlink_loop, "leads back to " + true_path.string());
            return;
        }
        open_.push_back(true_path);
        std::error_code problem;
        fs::directory_iterator entries(path, problem);
        for (; !problem && entries != fs::directory_iterator(); entries.increment(problem))
            entry(entries->path());
        if (problem)
            note(path, Reason::unreadable, problem.message());
        open_.pop_back();
    }

    Inputs found;

private:
    void entry(fs::path const& path) {
        std::error_code problem;
        fs::file_status const kind = fs::status(path, problem);
        if (fs::is_directory(kind)) {
            if (real(path) != output_) // a link to it; inside the inputs themselves it cannot be
                folder(path);
        } else if (!format_of(path) || path.filename().string().starts_with(".~lock.")) {
            return;
        } else if (problem == std::errc::too_many_symbolic_link_levels) {
            note(path, Reason::symlink_loop, "a link to itself");
        } else if (!fs::exists(kind)) {
            note(path, Reason::unreadable, problem ? problem.message() : "a link to nothing");
        } else {
            file(path);
        }
    }

    void note(fs::path const& path, Reason reason, std::string const& detail) {
        found.problems.emplace(path.lexically_relative(base_).string(), Problem{reason, detail});
    }

    fs::path base_, output_;
    std::vector<fs::path> open_; // folders above the one being read
};

void refuse_mixing(fs::path const& input, bool is_folder, fs::path const& output) {
    if (is_folder && lies_in(output, input))
        throw std::invalid_argument("the output folder " + output.string() + " is or lies inside the input " +
                                    input.string());
    if (lies_in(input, output))
        throw std::invalid_argument("the input " + input.string() + " lies inside the output folder " +
                                    output.string());
}

} // namespace

Inputs find_inputs(std::vector<fs::path> const& given, fs::path const& base, fs::path const& output) {
    fs::path const true_output = real(output);
    std::vector<fs::path> paths, folders;
    for (fs::path const& input : given) {
        fs::path const path = whole_path(input);
        std::error_code problem;
        bool const folder = fs::is_directory(path, problem);
        refuse_mixing(real(path), folder, true_output);
        refuse_mixing(path, folder, whole_path(output));
        paths.push_back(path);
        folders.push_back(folder ? path : path.parent_path());
    }
    fs::path const root = base.empty() ? common_folder(folders) : whole_path(base);
    Search search(root, true_output);
    for (fs::path const& path : paths) {
        if (!lies_in(path, root))
            throw std::invalid_argument("the input " + path.string() + " lies outside the base " + root.string());
        std::error_code problem;
        auto const kind = fs::status(path, problem);
        if (fs::is_directory(kind))
            search.folder(path);
        else if (fs::exists(kind))
            search.file(path);
        else
            search.found.problems.emplace(
                path.lexically_relative(root).string(),
                Problem{problem == std::errc::too_many_symbolic_link_levels ? Reason::symlink_loop : Reason::unreadable,
                        problem ? problem.message() : "there is no such file"});
    }
    // The same file may have been given twice, or once more through its folder.
    auto& workbooks = search.found.workbooks;
    std::sort(workbooks.begin(), workbooks.end(),
              [](Input const& a, Input const& b) { return a.relative < b.relative; });
    workbooks.erase(std::unique(workbooks.begin(), workbooks.end(),
                                [](Input const& a, Input const& b) { return a.relative == b.relative; }),
                    workbooks.end());
    search.found.base = root;
    return std::move(search.found);
}

} // namespace hearthcell::archive
