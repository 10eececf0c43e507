#include "tests/house/rules.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>

// A check that never complains checks nothing: each rule is shown a file that keeps it and one that breaks it.
namespace test::house {
namespace {

struct Case {
    std::string why; // doctest of Debian 12 shows a `const char*` as an address
    Tree tree;
    std::size_t complaints;
};

template<class Rule, std::size_t N>
void check(Rule rule, const Case (&cases)[N])
{
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto wrong = rule(c.tree);
        CAPTURE(wrong.empty() ? std::string("no complaint") : wrong.front());
        CHECK(wrong.size() == c.complaints);
    }
}

} // namespace

TEST_CASE("house: includes that point up, sideways or nowhere are told")
{
    const Case cases[] = {
        {"kiosk knows all", {{"kiosk/a.cpp", "#include \"core/b.h\"\n#include <SDL.h>\n"}, {"core/b.h", ""}}, 0},
        {"core knows nobody", {{"core/a.cpp", "#include \"catalog/b.h\"\n"}, {"catalog/b.h", ""}}, 1},
        {"catalog knows no screen", {{"catalog/a.h", "#include \"ui/b.h\"\n"}, {"ui/b.h", ""}}, 1},
        {"ui knows no store", {{"ui/a.h", "  #  include \"catalog/b.h\"\n"}, {"catalog/b.h", ""}}, 1},
        {"nobody knows tests", {{"kiosk/a.h", "#include \"tests/b.h\"\n"}, {"tests/b.h", ""}}, 1},
        {"not from the top", {{"core/a.h", "#include \"b.h\"\n"}, {"core/b.h", ""}}, 1},
        {"not there", {{"core/a.h", "#include \"core/b.h\"\n"}}, 1},
        {"a library of another room", {{"core/a.h", "#include <imgui.h>\n"}, {"ui/a.h", "#include <imgui.h>\n"}}, 1},
    };
    check(includes_point_down, cases);
}

TEST_CASE("house: a library's version is asked for in its compat file only")
{
    const Case cases[] = {
        {"in its place", {{"ui/imgui_compat.h", "#if IMGUI_VERSION_NUM < 18900\n"}}, 0},
        {"somewhere else", {{"ui/button.cpp", "#if IMGUI_VERSION_NUM < 18900\n"}}, 1},
        {"a header that may be there", {{"kiosk/window.cpp", "#if __has_include(<x.h>)\n"}}, 1},
        {"named in a comment", {{"kiosk/window.cpp", "// GST_CHECK_VERSION\n"}}, 0},
    };
    check(versions_in_compat_only, cases);
}

TEST_CASE("house: a name that two headers of a room give to two types is told")
{
    const Case cases[] = {
        {"once", {{"core/a.h", "struct A {\n};\n"}, {"core/b.h", "struct B {\n};\n"}}, 0},
        {"said before it is made", {{"core/a.h", "struct A {\n};\n"}, {"core/b.h", "struct A;\n"}}, 0},
        {"in two rooms, so in two namespaces", {{"core/a.h", "struct A {\n};\n"}, {"ui/b.h", "class A {\n};\n"}}, 0},
        {"within another type", {{"core/a.h", "struct A {\n};\n"}, {"core/b.h", "    struct A {\n"}}, 0},
        {"two structs", {{"core/a.h", "struct A {\n};\n"}, {"core/b.h", "struct A {\n};\n"}}, 1},
        {"a class and an enum", {{"core/a.h", "class A : B {\n"}, {"core/b.h", "enum class A { X };\n"}}, 1},
    };
    check(types_have_one_home, cases);
}

TEST_CASE("house: floating point in core is told, in comments and words it is not")
{
    const Case cases[] = {
        {"a double", {{"core/a.h", "// a\ndouble x;\n"}}, 1},
        {"a float", {{"core/f/a.cpp", "static_cast<float>(1)\n"}}, 1},
        {"a comment, a text, a longer word", {{"core/a.cpp", "int doubled; // a double\nauto t = \"float\";\n"}}, 0},
        {"another room", {{"ui/a.cpp", "float x;\n"}}, 0},
        {"after a digit separator", {{"core/a.cpp", "int x = 1'000; double y; int z = 2'000;\n"}}, 1},
    };
    check(no_floating_point_in_core, cases);
}

TEST_CASE("house: files that are too long are told, tables may be")
{
    const std::string lines(401, '\n');
    const Case cases[] = {
        {"at the limit", {{"core/a.cpp", lines.substr(1)}}, 0},
        {"over it", {{"core/a.cpp", lines}}, 1},
        {"a table", {{"core/a_table.cpp", lines}}, 0},
        {"data", {{"tests/data/a.csv", lines}}, 0},
    };
    check(files_are_short, cases);
}

TEST_CASE("house: what does not belong to the top level is told")
{
    CHECK(top_level_is_agreed({".ci/", ".gitignore", "CMakeLists.txt", "README.md", "core/"}).empty());
    CHECK(top_level_is_agreed({"LICENSE", "core", "scripts/"}).size() == 3); // `core` as a file
}

