#include "archive/compound.hpp"

#include "archive/problem.hpp"

#include <gsf/gsf-infile-msole.h>
#include <gsf/gsf-input-stdio.h>

#include <memory>

namespace hearthcell::archive {
namespace {

struct Release {
    void operator()(void* object) const { g_object_unref(object); }
};
using Input = std::unique_ptr<GsfInput, Release>;
using Folder = std::unique_ptr<GsfInfile, Release>;

[[noreturn]] void damaged(GError* problem) {
    std::string const why = problem == nullptr ? "it is not whole" : problem->message;
    g_clear_error(&problem);
    throw Trouble(Reason::corrupt, "the compound file: " + why);
}

} // namespace

std::string stream_in_compound(std::filesystem::path const& file, std::vector<char const*> const& names) {
    GError* problem = nullptr;
    Input const bytes(gsf_input_stdio_new(file.c_str(), &problem));
    if (!bytes)
        damaged(problem);
    Folder const folder(gsf_infile_msole_new(bytes.get(), &problem));
    if (!folder)
        damaged(problem);
    for (char const* name : names) {
        Input const stream(gsf_infile_child_by_name(folder.get(), name));
        if (!stream)
            continue;
        std::string content(static_cast<std::size_t>(gsf_input_size(stream.get())), '\0');
        auto* const to = reinterpret_cast<guint8*>(content.data());
        if (!content.empty() && gsf_input_read(stream.get(), content.size(), to) == nullptr)
            damaged(nullptr);
        return content;
    }
    throw Trouble(Reason::unsupported, "a compound file without a workbook in it");
}

} // namespace hearthcell::archive
