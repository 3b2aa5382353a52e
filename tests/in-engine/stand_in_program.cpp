#include "stand_in_program.hpp"

#include "tests/support/content.hpp"

#include <fstream>

namespace hearthcell::tests {

namespace {

std::string script_in(std::filesystem::path const& folder) {
    return "cd '" + folder.string() + R"('
printf '%s\n' "$*" >>asked
while [ $# -gt 0 ]; do
    case $1 in
    --output) out=$2 ;;
    --example) cp "$2" given.ods ;;
    --plan) plan=yes ;;
    esac
    shift
done
[ ! -e slow ] || exec sleep 1000
echo '{"all":3,"done":1,"problems":0}' >&2
mkdir -p "$out"
if [ "$plan" ]; then
    cp carried.csv constants.csv pairs.csv "$out"
else
    cp read.csv "$out"
    [ ! -e summary.ods ] || cp summary.ods "$out"
fi
[ ! -e refusal ] || { cat refusal >&2; exit 2; }
)";
}

} // namespace

StandInProgram::StandInProgram(std::filesystem::path const& folder, std::filesystem::path const& summary)
    : folder_(folder), program_(folder, script_in(folder)) {
    write("carried.csv", "example,sheet,cell,kind,before,after,note\r\n"
                         "1,Sheet1,D4,formula,,\\=STOVE.BOILINGPOINT(1240),\r\n"
                         "1,Sheet1,A1,word,\"Record, of a test\",Our record,a word that replaces another\r\n");
    write("constants.csv", "example,sheet,cell,function,argument,value,sheets\r\n"
                           "1,Sheet1,D4,BOILINGPOINT,altitude,1240,3\r\n");
    write("pairs.csv", "new,old\r\nSheet1.D4,Sheet1.B4\r\n");
    write("read.csv", "function,argument,workbooks,lowest,median,highest,odd\r\n"
                      "BOILINGPOINT,altitude,3,300,1240,1900,\r\n");
    std::filesystem::copy_file(summary, folder / "summary.ods", std::filesystem::copy_options::overwrite_existing);
}

void StandInProgram::write(std::string const& file, std::string const& text) const {
    std::ofstream(folder_ / file) << text;
}

std::string StandInProgram::asked() const {
    return content(folder_ / "asked");
}

} // namespace hearthcell::tests
