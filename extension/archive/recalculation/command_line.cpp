#include "extension/archive/recalculation/command_line.hpp"

#include "extension/archive/files/shown.hpp"
#include "extension/archive/recalculation/collected_columns.hpp"
#include "extension/archive/recalculation/option_table.hpp"

#include <CLI/CLI.hpp>

#include <unistd.h>

#include <iostream>
#include <new>

namespace hearthcell::archive {
namespace {

std::filesystem::path usual_package() {
    auto const program = std::filesystem::read_symlink("/proc/self/exe").parent_path();
    for (char const* place : {"hearthcell.oxt", "../share/hearthcell/hearthcell.oxt"})
        if (std::filesystem::is_regular_file(program / place))
            return (program / place).lexically_normal();
    if (auto const package = program.parent_path(); std::filesystem::is_regular_file(package / "description.xml"))
        return package; // it lies, unpacked, in a LibreOffice that has it as an extension
    throw std::invalid_argument("there is no hearthcell.oxt beside the program; say where it is with --package");
}

void read_list(std::istream& in, char separator, std::vector<std::filesystem::path>& inputs) {
    std::string line;
    while (std::getline(in, line, separator))
        if (!line.empty())
            inputs.emplace_back(line);
}

void read_examples(Raw const& raw, Options& options) {
    if (raw.example.size() != raw.of.size())
        throw std::invalid_argument("each --example needs its --of: the sheet as it was");
    for (std::size_t at = 0; at < raw.example.size(); ++at)
        options.examples.push_back({raw.example[at], raw.of[at]});
    options.values_by_folder = raw.values_by_folder;
    bool const of_an_example =
        options.yes || options.plan || options.a_few || options.partly || !raw.values_by_folder.empty();
    if (options.examples.empty() && of_an_example)
        throw std::invalid_argument("--yes, --plan, --try, --partly and --values-by-folder go with --example");
    if (!options.examples.empty() && (options.inventory || options.merge))
        throw std::invalid_argument("--example goes with neither --inventory nor --merge");
}

Options checked(Raw raw) {
    Options options = std::move(raw.options);
    if (raw.output.empty())
        throw std::invalid_argument("--output DIR is missing");
    options.output = raw.output;
    bool const of_a_run = !raw.collect.empty() || !raw.set.empty() || !raw.compare.empty() || !raw.base.empty() ||
                          options.values || options.dry_run || options.check || options.inventory;
    if (options.merge && of_a_run)
        throw std::invalid_argument(
            "--merge joins what is there: --base, --check, --collect, --compare, --set, --values, "
            "--dry-run and --inventory belong to the runs themselves");
    if (options.inventory && (!raw.collect.empty() || !raw.set.empty() || !raw.compare.empty() || options.values ||
                              options.dry_run || options.check))
        throw std::invalid_argument(
            "--inventory only reads: --check, --collect, --compare, --set, --values and --dry-run go with "
            "a recalculation");
    read_examples(raw, options);
    if (!raw.same_words.empty() && !options.inventory && !options.merge && options.examples.empty())
        throw std::invalid_argument("--same-words goes with --inventory and --example");
    options.same_words = raw.same_words;
    options.base = raw.base;
    options.package = raw.package.empty() ? usual_package() : std::filesystem::path(raw.package);
    options.office = raw.office;
    for (std::string const& list : raw.collect)
        for (std::string const& name : split_names(list))
            if (std::find(options.collect.begin(), options.collect.end(), name) == options.collect.end())
                options.collect.push_back(name);
    columns_of(options.collect); // says what is too wide
    for (std::string const& text : raw.set)
        options.set.push_back(read_assignment(text));
    for (std::size_t at = 0; at < raw.compare.size(); ++at)
        if (auto const first = std::find(raw.compare.begin(), raw.compare.end(), raw.compare[at]);
            first == raw.compare.begin() + static_cast<std::ptrdiff_t>(at)) // not given before
            options.compare.push_back(read_pair(raw.compare[at]));
    if (options.strict && !options.check && !options.merge)
        throw std::invalid_argument("--strict is about the remarks of --check");
    if (options.values && options.dry_run)
        throw std::invalid_argument("--values writes copies and --dry-run writes none");
    char const separator = options.null_separated ? '\0' : '\n';
    for (std::string const& input : raw.inputs)
        if (input == "-")
            read_list(std::cin, separator, options.inputs);
        else
            options.inputs.emplace_back(input);
    if (raw.inputs.empty() && ::isatty(STDIN_FILENO) == 0) // nobody types a list of files
        read_list(std::cin, separator, options.inputs);
    if (options.inputs.empty())
        throw std::invalid_argument("no input");
    return options;
}

} // namespace

Read read_options(int count, char const* const* words) {
    Raw raw;
    CLI::App app(description, "hearthcell-archive");
    describe(app, raw);
    try {
        app.parse(count, words);
        return {checked(std::move(raw)), 0};
    } catch (CLI::Success const& asked) { // --help, --version
        app.exit(asked);
        return {std::nullopt, 0};
    } catch (std::bad_alloc const&) { // nobody's mistake
        throw;
    } catch (std::exception const& mistake) {
        std::cerr << "hearthcell-archive: " << line_of(mistake.what(), longest_detail)
                  << "\nRun it with --help for more.\n";
        return {std::nullopt, 2};
    }
}

} // namespace hearthcell::archive
