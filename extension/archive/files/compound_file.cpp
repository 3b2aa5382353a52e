#include "extension/archive/files/compound_file.hpp"

#include "extension/archive/files/problem.hpp"

#include <gsf/gsf-infile-msole.h>
#include <gsf/gsf-infile.h>
#include <gsf/gsf-input-stdio.h>

namespace hearthcell::archive {
namespace {

struct ReleaseInput {
    void operator()(GsfInput* input) const { g_object_unref(input); }
};
using Input = std::unique_ptr<GsfInput, ReleaseInput>;

std::string said(GError* error) {
    std::string text = error != nullptr ? error->message : "no compound file";
    g_clear_error(&error);
    return text;
}

void say_nothing(char const*, GLogLevelFlags, char const*, void*) {}

} // namespace

void CompoundFile::Release::operator()(_GsfInfile* file) const {
    g_object_unref(file);
}

CompoundFile::CompoundFile(std::filesystem::path const& file) {
    // It complains of damaged files on standard error, too. What it gives back says enough.
    g_log_set_default_handler(say_nothing, nullptr);
    GError* error = nullptr;
    Input const input(gsf_input_stdio_new(file.c_str(), &error));
    if (!input)
        throw Trouble(Reason::unreadable, said(error));
    file_.reset(gsf_infile_msole_new(input.get(), &error));
    if (!file_)
        throw Trouble(Reason::corrupt, "the compound file: " + said(error));
}

bool CompoundFile::has(char const* stream) const {
    // By its name: a damaged one cannot be opened, but is there.
    for (int child = 0; child < gsf_infile_num_children(file_.get()); ++child)
        if (char const* const name = gsf_infile_name_by_index(file_.get(), child);
            name != nullptr && std::string_view(name) == stream)
            return true;
    return false;
}

std::string CompoundFile::content(char const* stream, Room& room) const {
    Input const input(gsf_infile_child_by_name(file_.get(), stream));
    if (!input)
        throw Trouble(Reason::corrupt, std::string("the stream ") + stream + " cannot be read");
    auto const size = static_cast<std::size_t>(gsf_input_size(input.get()));
    room.take(size);
    std::string bytes(size, '\0');
    if (size > 0 && gsf_input_read(input.get(), size, reinterpret_cast<guint8*>(bytes.data())) == nullptr)
        throw Trouble(Reason::corrupt, std::string("the stream ") + stream + " is cut off");
    return bytes;
}

} // namespace hearthcell::archive
