// Prints what a shell completes of hearthcell-archive's command line, for the build: print_completions bash|zsh|fish.
// The options come from the table of --help.

#include "extension/archive/recalculation/option_table.hpp"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <iostream>
#include <string_view>

namespace hearthcell::archive {
namespace {

enum class Takes { nothing, folder, file, value };

Takes what_takes(CLI::Option const& option) {
    if (option.get_items_expected_max() == 0)
        return Takes::nothing;
    std::string const type = option.get_type_name();
    return type.starts_with("DIR") ? Takes::folder : type.starts_with("FILE") ? Takes::file : Takes::value;
}

/// The help up to the end of its first part, without what quotes in a shell.
std::string brief(CLI::Option const& option) {
    std::string const help = option.get_description();
    std::string words;
    for (char const letter : help.substr(0, std::min(help.find("; "), help.find(". "))))
        if (std::string_view("'[]:\\").find(letter) == std::string_view::npos)
            words += letter;
    return words;
}

template <class Each> void for_each_option(CLI::App const& app, Each const& each) {
    for (CLI::Option const* const option : app.get_options())
        if (!option->get_lnames().empty())
            each(*option, option->get_lnames().front());
}

void print_bash(CLI::App const& app) {
    std::string all, folders = "--", files = "--", values = "--";
    for_each_option(app, [&](CLI::Option const& option, std::string const& name) {
        all += " --" + name;
        Takes const takes = what_takes(option);
        std::string& list = takes == Takes::folder ? folders : takes == Takes::file ? files : values;
        if (takes != Takes::nothing)
            list += "|--" + name;
    });
    std::cout << "# Completes hearthcell-archive in bash.\n"
                 "_hearthcell_archive() {\n"
                 "    local word=${COMP_WORDS[COMP_CWORD]} how=(-f)\n"
                 "    case ${COMP_WORDS[COMP_CWORD - 1]} in\n    "
              << folders << ") how=(-d) ;;\n    " << files << ") how=(-f) ;;\n    " << values
              << ") return ;;\n"
                 "    *) [[ $word != -* ]] || how=(-W '"
              << all
              << "') ;;\n"
                 "    esac\n"
                 "    mapfile -t COMPREPLY < <(compgen \"${how[@]}\" -- \"$word\")\n"
                 "}\n"
                 "complete -o filenames -F _hearthcell_archive hearthcell-archive\n";
}

void print_zsh(CLI::App const& app) {
    std::cout << "#compdef hearthcell-archive\n_arguments \\\n";
    for_each_option(app, [&](CLI::Option const& option, std::string const& name) {
        constexpr std::string_view completed[] = {"", ":folder:_files -/", ":file:_files", ":value: "};
        std::cout << "  '*--" << name << "[" << brief(option) << "]" << completed[std::size_t(what_takes(option))]
                  << "' \\\n";
    });
    std::cout << "  '*:workbook or folder:_files'\n";
}

void print_fish(CLI::App const& app) {
    for_each_option(app, [&](CLI::Option const& option, std::string const& name) {
        constexpr std::string_view completed[] = {"", " -x -a '(__fish_complete_directories)'", " -r", " -x"};
        std::cout << "complete -c hearthcell-archive -l " << name << " -d '" << brief(option) << "'"
                  << completed[std::size_t(what_takes(option))] << "\n";
    });
}

struct Shell {
    std::string_view name;
    void (*print)(CLI::App const&);
};
constexpr Shell shells[] = {{"bash", print_bash}, {"zsh", print_zsh}, {"fish", print_fish}};

} // namespace
} // namespace hearthcell::archive

int main(int count, char** words) {
    using namespace hearthcell::archive;
    Raw raw;
    CLI::App app(description, "hearthcell-archive");
    describe(app, raw);
    std::string_view const shell = count == 2 ? words[1] : "";
    for (auto const& [name, print] : shells)
        if (shell == name) {
            print(app);
            return 0;
        }
    return 2;
}
