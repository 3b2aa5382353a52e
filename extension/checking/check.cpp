#include "extension/checking/check.hpp"

#include "extension/checking/seen.hpp"

#include <algorithm>
#include <chrono>
#include <utility>

namespace css = com::sun::star;
using css::uno::Reference;
using namespace std::chrono_literals;

namespace hearthcell::checking {
namespace {

constexpr std::size_t formulas_at_once = 2000, most_forms = 5000, first_at_once = 16;
constexpr auto short_while = 20ms, long_while = 60ms; // that a part may take

} // namespace

Check::Check(Reference<css::uno::XComponentContext> const& context,
             Reference<css::sheet::XSpreadsheetDocument> const& document, Language language,
             std::vector<Range> selection)
    : context_(context), document_(document), language_(language), selection_(std::move(selection)) {}

Check::~Check() = default;

bool Check::go_on() {
    switch (step_) {
    case Step::read:
        read();
        break;
    case Step::find:
        find();
        break;
    case Step::copy:
        copy();
        break;
    case Step::ask:
        ask();
        break;
    case Step::ask_alone:
        ask_alone();
        break;
    case Step::judge:
        result_ = judge(contents_, *questions_, columns_, language_, by_hand_, seen_, selection_);
        step_ = Step::none;
        break;
    case Step::none:
        break;
    }
    return step_ != Step::none;
}

double Check::done() const {
    auto const share = [&](std::vector<std::size_t> const& all) {
        return all.empty() ? 1 : double(asked_) / double(all.size());
    };
    switch (step_) {
    case Step::read:
        return 0;
    case Step::find:
        return 0.1;
    case Step::copy:
        return 0.2 + 0.3 * (copy_ ? copy_->done() : 0);
    case Step::ask:
        return 0.5 + 0.4 * share(plain_);
    case Step::ask_alone:
        return 0.9 + 0.1 * share(alone_);
    default:
        return 1;
    }
}

void Check::read() {
    contents_ = read_contents(document_);
    seen_ = seen_in(document_);
    document_.clear();
    questions_ = std::make_unique<Questions>(contents_, language_);
    next_cell_ = contents_.cells.begin();
    step_ = contents_.too_large ? Step::judge : Step::find;
}

void Check::find() {
    std::size_t left = formulas_at_once;
    for (; next_cell_ != contents_.cells.end() && left > 0; ++next_cell_)
        if (auto const& [place, content] = *next_cell_; !content.formula.empty()) {
            bool const is_new = columns_.add(place, content.formula);
            questions_->add(place, content.formula);
            if (is_new && content.formula.size() <= longest_formula && calls_in(content.formula).empty())
                look_for_hand_written(place, content.formula);
            --left;
        }
    if (next_cell_ != contents_.cells.end())
        return;
    bool const nothing = questions_->all.empty() && contents_.rules.empty();
    step_ = nothing ? Step::judge : Step::copy;
}

void Check::look_for_hand_written(Place const& cell, std::string const& formula) {
    if (++forms_looked_at_ > most_forms)
        return;
    if (auto found = recognised_by_hand(contents_, questions_->reads(), cell, formula))
        by_hand_.push_back(std::move(*found));
}

void Check::copy() {
    if (!copy_)
        copy_ = std::make_unique<PrivateCopy>(context_, contents_);
    if (copy_->go_on())
        return;
    for (Rule const& rule : contents_.rules)
        if (auto const formula =
                rule.as_shown ? copy_->in_english(rule.seen_from.sheet, rule.formula) : std::optional(rule.formula))
            questions_->add(rule, *formula);
    for (std::size_t at = 0; at < questions_->all.size(); ++at) {
        Trial const& trial = questions_->all[at].trial;
        (trial.as_array || trial.in_cell ? alone_ : plain_).push_back(at);
    }
    std::ranges::stable_sort(plain_, {}, [&](std::size_t at) { return questions_->all[at].trial.sheet; });
    at_once_ = first_at_once;
    step_ = Step::ask;
}

void Check::ask() {
    if (asked_ == plain_.size()) {
        asked_ = 0;
        step_ = Step::ask_alone;
        return;
    }
    int const sheet = questions_->all[plain_[asked_]].trial.sheet;
    std::size_t end = asked_;
    std::vector<std::string> formulas;
    for (; end < plain_.size() && end < asked_ + at_once_; ++end) {
        Trial const& trial = questions_->all[plain_[end]].trial;
        if (trial.sheet != sheet)
            break;
        formulas.push_back(trial.formula);
    }
    auto const start = std::chrono::steady_clock::now();
    auto answers = copy_->answers(sheet, formulas);
    auto const taken = std::chrono::steady_clock::now() - start;
    for (std::size_t at = asked_; at < end; ++at)
        questions_->all[plain_[at]].answer = std::move(answers[at - asked_]);
    asked_ = end;
    if (taken < short_while)
        at_once_ = std::min(most_at_once, 2 * at_once_);
    else if (taken > long_while)
        at_once_ = std::max<std::size_t>(1, at_once_ / 2);
}

void Check::ask_alone() {
    if (asked_ == alone_.size()) {
        copy_.reset();
        step_ = Step::judge;
        return;
    }
    Question& question = questions_->all[alone_[asked_++]];
    question.answer = copy_->answer(question.trial);
}

} // namespace hearthcell::checking
