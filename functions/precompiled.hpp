#pragma once
// What nearly everything that does without an office includes, read once for all of it. A file names all the same what
// it uses.

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <limits>
#include <map>
#include <optional>
#include <ostream>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>
