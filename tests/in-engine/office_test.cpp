// The driver itself: an office of ours never outlives its object, however the two part.

#include "calc.hpp"
#include "extension/office/text.hpp"
#include "tests/support/changed_variable.hpp"

#include <algorithm>
#include <csignal>
#include <stdexcept>

namespace hearthcell::tests {
namespace {

struct Traces {
    pid_t process;
    std::filesystem::path folder;
    std::vector<std::filesystem::path> sockets;
};

Traces traces_of(Office& office) {
    auto const there = [](std::filesystem::path const& file) { return std::filesystem::is_socket(file); };
    EXPECT_EQ(std::ranges::count_if(office.sockets(), there), 2) << "they have other names than this program thinks";
    return {office.process_id(), office.folder(), office.sockets()};
}

void expect_nothing_left(Traces const& traces) {
    EXPECT_EQ(::kill(traces.process, 0), -1) << "the process still runs";
    EXPECT_FALSE(std::filesystem::exists(traces.folder)) << traces.folder;
    ASSERT_FALSE(traces.sockets.empty());
    for (std::filesystem::path const& socket : traces.sockets)
        EXPECT_FALSE(std::filesystem::exists(socket)) << socket;
}

} // namespace

TEST(AnOffice, LeavesNothingBehindWhenAnExceptionPasses) {
    Traces traces;
    try {
        Office office;
        traces = traces_of(office);
        throw std::runtime_error("something went wrong");
    } catch (std::runtime_error const&) {
    }
    expect_nothing_left(traces);
}

TEST(AnOffice, ThatIsKilledSaysSoAndLeavesNothingBehind) {
    Traces traces;
    {
        Office office;
        traces = traces_of(office);
        Document document = Document::blank(office);
        EXPECT_TRUE(office.alive());
        office.kill();
        EXPECT_FALSE(office.alive());
        EXPECT_THROW(document.recalculate(), office::Gone);
    }
    expect_nothing_left(traces);
}

TEST(AnOffice, DoesNotTryItsGraphicsAtEveryStart) {
    auto const has_tried = [](Office const& office) { // it then writes down what it saw
        return std::filesystem::exists(office.folder() / "profile/user/GraphicsRenderTests.log");
    };
    Office const office;
    Office const of_older_profile({.preferences = {{"Setup/Product", "ooSetupLastVersion", "0.0"}}});
    EXPECT_TRUE(has_tried(of_older_profile)) << "this test would not notice it";
    EXPECT_FALSE(has_tried(office));
}

TEST(AnOffice, SavesUnderTheNameThatIsMeantWithoutALocale) {
    ChangedVariable const none("LC_ALL", "C");
    Office office;
    std::filesystem::path const file = office.folder() / "Größe, taille, 试验.ods";
    Document::blank(office).save(file);
    EXPECT_TRUE(std::filesystem::exists(file));
    EXPECT_NO_THROW(Document::open(office, file));
}

TEST(AnOffice, SaysInWordsWhatItCannotOpen) {
    std::filesystem::path const missing = scratch_folder() / "no such file.ods";
    EXPECT_THROW(Document::open(office_with_package(), missing), std::runtime_error);
    EXPECT_THROW(Office({.package = missing}), std::runtime_error);
}

} // namespace hearthcell::tests
