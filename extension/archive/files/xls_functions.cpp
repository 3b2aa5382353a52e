// The numbers of functions in .xls files ([MS-XLS] 2.5.198.17), of those that sheets of tests use.

#include "extension/archive/files/xls_formula.hpp"

#include <algorithm>
#include <array>

namespace hearthcell::archive::xls {
namespace {

struct Numbered {
    unsigned number;
    KnownFunction function;
};
constexpr int any = -1;
constexpr std::array functions{Numbered{0, {"COUNT", any}},
                               Numbered{1, {"IF", any}},
                               Numbered{2, {"ISNA", 1}},
                               Numbered{3, {"ISERROR", 1}},
                               Numbered{4, {"SUM", any}},
                               Numbered{5, {"AVERAGE", any}},
                               Numbered{6, {"MIN", any}},
                               Numbered{7, {"MAX", any}},
                               Numbered{8, {"ROW", any}},
                               Numbered{9, {"COLUMN", any}},
                               Numbered{10, {"NA", 0}},
                               Numbered{12, {"STDEV", any}},
                               Numbered{15, {"SIN", 1}},
                               Numbered{16, {"COS", 1}},
                               Numbered{17, {"TAN", 1}},
                               Numbered{18, {"ATAN", 1}},
                               Numbered{19, {"PI", 0}},
                               Numbered{20, {"SQRT", 1}},
                               Numbered{21, {"EXP", 1}},
                               Numbered{22, {"LN", 1}},
                               Numbered{23, {"LOG10", 1}},
                               Numbered{24, {"ABS", 1}},
                               Numbered{25, {"INT", 1}},
                               Numbered{26, {"SIGN", 1}},
                               Numbered{27, {"ROUND", 2}},
                               Numbered{28, {"LOOKUP", any}},
                               Numbered{29, {"INDEX", any}},
                               Numbered{31, {"MID", 3}},
                               Numbered{32, {"LEN", 1}},
                               Numbered{33, {"VALUE", 1}},
                               Numbered{34, {"TRUE", 0}},
                               Numbered{35, {"FALSE", 0}},
                               Numbered{36, {"AND", any}},
                               Numbered{37, {"OR", any}},
                               Numbered{38, {"NOT", 1}},
                               Numbered{39, {"MOD", 2}},
                               Numbered{46, {"VAR", any}},
                               Numbered{48, {"TEXT", 2}},
                               Numbered{49, {"LINEST", any}},
                               Numbered{50, {"TREND", any}},
                               Numbered{63, {"RAND", 0}},
                               Numbered{64, {"MATCH", any}},
                               Numbered{65, {"DATE", 3}},
                               Numbered{66, {"TIME", 3}},
                               Numbered{67, {"DAY", 1}},
                               Numbered{68, {"MONTH", 1}},
                               Numbered{69, {"YEAR", 1}},
                               Numbered{70, {"WEEKDAY", any}},
                               Numbered{71, {"HOUR", 1}},
                               Numbered{72, {"MINUTE", 1}},
                               Numbered{73, {"SECOND", 1}},
                               Numbered{74, {"NOW", 0}},
                               Numbered{76, {"ROWS", 1}},
                               Numbered{77, {"COLUMNS", 1}},
                               Numbered{78, {"OFFSET", any}},
                               Numbered{82, {"SEARCH", any}},
                               Numbered{97, {"ATAN2", 2}},
                               Numbered{100, {"CHOOSE", any}},
                               Numbered{101, {"HLOOKUP", any}},
                               Numbered{102, {"VLOOKUP", any}},
                               Numbered{109, {"LOG", any}},
                               Numbered{111, {"CHAR", 1}},
                               Numbered{112, {"LOWER", 1}},
                               Numbered{113, {"UPPER", 1}},
                               Numbered{115, {"LEFT", any}},
                               Numbered{116, {"RIGHT", any}},
                               Numbered{118, {"TRIM", 1}},
                               Numbered{120, {"SUBSTITUTE", any}},
                               Numbered{124, {"FIND", any}},
                               Numbered{126, {"ISERR", 1}},
                               Numbered{127, {"ISTEXT", 1}},
                               Numbered{128, {"ISNUMBER", 1}},
                               Numbered{129, {"ISBLANK", 1}},
                               Numbered{130, {"T", 1}},
                               Numbered{131, {"N", 1}},
                               Numbered{140, {"DATEVALUE", 1}},
                               Numbered{141, {"TIMEVALUE", 1}},
                               Numbered{148, {"INDIRECT", any}},
                               Numbered{169, {"COUNTA", any}},
                               Numbered{183, {"PRODUCT", any}},
                               Numbered{193, {"STDEVP", any}},
                               Numbered{194, {"VARP", any}},
                               Numbered{197, {"TRUNC", any}},
                               Numbered{212, {"ROUNDUP", 2}},
                               Numbered{213, {"ROUNDDOWN", 2}},
                               Numbered{216, {"RANK", any}},
                               Numbered{221, {"TODAY", 0}},
                               Numbered{227, {"MEDIAN", any}},
                               Numbered{228, {"SUMPRODUCT", any}},
                               Numbered{311, {"INTERCEPT", 2}},
                               Numbered{315, {"SLOPE", 2}},
                               Numbered{325, {"LARGE", 2}},
                               Numbered{326, {"SMALL", 2}},
                               Numbered{336, {"CONCATENATE", any}},
                               Numbered{337, {"POWER", 2}},
                               Numbered{344, {"SUBTOTAL", any}},
                               Numbered{345, {"SUMIF", any}},
                               Numbered{346, {"COUNTIF", 2}},
                               Numbered{347, {"COUNTBLANK", 1}}};

} // namespace

KnownFunction function_numbered(unsigned number) {
    auto const found = std::ranges::find(functions, number, &Numbered::number);
    return found == functions.end() ? KnownFunction{} : found->function;
}

} // namespace hearthcell::archive::xls