TEST_CASE("house: a header that does not begin with its sentence is told")
{
    const Case cases[] = {
        {"a sentence", {{"core/a.h", "// What a is for.\n#pragma once\n"}}, 0},
        {"none", {{"core/a.h", "#pragma once\n"}}, 1},
        {"an empty one", {{"core/a.h", "// \n#pragma once\n"}}, 1},
        {"nothing at all", {{"core/a.h", ""}}, 1},
    };
    check(headers_say_what_for, cases);
}

TEST_CASE("house: declarations without a docstring are told")
{
    const auto in_core = [](const std::string& code) {
        return Tree{
            {"core/a.h", "// What a is for.\n#pragma once\n\nnamespace core {\n" + code + "\n} // namespace core\n"}};
    };
    const Case cases[] = {
        {"a struct with one", in_core("/// An a.\nstruct A {\n    int b;\n};"), 0},
        {"a struct without", in_core("struct A {\n    int b;\n};"), 1},
        {"a plain comment is none", in_core("// An a.\nclass A {};"), 1},
        {"a function", in_core("int f(int x);"), 1},
        {"a function with a body, then one with docs",
         in_core("inline int f()\n{\n    return 1;\n}\n\n/// G.\nint g();"), 1},
        {"a template", in_core("template<class T>\nT f(T x = T());"), 1},
        {"a template with docs", in_core("/// F.\ntemplate<class T>\n[[nodiscard]] T f(T x = {});"), 0},
        {"an enum", in_core("enum class E { A, B };"), 1},
        {"docs behind it", in_core("enum class E { A, B }; ///< An e."), 0},
        {"only named beforehand", in_core("class A;\nstruct B;\nenum class E;"), 0},
        {"aliases and values explain themselves", in_core("using A = int;\n\ninline constexpr int b = f(1);"), 0},
        {"a group shares the docstring of its first", in_core("/// Both.\nint f();\nint g();"), 0},
        {"a gap ends the group", in_core("/// One.\nint f();\n\nint g();"), 1},
        {"members are not looked at", in_core("/// A.\nclass A {\n    int f();\n\n    struct B {};\n};"), 0},
        {"an operator", in_core("bool operator==(int a, A b);"), 1},
        {"a long signature", in_core("/// F.\nint f(int a,\n      int b);\n\nint g(int a,\n      int b);"), 1},
        {"inside a second namespace", in_core("namespace x {\nint f();\n}"), 1},
        {"a macro of several lines", in_core("#define A(X) \\\n    X(b) \\\n    X(c)\n"), 0},
        {"tests may do without", Tree{{"tests/a.h", "int f();\n"}}, 0},
    };
    check(declarations_have_docstrings, cases);
}

TEST_CASE("house: notes to self and registry hosts are told")
{
    const std::string note = std::string("TO") + "DO";
    const Case notes[] = {
        {"in code", {{"core/a.cpp", "// " + note + ": later\n"}}, 1},
        {"in a guide", {{"docs/a.md", note + "\n"}}, 1},
        {"a longer word", {{"docs/a.md", "m" + note + "logy\n"}}, 0},
    };
    check(no_notes_to_self, notes);
    const Case hosts[] = {
        {"a script that fetches", {{"config/open", std::string("#!/bin/bash\ncurl http:") + "//x.org\n"}}, 1},
        {"a source named in a guide", {{"docs/a.md", std::string("https:") + "//www.ecfr.gov\n"}}, 0},
        {"a registry in a guide", {{"docs/a.md", std::string("https:") + "//deb.deb" + "ian.org\n"}}, 1},
    };
    check(no_registry_hosts, hosts);
}

TEST_CASE("house: a secret key is told, a public one and talk of keys are not")
{
    const Case cases[] = {
        {"a secret key", {{"config/demo/a.key", "pairstand secret key 1\n" + std::string(64, '0') + "\n"}}, 1},
        {"a public key", {{"config/demo/a.key", "pairstand public key 1\n" + std::string(64, '0') + "\n"}}, 0},
        {"a guide", {{"docs/a.md", "The first line is `pairstand secret key 1`.\n"}}, 0},
    };
    check(no_secret_keys, cases);
}

TEST_CASE("house: a source that no list names is told")
{
    const Case cases[] = {
        {"beside it", {{"core/a.cpp", ""}, {"core/CMakeLists.txt", "add_library(core a.cpp)\n"}}, 0},
        {"one above", {{"core/x/a.cpp", ""}, {"core/CMakeLists.txt", "add_library(core\n  x/a.cpp)\n"}}, 0},
        {"by its full path, for several programs",
         {{"tests/support/a.cpp", ""},
          {"tests/core/CMakeLists.txt", "tests_of(x ${PROJECT_SOURCE_DIR}/tests/support/a.cpp)"}},
         0},
        {"from a folder beside it",
         {{"tests/support/a.cpp", ""}, {"tests/core/CMakeLists.txt", "tests_of(x\n  ../support/a.cpp)"}},
         0},
        {"part of another name",
         {{"core/a.cpp", ""}, {"core/CMakeLists.txt", "add_library(core aa.cpp a.cpp.in)\n"}},
         1},
        {"no list", {{"core/a.cpp", ""}}, 1},
    };
    check(sources_are_listed, cases);
}

