#include "extension/menu/plan_dialog.hpp"

#include <com/sun/star/awt/XCheckBox.hpp>
#include <com/sun/star/awt/XItemListener.hpp>
#include <cppuhelper/implbase1.hxx>

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using rtl::OUString;

namespace hearthcell::menu {
namespace {

constexpr sal_Int32 plan_width = 340, plan_edge = 8, plan_inside = plan_width - 2 * plan_edge;

/// Puts parts one below another.
class PartsBelow {
public:
    PartsBelow(Dialog& shown, Surroundings const& around) : dialog_(shown), surroundings_(around) {}

    void words(char const* name, OUString const& text, sal_Int32 height) {
        dialog_.add_text(name, next(height, 3), text);
    }
    void heading(char const* name, Text text) { dialog_.add_text(name, next(9, 1), surroundings_.say(text)); }
    Area next(sal_Int32 height, sal_Int32 gap) {
        Area const area{plan_edge, y_, plan_inside, height};
        y_ += height + gap;
        return area;
    }
    void buttons(std::vector<std::pair<char const*, Text>> const& buttons) {
        constexpr sal_Int32 button_width = 66, between = 4;
        sal_Int32 x = plan_width - plan_edge - (button_width + between) * sal_Int32(buttons.size()) + between;
        for (auto const& [name, text] : buttons) {
            dialog_.add_button(name, {x, y_ + 3, button_width, 14}, surroundings_.say(text));
            x += button_width + between;
        }
        dialog_.resize(plan_width, y_ + 23);
    }

private:
    Dialog& dialog_;
    Surroundings const& surroundings_;
    sal_Int32 y_ = 6;
};

void let_go_on(Dialog const& dialog, bool confirmed) {
    for (char const* const button : {few_button, all_button})
        dialog.set(button, "Enabled", Any(confirmed));
}

/// Lets nobody go on before the values are confirmed.
class Confirmation final : public cppu::WeakImplHelper1<css::awt::XItemListener> {
public:
    explicit Confirmation(Dialog& shown) : dialog_(shown) {}
    void SAL_CALL itemStateChanged(css::awt::ItemEvent const& event) override {
        let_go_on(dialog_, event.Selected == 1);
    }
    void SAL_CALL disposing(css::lang::EventObject const&) override {}

private:
    Dialog& dialog_;
};

void add_pairs(Dialog& dialog, Area const& area, Plan const& plan) {
    Sequence<OUString> lines(sal_Int32(plan.pairs.size()));
    Sequence<sal_Int16> all(lines.getLength());
    for (sal_Int32 place = 0; place < lines.getLength(); ++place) {
        CsvRow const& pair = plan.pairs[std::size_t(place)];
        lines.getArray()[place] =
            wide(std::string(in_column(pair, "new")).append(" – ").append(in_column(pair, "old")));
        all.getArray()[place] = sal_Int16(place);
    }
    auto const list = dialog.add("ListBox", "pairs", area);
    list->setPropertyValue("MultiSelection", Any(true));
    list->setPropertyValue("StringItemList", Any(lines));
    list->setPropertyValue("SelectedItems", Any(all));
}

} // namespace

OUString cells_of(Surroundings const& around, Plan const& plan) {
    return wide(
        lines_of_cells(plan, text(Text::instead_of, around.language), text(Text::not_carried, around.language)));
}

std::unique_ptr<Dialog> plan_dialog(Surroundings const& around, SameTask const& task, Plan const& plan,
                                    bool original_changed) {
    auto dialog = std::make_unique<Dialog>(around, around.title_of(Text::same_in_folder), plan_width, plan_width);
    PartsBelow column(*dialog, around);
    column.words("words", around.say(Text::plan_words, task.source, task.results), 37);
    if (original_changed)
        column.words("changed", around.say(Text::original_changed, task.original), 18);
    column.heading("text of cells", Text::plan_cells);
    dialog->add_lines("cells", column.next(72, 5), cells_of(around, plan));
    if (!plan.constants.empty()) {
        column.heading("text of constants", Text::plan_constants);
        dialog->add_lines("constants", column.next(42, 3), wide(lines_of_constants(plan)));
        dialog->add("CheckBox", "confirmed", column.next(11, 5))
            ->setPropertyValue("Label", Any(around.say(Text::constants_confirmed)));
    }
    if (!plan.pairs.empty()) {
        column.heading("text of pairs", Text::plan_pairs);
        add_pairs(*dialog, column.next(42, 3), plan);
    }
    column.buttons({{few_button, Text::few_first}, {all_button, Text::do_all}, {"cancel", Text::cancel}});
    if (!plan.constants.empty()) {
        let_go_on(*dialog, false);
        Reference<css::awt::XCheckBox>(dialog->control("confirmed"), UNO_QUERY_THROW)
            ->addItemListener(new Confirmation(*dialog));
    }
    return dialog;
}

std::vector<CsvRow> chosen_pairs(Dialog const& dialog, Plan const& plan) {
    std::vector<CsvRow> chosen;
    if (plan.pairs.empty())
        return chosen;
    Sequence<sal_Int16> places;
    dialog.get("pairs", "SelectedItems") >>= places;
    for (sal_Int32 place = 0; place < places.getLength(); ++place)
        if (std::size_t const which = std::size_t(places[place]); which < plan.pairs.size())
            chosen.push_back(plan.pairs[which]);
    return chosen;
}

std::unique_ptr<Dialog> trial_dialog(Surroundings const& around, OUString const& readings) {
    auto dialog = std::make_unique<Dialog>(around, around.title_of(Text::same_in_folder), plan_width, plan_width);
    PartsBelow column(*dialog, around);
    column.words("words", around.say(Text::tried_words), 28);
    if (!readings.isEmpty()) { // none where all is constant
        column.heading("text of readings", Text::values_read);
        dialog->add_lines("readings", column.next(72, 3), readings);
    }
    column.buttons({{all_button, Text::do_all}, {"cancel", Text::cancel}});
    return dialog;
}

} // namespace hearthcell::menu
