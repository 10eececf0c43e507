#include "tests/house/rules.h"

#include <doctest/doctest.h>

namespace test::house {
namespace {

const Tree& checkout()
{
    static const Tree tree = read_tree(PAIRSTAND_SOURCE);
    return tree;
}

void none(const Complaints& complaints)
{
    for (const auto& wrong : complaints)
        FAIL_CHECK(wrong);
}

} // namespace

TEST_CASE("house: the whole checkout is looked at")
{
    CHECK(checkout().size() > 50); // an empty folder keeps every rule
    for (const auto* path : {"core/error.h", "README.md", "config/packages.txt", ".ci/run", "tests/house/rules.h"}) {
        CAPTURE(std::string(path));
        CHECK(checkout().contains(path));
    }
}

TEST_CASE("house: includes point down")
{
    none(includes_point_down(checkout()));
}

TEST_CASE("house: versions of libraries are asked for in compat files")
{
    none(versions_in_compat_only(checkout()));
}

TEST_CASE("house: types have one home")
{
    none(types_have_one_home(checkout()));
}

TEST_CASE("house: no floating point in core")
{
    none(no_floating_point_in_core(checkout()));
}

TEST_CASE("house: files are short")
{
    none(files_are_short(checkout()));
}

TEST_CASE("house: the top level is as agreed")
{
    none(top_level_is_agreed(top_level(PAIRSTAND_SOURCE)));
}

TEST_CASE("house: headers say what they are for")
{
    none(headers_say_what_for(checkout()));
}

TEST_CASE("house: declarations have docstrings")
{
    none(declarations_have_docstrings(checkout()));
}

TEST_CASE("house: no notes to self")
{
    none(no_notes_to_self(checkout()));
}

TEST_CASE("house: no registry hosts")
{
    none(no_registry_hosts(checkout()));
}

TEST_CASE("house: no secret keys")
{
    none(no_secret_keys(checkout()));
}

TEST_CASE("house: sources are listed")
{
    none(sources_are_listed(checkout()));
}

TEST_CASE("house: tests mirror the rooms")
{
    none(tests_mirror_rooms(checkout()));
}

TEST_CASE("house: the tests that documents name are there")
{
    none(named_tests_exist(checkout()));
}

TEST_CASE("house: every text in every language")
{
    if (checkout().contains("config/languages/en.po"))
        none(languages_are_complete(checkout()));
    else
        MESSAGE("no language files yet");
}

} // namespace test::house
