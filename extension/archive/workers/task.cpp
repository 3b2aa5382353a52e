#include "extension/archive/workers/task.hpp"

#include "extension/archive/files/value.hpp"
#include "extension/archive/files/whole_file.hpp"
#include "extension/archive/inventory/same_words.hpp"
#include "extension/archive/records/old_and_new_csv.hpp"
#include "extension/archive/workers/package_edition.hpp"

namespace hearthcell::archive {
namespace {

/// Changes when records of an earlier program must not be taken as they are.
constexpr auto records_edition = "stored errors,";

/// What tells a package from all others: the whole of it, or the list of the hashes of all its files.
std::string hash_of_package(std::filesystem::path const& package) {
    return hash_of_file(std::filesystem::is_directory(package) ? package / "bom.cdx.json" : package);
}

/// Everything that makes another result of the same workbook.
std::string words_of(Options const& options) {
    std::string text = records_edition;
    auto const add = [&](std::string const& word) { text += std::to_string(word.size()) + ":" + word; };
    for (std::string const& name : options.collect)
        add("collect " + name);
    for (Assignment const& assignment : options.set) {
        add("set " + assignment.name);
        if (auto const* const number = std::get_if<double>(&assignment.value))
            add(written(*number));
        else if (auto const* const formula = std::get_if<TypedFormula>(&assignment.value))
            add(formula->text);
        else
            add("'" + std::get<std::string>(assignment.value));
    }
    for (ComparedPair const& pair : options.compare)
        add("compare " + words(pair));
    add(options.inventory ? "inventory" : options.values ? "values" : options.dry_run ? "dry" : "copies");
    if (options.check)
        add("check");
    for (Options::ExamplePair const& pair : options.examples)
        add("example " + hash_of_file(pair.now) + " of " + hash_of_file(pair.old));
    if (options.partly)
        add("partly");
    if (!options.examples.empty())
        for (std::filesystem::path const& file : {options.same_words, options.values_by_folder})
            add(file.empty() ? "" : hash_of_file(file));
    add(std::to_string(options.size_limit));
    return text;
}

} // namespace

RunFacts Task::facts() const {
    RunFacts facts{edition,
                   key_of_options,
                   options.collect,
                   {},
                   inputs.base,
                   options.check,
                   options.inventory,
                   !options.examples.empty(),
                   examples ? examples->confirmed : std::string()};
    for (ComparedPair const& pair : options.compare)
        facts.compare.push_back(words(pair));
    return facts;
}

/// With an example a result depends on the labels of its sheets, which the other workbooks tell.
std::string Task::key(std::size_t workbook, std::string const& hash_of_content) const {
    if (!examples || workbook >= examples->labels.size())
        return key(hash_of_content);
    std::string all;
    for (auto const* const sheets : {&examples->labels[workbook], &examples->labels_of_old})
        for (auto const& sheet : *sheets)
            for (Label const& label : sheet)
                all += std::to_string(label.row) + ' ' + std::to_string(label.column) + ' ' + label.key + '\n';
    return key(hash_of_content + hash_of(all));
}

Task make_task(Options options) {
    Task task;
    task.output = std::filesystem::absolute(options.output).lexically_normal();
    task.package = std::filesystem::absolute(options.package).lexically_normal();
    if (!std::filesystem::exists(task.package))
        throw std::invalid_argument("there is no package " + task.package.string());
    task.edition = edition_of(task.package);
    task.key_of_options = hash_of(hash_of_package(task.package) + words_of(options));
    if (!options.merge) // the inputs are runs then
        task.inputs = find_inputs(options.inputs, options.base, task.output);
    if (!options.same_words.empty())
        task.same_words = same_words_in(options.same_words);
    task.options = std::move(options);
    return task;
}

} // namespace hearthcell::archive