TEST_CASE("house: tests that mirror nothing, and shelves without tests, are told")
{
    const Case cases[] = {
        {"as it should be", {{"core/x/a.cpp", ""}, {"tests/core/x/a_test.cpp", ""}}, 0},
        {"a shelf without tests", {{"core/x/a.cpp", ""}, {"core/y/b.cpp", ""}, {"tests/core/x/a_test.cpp", ""}}, 1},
        {"a test of nothing", {{"tests/core/y/a_test.cpp", ""}}, 1},
    };
    check(tests_mirror_rooms, cases);
}

TEST_CASE("house: language files that differ are told")
{
    const std::string en = "msgid \"\"\nmsgstr \"Language: en\\n\"\n\nmsgid \"hello\"\nmsgstr \"Hello {name}\"\n";
    const std::string draft = "msgid \"\"\nmsgstr \"\"\n\"X-Pairstand-State: draft\\n\"\n\n";
    const auto with = [&](const std::string& es) {
        return Tree{{"config/languages/en.po", en}, {"config/languages/es.po", es}};
    };
    const Case cases[] = {
        {"complete", with("msgid \"hello\"\nmsgstr \"\"\n\"Hola \"\n\"{name}\"\n"), 0},
        {"a text is missing", with("msgid \"\"\nmsgstr \"\"\n"), 1},
        {"a text is empty, and so is its placeholder", with("msgid \"hello\"\nmsgstr \"\"\n"), 2},
        {"another placeholder", with("msgid \"hello\"\nmsgstr \"Hola {nombre}\"\n"), 1},
        {"one too many", with("msgid \"hello\"\nmsgstr \"{name}\"\nmsgid \"bye\"\nmsgstr \"Adiós\"\n"), 1},
        {"twice", with("msgid \"hello\"\nmsgstr \"{name}\"\nmsgid \"hello\"\nmsgstr \"{name}\"\n"), 1},
        {"no model", {{"config/languages/es.po", en}}, 1},
        {"an accent beside its letter", with("msgid \"hello\"\nmsgstr \"Adio\xCC\x81s {name}\"\n"), 1},
        {"a draft may lack a text", with(draft), 0},
        {"and have an empty one", with(draft + "msgid \"hello\"\nmsgstr \"\"\n"), 0},
        {"but no other placeholder", with(draft + "msgid \"hello\"\nmsgstr \"Hola {nombre}\"\n"), 1},
        {"and no text that nobody knows", with(draft + "msgid \"bye\"\nmsgstr \"Adiós\"\n"), 1},
        {"a draft to measure by", {{"config/languages/en.po", draft + "msgid \"hello\"\nmsgstr \"Hello\"\n"}}, 1},
    };
    check(languages_are_complete, cases);
}

TEST_CASE("house: a test that a document names and that is not there is told")
{
    const std::pair<const std::string, std::string> test{"tests/ui/a_test.cpp",
                                                         "TEST_CASE(\"a: holds much\")\n// big\n"};
    const Case cases[] = {
        {"file and case are there", {test, {"docs/a.md", "| `a_test.cpp` \"holds much\" |\n"}}, 0},
        {"the file alone", {test, {"docs/a.md", "see `a_test.cpp`; \"holds nothing\"\n"}}, 0},
        {"no such file", {test, {"docs/a.md", "`b_test.cpp` \"holds much\"\n"}}, 1},
        {"no such case", {test, {"docs/a.md", "`a_test.cpp` \"holds little\"\n"}}, 1},
        {"words outside of a case", {test, {"README.md", "`a_test.cpp` \"big\"\n"}}, 1},
        {"two on a line", {test, {"docs/a.md", "`b_test.cpp`; `c_test.cpp`\n"}}, 2},
    };
    check(named_tests_exist, cases);
}

TEST_CASE("house: a checkout is read from its top, without what was built in it")
{
    namespace fs = std::filesystem;
    const fs::path root = fs::temp_directory_path() / "pairstand_house_test";
    fs::remove_all(root);
    const auto put = [&](const std::string& path, const std::string& text) {
        fs::create_directories((root / path).parent_path());
        std::ofstream(root / path) << text;
    };
    put("core/a.h", "double x;\n");
    put("build/release/b.cpp", "");
    put(".git/config", "");
    put("LICENSE", "words\n");
    const Tree expected{{"LICENSE", "words\n"}, {"core/a.h", "double x;\n"}};
    CHECK(read_tree(root) == expected);
    CHECK(top_level(root) == std::vector<std::string>{"LICENSE", "core/"});
    fs::remove_all(root);
}

} // namespace test::house
