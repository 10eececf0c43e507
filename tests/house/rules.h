// The rules of the house that a program can check, each a function from the files to what is wrong with them.
#pragma once

#include "tests/house/tree.h"

namespace test::house {

/// core includes nobody, catalog and ui only core, kiosk all three, nobody tests; includes begin at the top and exist.
[[nodiscard]] Complaints includes_point_down(const Tree& tree);

/// Only the files whose name ends in `_compat` ask which version of a library they are compiled with.
[[nodiscard]] Complaints versions_in_compat_only(const Tree& tree);

/// No two headers of a room give one name to two types: the linker would take either for both and say nothing.
[[nodiscard]] Complaints types_have_one_home(const Tree& tree);

/// No `double` or `float` in core: amounts are exact.
[[nodiscard]] Complaints no_floating_point_in_core(const Tree& tree);

/// At most 400 lines a file of code, unless its name ends in `_table.cpp`.
[[nodiscard]] Complaints files_are_short(const Tree& tree);

/// Nothing but the agreed names at the top; `names` as top_level() gives them.
[[nodiscard]] Complaints top_level_is_agreed(const std::vector<std::string>& names);

/// The first line of every header is a `//` sentence that says what the file is for.
[[nodiscard]] Complaints headers_say_what_for(const Tree& tree);

/// Every class, struct, enum and free function that a room's header declares has a `///` line.
[[nodiscard]] Complaints declarations_have_docstrings(const Tree& tree);

/// No note to self is left in the text: what is missing is written down elsewhere.
[[nodiscard]] Complaints no_notes_to_self(const Tree& tree);

/// Scripts and build files fetch nothing by address, and no file names a host of a package registry.
[[nodiscard]] Complaints no_registry_hosts(const Tree& tree);

/// No file is a secret key of bundles, whatever its name (docs/bundle.md): it would be everybody's.
[[nodiscard]] Complaints no_secret_keys(const Tree& tree);

/// Every source file stands in the CMakeLists.txt of its folder or of one above it.
[[nodiscard]] Complaints sources_are_listed(const Tree& tree);

/// A test lies where what it tests lies, and every shelf with code has tests.
[[nodiscard]] Complaints tests_mirror_rooms(const Tree& tree);

/// All language files have the same texts with the same placeholders, and none is empty.
[[nodiscard]] Complaints languages_are_complete(const Tree& tree);

/// What a document names as its test is there: the file, and a case of it with the words in quotes behind it.
[[nodiscard]] Complaints named_tests_exist(const Tree& tree);

} // namespace test::house
