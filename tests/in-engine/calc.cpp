#include "calc.hpp"

#include <cstdlib>
#include <iostream>
#include <limits>
#include <memory>
#include <stdexcept>

namespace hearthcell::office {

void PrintTo(CellError const& error, std::ostream* out) {
    *out << "error " << error.code;
}

} // namespace hearthcell::office

namespace hearthcell::tests {
namespace {

std::unique_ptr<Office> with_package;
std::unique_ptr<Office> without_package;

class Offices : public testing::Environment {
    void TearDown() override {
        with_package.reset();
        without_package.reset();
    }
};

auto* const offices = testing::AddGlobalTestEnvironment(new Offices); // NOLINT: GoogleTest deletes it

Office& running(std::unique_ptr<Office>& office, office::Settings const& settings) {
    if (!office || !office->alive()) {
        if (office) // a test has failed for it, and its failure does not say why
            std::cerr << "The office of the tests before this one is gone. " << office->last_words() << '\n';
        office.reset();
        office = std::make_unique<Office>(settings);
    }
    return *office;
}

std::vector<CellValue> evaluate_on(Sheet& sheet, std::vector<std::string> const& formulas) {
    if (formulas.empty())
        return {};
    office::TextRows rows;
    for (std::string const& formula : formulas)
        rows.push_back({formula});
    sheet.formulas("Z1", rows);
    std::vector<CellValue> results;
    for (auto const& row : sheet.values("Z1:Z" + std::to_string(formulas.size())))
        results.push_back(row.at(0));
    return results;
}

} // namespace

std::filesystem::path package() {
    char const* const chosen = std::getenv("HEARTHCELL_PACKAGE");
    return chosen != nullptr ? chosen : PACKAGE;
}

std::filesystem::path package_of(Office const& office) {
    return office.folder() / "bundled" / package().stem();
}

Office& office_with_package() {
    bool const fresh = !with_package;
    Office& office = running(with_package, {.package = package()});
    // Else a test that compares two ways to #NAME? would be content.
    if (fresh && office.functions("STOVE.").empty())
        throw std::runtime_error("LibreOffice did not load the package " + package().string());
    return office;
}

Office& office_without_package() {
    return running(without_package, {});
}

std::filesystem::path scratch_folder() {
    return office_with_package().folder();
}

std::vector<CellValue> evaluate(Office& office, std::vector<std::string> const& formulas) {
    Document const document = Document::blank(office);
    Sheet sheet = document.sheet(0);
    return evaluate_on(sheet, formulas);
}

double number(CellValue const& value) {
    if (double const* const found = std::get_if<double>(&value))
        return *found;
    ADD_FAILURE() << "not a number but " << testing::PrintToString(value);
    return std::numeric_limits<double>::quiet_NaN();
}

std::vector<CellValue> Calc::evaluate(std::vector<std::string> const& formulas) {
    return evaluate_on(sheet, formulas);
}

CellValue Calc::evaluate(std::string const& formula) {
    return evaluate(std::vector{formula}).at(0);
}

} // namespace hearthcell::tests
