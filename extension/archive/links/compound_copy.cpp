#include "extension/archive/links/compound_copy.hpp"

#include "extension/archive/files/problem.hpp"

#include <gsf/gsf-infile-msole.h>
#include <gsf/gsf-input-stdio.h>
#include <gsf/gsf-outfile-msole.h>
#include <gsf/gsf-output-stdio.h>

#include <memory>

namespace hearthcell::archive {
namespace {

constexpr int deepest = 20; // folders in it; an .xls with macros has three

struct Release {
    void operator()(void* object) const { g_object_unref(object); }
};
template <class Object> using Owned = std::unique_ptr<Object, Release>;

[[noreturn]] void fail() {
    throw Trouble(Reason::not_written, "the private copy could not be written");
}

void close(GsfOutput* output) {
    if (gsf_output_close(output) == 0)
        fail();
}

struct Replaced {
    std::string const &name, &content;
};

void copy_folder(GsfInfile* from, GsfOutfile* to, Replaced const* replaced, int depth) {
    for (int child = 0; child < gsf_infile_num_children(from); ++child) {
        char const* const name = gsf_infile_name_by_index(from, child);
        Owned<GsfInput> const input(gsf_infile_child_by_index(from, child));
        if (name == nullptr || !input || depth > deepest)
            continue; // nobody can read it
        bool const is_folder = GSF_IS_INFILE(input.get()) != 0 && gsf_infile_num_children(GSF_INFILE(input.get())) >= 0;
        Owned<GsfOutput> const output(gsf_outfile_new_child(to, name, is_folder ? 1 : 0));
        if (!output)
            fail();
        if (is_folder) {
            copy_folder(GSF_INFILE(input.get()), GSF_OUTFILE(output.get()), nullptr, depth + 1);
        } else if (replaced != nullptr && replaced->name == name) {
            auto const* const bytes = reinterpret_cast<guint8 const*>(replaced->content.data());
            if (gsf_output_write(output.get(), replaced->content.size(), bytes) == 0)
                fail();
        } else if (gsf_input_size(input.get()) > 0 && gsf_input_copy(input.get(), output.get()) == 0) {
            fail();
        }
        close(output.get());
    }
}

} // namespace

void copy_compound_file(std::filesystem::path const& file, std::string const& stream, std::string const& content) {
    std::filesystem::path const aside = file.parent_path() / "rewritten.xls";
    {
        Owned<GsfInput> const input(gsf_input_stdio_new(file.c_str(), nullptr));
        Owned<GsfInfile> const from(input ? gsf_infile_msole_new(input.get(), nullptr) : nullptr);
        Owned<GsfOutput> const output(gsf_output_stdio_new(aside.c_str(), nullptr));
        Owned<GsfOutfile> const to(output ? gsf_outfile_msole_new(output.get()) : nullptr);
        if (!from || !to)
            fail();
        Replaced const replaced{stream, content};
        copy_folder(from.get(), to.get(), &replaced, 0);
        close(GSF_OUTPUT(to.get())); // and with it the output
    }
    std::filesystem::rename(aside, file);
}

} // namespace hearthcell::archive
