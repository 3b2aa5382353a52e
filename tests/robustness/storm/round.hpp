#pragma once
// One block of calls in one document: written, computed, and computed again after each thing that happens to it.

#include "judge.hpp"
#include "operands.hpp"

#include "extension/office/office.hpp"

#include <optional>

namespace hearthcell::storm {

class Round {
public:
    Round(office::Office& office, Chance& chance, int calls, Tally& tally);

    /// Gives the faults, one a line.
    std::vector<std::string> run();

private:
    /// What an undo must bring back.
    struct State {
        Ground ground;
        std::vector<Call> calls;
        bool rows_are_gone;
        int undo_steps;
    };

    void write();
    void check(std::string const& when);
    void edit_cell();
    void insert();
    void remove();
    void undo_last();
    void save_and_reload();
    void happen(int what);
    void moved(std::string const& how);
    void remember();

    office::Office& office_;
    Chance& chance_;
    Tally& tally_;
    Ground ground_;
    Operands operands_;
    std::vector<Call> calls_;
    std::optional<office::Document> document_; // another one after each reload
    bool rows_are_gone_ = false;
    std::vector<State> before_;
    std::vector<std::string> faults_;
    std::string happened_;
};

} // namespace hearthcell::storm
