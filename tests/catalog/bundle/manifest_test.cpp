// What a bundle may say about itself, and what nobody believes it.
#include "catalog/bundle/installed.h"
#include "catalog/bundle/manifest.h"

#include <doctest/doctest.h>

using catalog::Manifest;
using catalog::read_manifest;
using Kind = core::Error::Kind;

namespace {

const std::string digest(64, 'a');

Manifest sample()
{
    return {"Winter “2”",
            "Cedar Hollow; educación",
            "2026-11-25",
            7,
            110,
            {{"catalog.db", 57344, *catalog::bytes_of_hex(digest)},
             {"tour.csv", 0, *catalog::bytes_of_hex(digest)},
             {"texts/greeting.es.txt", 12, *catalog::bytes_of_hex(digest)}}};
}

/// The sample's text with one piece in place of another, which must be there.
std::string with(const std::string& from, const std::string& to)
{
    auto text = catalog::manifest_text(sample());
    const auto at = text.find(from);
    REQUIRE_MESSAGE(at != std::string::npos, from);
    return text.replace(at, from.size(), to);
}

} // namespace

TEST_CASE("manifest: reads what it writes, and passes over what it does not know")
{
    CHECK(read_manifest(catalog::manifest_text(sample())).value() == sample());
    CHECK(read_manifest(with("\"counter\"", "\"colour\": \"blue\", \"counter\"")).value() == sample());
    CHECK(read_manifest(with("\"format\": 1", "\"format\": 2")).error().kind == Kind::NewerBundle);
}

TEST_CASE("manifest: what cannot be is refused, whoever sealed it")
{
    const auto part = [](const std::string& name) { return with("\"tour.csv\"", "\"" + name + "\""); };
    struct Case {
        const char* why;
        std::string text;
    };
    const Case cases[] = {
        {"nothing", ""},
        {"no JSON", "catalog"},
        {"no object", "[1]"},
        {"cut short", catalog::manifest_text(sample()).substr(0, 200)},
        {"more behind it", catalog::manifest_text(sample()) + "{}"},
        {"too long", std::string(catalog::longest_manifest + 1, ' ')},
        {"a line of 100 MB", with("Winter", std::string(100'000'000, 'w'))},
        {"deep lists", with("\"counter\": 7", "\"counter\": " + std::string(30'000, '[') + std::string(30'000, ']'))},
        {"deep lists without end", std::string(60'000, '[')},
        {"a form of 0", with("\"format\": 1", "\"format\": 0")},
        {"no form", with("\"format\": 1,", "")},
        {"a form as text", with("\"format\": 1", "\"format\": \"1\"")},
        {"no name", with("\"name\": \"Winter “2”\",", "")},
        {"an empty maker", with("Cedar Hollow; educación", "")},
        {"a name of 81 letters", with("Winter “2”", std::string(81, 'w'))},
        {"a name with a line end", with("Winter", "Winter\\n")},
        {"a name that turns the line round", with("Winter", "Winter\\u202e")},
        {"a name that is no text", with("Winter", "Winter\xff")},
        {"a name that is a number", with("\"Winter “2”\"", "5")},
        {"a date longer than words", with("2026-11-25", std::string(41, '2'))},
        {"counter 0", with("\"counter\": 7", "\"counter\": 0")},
        {"a counter below 0", with("\"counter\": 7", "\"counter\": -7")},
        {"a broken counter", with("\"counter\": 7", "\"counter\": 7.5")},
        {"a counter that no reader of JSON holds", with("\"counter\": 7", "\"counter\": 9007199254740992")},
        {"a counter beyond all numbers", with("\"counter\": 7", "\"counter\": 99999999999999999999999")},
        {"no products", with("\"products\": 110,", "")},
        {"no parts", with("\"parts\"", "\"parks\"")},
        {"no catalog", with("catalog.db", "texts/catalog.db")},
        {"two catalogs", part("catalog.db")},
        {"two texts of one name", part("texts/greeting.es.txt")},
        {"a part of another kind", part("program.sh")},
        {"a way up", part("texts/../../catalog.db")},
        {"a way up from the start", part("../catalog.db")},
        {"a way from the root", part("/etc/passwd")},
        {"a folder", part("texts/")},
        {"a folder in a folder", part("texts/a/b")},
        {"a way up and down in names", part("texts/..")},
        {"a hidden file", part("texts/.profile")},
        {"a name with a zero", part("texts/a\\u0000b")},
        {"a name of 65 letters", part("texts/" + std::string(65, 'a'))},
        {"a part of a thousand gigabytes and one byte", with("57344", "1099511627777")},
        {"a part of all bytes", with("57344", "18446744073709551615")},
        {"a part below 0", with("57344", "-1")},
        {"a short digest", with(digest, digest.substr(1))},
        {"a digest that is none", with(digest, "z" + digest.substr(1))},
        {"a part that is a list", with("\"parts\": [", "\"parts\": [[],")},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto read = read_manifest(c.text);
        REQUIRE_FALSE(read);
        CHECK(read.error().kind == Kind::DamagedBundle);
    }
    auto many = sample();
    for (int i = 0; i < 198; ++i)
        many.parts.push_back({"texts/" + std::to_string(i), 1, {}});
    CHECK_FALSE(read_manifest(catalog::manifest_text(many)));
    many.parts.pop_back();
    CHECK(read_manifest(catalog::manifest_text(many)));
}

TEST_CASE("installed: the record reads what it writes, and nothing else")
{
    catalog::Installed installed;
    installed.key = *catalog::bytes_of_hex(digest);
    installed.newest = 7;
    installed.now = catalog::InstalledBundle{"b12", *catalog::bytes_of_hex(digest)};
    installed.can_go_back = true;
    const auto text = catalog::installed_text(installed);
    CHECK(catalog::installed_in(text) == installed);
    CHECK(catalog::installed_in(catalog::installed_text({})) == catalog::Installed{});
    for (const char* folder : {"..", "b1/../..", "b", "", "/", "c12", "b1234567890123456789012"}) {
        auto other = text;
        other.replace(other.find("b12"), 3, folder);
        CAPTURE(folder);
        CHECK_FALSE(catalog::installed_in(other));
    }
    for (std::size_t length = 0; length < text.size() - 2; ++length)
        CHECK_FALSE(catalog::installed_in(text.substr(0, length)));
}
