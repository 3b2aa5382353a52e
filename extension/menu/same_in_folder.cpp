#include "extension/menu/same_in_folder.hpp"

#include "extension/menu/archive_job.hpp"
#include "extension/menu/beside_dialog.hpp"
#include "extension/menu/dialogs.hpp"
#include "extension/menu/documents.hpp"
#include "extension/menu/original.hpp"
#include "extension/menu/package_files.hpp"
#include "extension/menu/plan_dialog.hpp"
#include "extension/menu/private_folder.hpp"
#include "extension/menu/safely.hpp"
#include "extension/menu/same_task_dialog.hpp"

#include <cppuhelper/weak.hxx>
#include <rtl/ref.hxx>

#include <utility>

namespace css = com::sun::star;
using css::uno::Reference;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

using Model = Reference<css::sheet::XSpreadsheetDocument>;

/// One time that the command is given, from the comparison to the end: kept by whatever it waits for. (The pointer of
/// the C++ library that shares what it points to would ask for a newer C library than every system has.)
class SameInFolder final : public cppu::OWeakObject {
public:
    SameInFolder(SameTask to_do, bool changed) : task_(std::move(to_do)), original_changed_(changed) {}

    /// What runs is the document as it is now, whatever is typed into it later.
    Answer begin(Surroundings const& surroundings, Model const& document) {
        store_copy(document, url_of(wide(example_)));
        return run(surroundings, wide(private_.path() + "/plan"), Text::comparing, {"--plan"},
                   [self = rtl::Reference<SameInFolder>(this)](Surroundings const& later, ArchiveRun const& done,
                                                               RunEnd const& end) {
                       return self->compared(later, done, end);
                   });
    }

private:
    Answer run(Surroundings const& surroundings, OUString const& results, Text title, std::vector<std::string> more,
               AfterRun then) {
        ArchiveRun run{{}, results, title, Text::same_failed, Text::same_stopped};
        run.arguments = {bytes(task_.source), "--example", example_, "--of", bytes(task_.original)};
        run.arguments.insert(run.arguments.end(), more.begin(), more.end());
        return start_archive_job(surroundings, run, std::move(then));
    }

    Answer compared(Surroundings const& surroundings, ArchiveRun const& done, RunEnd const& end) {
        if (end.is_stopped())
            return {true, surroundings.say(Text::comparison_stopped)};
        if (end.has_failed())
            return not_done(surroundings, done, end.said);
        plan_ = read_plan(bytes(done.results));
        if (!plan_.carries_anything())
            return {false, surroundings.say(Text::nothing_to_carry, cells_of(surroundings, plan_))};
        chosen_ = plan_.pairs;
        if (!surroundings.unattended)
            return ask(surroundings.without_frame());
        if (!plan_.constants.empty() && !surroundings.confirmed)
            return {false, surroundings.say(Text::not_confirmed)};
        return do_all(surroundings);
    }

    Answer ask(Surroundings const& surroundings) {
        ask_beside(
            surroundings, plan_dialog(surroundings, task_, plan_, original_changed_),
            {few_button, all_button, "cancel"},
            [self = rtl::Reference<SameInFolder>(this), surroundings](std::string const& button, Dialog const& dialog) {
                self->chosen_ = chosen_pairs(dialog, self->plan_);
                if (button == few_button)
                    return self->do_few(surroundings);
                return button == all_button ? self->do_all(surroundings) : Answer{};
            });
        return {};
    }

    [[nodiscard]] std::vector<std::string> confirmed() const {
        std::vector<std::string> arguments{"--yes"};
        for (CsvRow const& pair : chosen_)
            arguments.push_back("--compare=" + argument_of_pair(pair)); // in one: it may begin with anything
        return arguments;
    }

    Answer do_few(Surroundings const& surroundings) {
        auto arguments = confirmed();
        arguments.emplace_back("--try");
        return run(
            surroundings, surroundings.say(Text::name_of_few, task_.results), Text::doing_few, arguments,
            [self = rtl::Reference<SameInFolder>(this)](Surroundings const& later, ArchiveRun const& done,
                                                        RunEnd const& end) { return self->did_few(later, done, end); });
    }

    Answer did_few(Surroundings const& surroundings, ArchiveRun const& done, RunEnd const& end) {
        Answer const answer = open_summary(surroundings, done, end);
        if (end.is_stopped() || end.has_failed())
            return answer;
        Surroundings const later = surroundings.without_frame();
        ask_beside(later, trial_dialog(later, wide(lines_of_readings(bytes(done.results)))), {all_button, "cancel"},
                   [self = rtl::Reference<SameInFolder>(this), later](std::string const& button, Dialog const&) {
                       return button == all_button ? self->do_all(later) : Answer{};
                   });
        return answer;
    }

    Answer do_all(Surroundings const& surroundings) {
        return run(
            surroundings, task_.results, Text::doing_all, confirmed(),
            // It and its private copy are needed until then.
            [self = rtl::Reference<SameInFolder>(this)](Surroundings const& later, ArchiveRun const& done,
                                                        RunEnd const& end) { return open_summary(later, done, end); });
    }

    SameTask const task_;
    bool const original_changed_;
    PrivateFolder const private_;
    std::string const example_ = private_.path() + "/example.ods";
    Plan plan_;
    std::vector<CsvRow> chosen_;
};

/// Asks until nothing is wrong with the answer.
std::optional<SameTask> agreed_task(Surroundings const& surroundings, Original const& original) {
    SameTask task{original.path, {}, {}};
    while (auto const answered = ask_for_same_task(surroundings, task)) {
        OUString const trouble = trouble_with(surroundings, *answered);
        if (trouble.isEmpty())
            return answered;
        show(surroundings, {false, trouble});
        task = *answered;
    }
    return std::nullopt;
}

} // namespace

Answer same_in_folder(Surroundings const& surroundings, OUString const& results) {
    if (OUString const missing = archive_program_missing(surroundings); !missing.isEmpty())
        return {false, missing};
    Model const document = document_of(surroundings.frame);
    if (!document.is())
        return {false, surroundings.say(Text::no_example)};
    Original const original = original_of(document);
    std::optional<SameTask> task;
    if (!surroundings.original.isEmpty() && !surroundings.source.isEmpty() && !results.isEmpty())
        task = SameTask{path_of(surroundings.original), path_of(surroundings.source), path_of(results)};
    else if (!surroundings.unattended)
        task = agreed_task(surroundings, original);
    if (!task)
        return {false, {}};
    if (OUString const trouble = trouble_with(surroundings, *task); !trouble.isEmpty())
        return {false, trouble};
    return rtl::Reference<SameInFolder>(new SameInFolder(*task, !original.is_still(task->original)))
        ->begin(surroundings, document);
}

} // namespace hearthcell::menu
