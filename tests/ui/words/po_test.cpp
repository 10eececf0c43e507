// Our reader of language files against GNU msgfmt: what both take they take alike, and what msgfmt refuses we refuse.
#include "tests/support/temp_folder.h"
#include "ui/words/po.h"

#include <doctest/doctest.h>

#include <cstdint>
#include <cstdlib>
#include <map>
#include <optional>
#include <random>
#include <string>
#include <vector>

namespace {

using Messages = std::map<std::string, std::string>;

const std::string header = "msgid \"\"\nmsgstr \"Content-Type: text/plain; charset=UTF-8\\n\"\n\n";

std::uint32_t word_at(const std::string& bytes, std::size_t at)
{
    std::uint32_t word = 0;
    for (std::size_t i = 4; i-- > 0;)
        word = word << 8U | static_cast<unsigned char>(bytes.at(at + i));
    return word;
}

/// The messages of a compiled file. Source: GNU gettext manual, "The Format of GNU MO Files".
Messages read_mo(const std::string& bytes)
{
    REQUIRE(word_at(bytes, 0) == 0x950412de);
    const std::uint32_t count = word_at(bytes, 8);
    const auto text_of = [&bytes](std::size_t entry) {
        return bytes.substr(word_at(bytes, entry + 4), word_at(bytes, entry));
    };
    Messages messages;
    for (std::uint32_t i = 0; i < count; ++i)
        messages[text_of(word_at(bytes, 12) + 8 * i)] = text_of(word_at(bytes, 16) + 8 * i);
    messages.erase(""); // the header
    return messages;
}

/// What msgfmt makes of it; nothing when it refuses.
std::optional<Messages> by_msgfmt(const test::TempFolder& folder, const std::string& po)
{
    const std::string in = folder.write("in.po", po);
    const std::string out = folder.file("out.mo");
    const std::string command =
        "msgfmt --endianness=little -o '" + out + "' '" + in + "' 2>'" + folder.file("said") + "'";
    if (std::system(command.c_str()) != 0)
        return std::nullopt;
    return read_mo(test::bytes_of(out));
}

/// What we make of it. Empty translations count as none there; Language refuses them.
std::optional<Messages> by_us(const std::string& po)
{
    const auto read = ui::parse_po(po, "in.po");
    if (!read)
        return std::nullopt;
    Messages messages;
    for (const auto& message : *read)
        if (!message.text.empty())
            messages[message.id] = message.text;
    return messages;
}

} // namespace

TEST_CASE("po: our language files mean to us what they mean to msgfmt")
{
    const test::TempFolder folder;
    for (const std::string code : {"en", "es", "vi"}) {
        CAPTURE(code);
        const std::string po = test::bytes_of(PAIRSTAND_SOURCE "/config/languages/" + code + ".po");
        const auto theirs = by_msgfmt(folder, po);
        const auto ours = by_us(po);
        REQUIRE(theirs.has_value());
        REQUIRE(ours.has_value());
        CHECK(theirs->size() > 100);
        CHECK(*ours == *theirs);
    }
}

TEST_CASE("po: what is unusual but right is read as msgfmt reads it")
{
    struct Case {
        std::string why;
        std::string po;
    };
    const Case cases[] = {
        {"one line", "msgid \"a\"\nmsgstr \"b\"\n"},
        {"no line end at the end", "msgid \"a\"\nmsgstr \"b\""},
        {"several lines", "msgid \"a\"\n\"b\"\nmsgstr \"\"\n\"c \"\n\"d\"\n"},
        {"escapes", "msgid \"a\"\nmsgstr \"\\\"b\\\\\\n\\tc\\\"\"\n"},
        {"a backslash at the end", "msgid \"a\"\nmsgstr \"b\\\\\"\n"},
        {"a backslash before n that is no line end", "msgid \"a\"\nmsgstr \"b\\\\n\"\n"},
        {"line ends of Windows", "msgid \"a\"\r\nmsgstr \"b\"\r\n"},
        {"blanks around", "  msgid \"a\"  \n\tmsgstr \"b\"\t\n"},
        {"a raw tab in the text", "msgid \"a\"\nmsgstr \"b\tc\"\n"},
        {"no blank line between two", "msgid \"a\"\nmsgstr \"b\"\nmsgid \"c\"\nmsgstr \"d\"\n"},
        {"comments of every kind",
         "# translator\n#. programmer\n#: file.cpp:3\n#, c-format\n#| msgid \"x\"\nmsgid \"a\"\nmsgstr \"b\"\n"},
        {"a comment that looks like a message", "#msgid \"x\"\nmsgid \"a\"\nmsgstr \"b\"\n"},
        {"obsolete", "msgid \"a\"\nmsgstr \"b\"\n#~ msgid \"x\"\n#~ msgstr \"y\"\n"},
        {"fuzzy", "#, fuzzy\nmsgid \"a\"\nmsgstr \"b\"\n\nmsgid \"c\"\nmsgstr \"d\"\n"},
        {"fuzzy among other flags", "#, no-wrap, fuzzy\nmsgid \"a\"\nmsgstr \"b\"\n"},
        {"fuzzy, then a blank line", "#, fuzzy\n\nmsgid \"a\"\nmsgstr \"b\"\n"},
        {"fuzzy behind the last", "msgid \"a\"\nmsgstr \"b\"\n#, fuzzy\n"},
        {"not translated", "msgid \"a\"\nmsgstr \"\"\n\nmsgid \"b\"\nmsgstr \"c\"\n"},
        {"UTF-8 of two, three and four bytes", "msgid \"a\"\nmsgstr \"ñ “–” \xF0\x9D\x84\x9E\"\n"},
        {"the edges of well-formed UTF-8", "msgid \"a\"\nmsgstr \"\x7F\xC2\x80\xDF\xBF\xE0\xA0\x80\xED\x9F\xBF\xEE\x80"
                                           "\x80\xEF\xBF\xBD\xF0\x90\x80\x80\xF4\x8F\xBF\xBF\"\n"},
        {"bytes that are no UTF-8 in a comment", "# \xFF\nmsgid \"a\"\nmsgstr \"b\"\n"},
        {"braces", "msgid \"a\"\nmsgstr \"{n} de {all} % #\"\n"},
        {"nothing but a header", ""},
    };
    const test::TempFolder folder;
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto theirs = by_msgfmt(folder, header + c.po);
        const auto ours = by_us(header + c.po);
        REQUIRE(theirs.has_value());
        REQUIRE(ours.has_value());
        CHECK(*ours == *theirs);
    }
}

TEST_CASE("po: what msgfmt refuses is refused, with its line")
{
    struct Case {
        std::string why;
        std::string po;
        std::size_t line; ///< behind the three lines of the header
    };
    const Case cases[] = {
        {"no end of the quotes", "msgid \"a\"\nmsgstr \"b\n", 2},
        {"no quotes", "msgid a\nmsgstr \"b\"\n", 1},
        {"a quote inside", "msgid \"a\"\nmsgstr \"b\"c\"\n", 2},
        {"an escape that is none", "msgid \"a\"\nmsgstr \"\\q\"\n", 2},
        {"a backslash takes the closing quote", "msgid \"a\"\nmsgstr \"b\\\"\n", 2},
        {"no msgstr", "msgid \"a\"\nmsgid \"b\"\nmsgstr \"c\"\n", 2},
        {"no msgstr at the end", "msgid \"a\"\n", 1},
        {"no msgid", "msgstr \"b\"\n", 1},
        {"two msgstr", "msgid \"a\"\nmsgstr \"b\"\nmsgstr \"c\"\n", 3},
        {"a line end more than in the msgid", "msgid \"a\"\nmsgstr \"b\\n\"\n", 1},
        {"a line end at the other end", "msgid \"\\na\"\nmsgstr \"b\"\n", 1},
        {"an unknown word", "msgud \"a\"\nmsgstr \"b\"\n", 1},
        {"a comment inside", "msgid \"a\"\n# why\nmsgstr \"b\"\n", 2},
        {"fuzzy inside", "msgid \"a\"\n#, fuzzy\nmsgstr \"b\"\n", 2},
        {"a comment inside a text", "msgid \"a\"\nmsgstr \"b\"\n# why\n\"c\"\n", 4},
        {"a msgid twice", "msgid \"a\"\nmsgstr \"b\"\n\nmsgid \"a\"\nmsgstr \"c\"\n", 4},
        {"a msgid twice, once fuzzy", "#, fuzzy\nmsgid \"a\"\nmsgstr \"b\"\n\nmsgid \"a\"\nmsgstr \"c\"\n", 5},
        {"two headers", "msgid \"\"\nmsgstr \"c\"\n", 1},
        {"Latin-1", "msgid \"a\"\nmsgstr \"a\xF1o\"\n", 2},
        {"a byte cut off", "msgid \"a\"\nmsgstr \"a\xC3\"\n", 2},
        {"UTF-8 longer than needed", "msgid \"a\"\nmsgstr \"\xC0\x80\"\n", 2},
        {"a surrogate", "msgid \"a\"\nmsgstr \"\xED\xA0\x80\"\n", 2},
        {"beyond Unicode", "msgid \"a\"\nmsgstr \"\xF4\x90\x80\x80\"\n", 2},
    };
    const test::TempFolder folder;
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(!by_msgfmt(folder, header + c.po).has_value());
        const auto ours = ui::parse_po(header + c.po, "in.po");
        REQUIRE(!ours.has_value());
        CHECK(ours.error().kind == core::Error::Kind::BadValue);
        CHECK(ours.error().place.source == "in.po");
        CHECK(ours.error().place.row == 3 + c.line);
    }
    const std::string marked = "\xEF\xBB\xBF" + header + "msgid \"a\"\nmsgstr \"b\"\n";
    CHECK(!by_msgfmt(folder, marked).has_value());
    CHECK(!by_us(marked).has_value());
}

TEST_CASE("po: what msgfmt takes and our files do not need is refused, never read otherwise")
{
    const std::string cases[] = {
        "msgctxt \"menu\"\nmsgid \"a\"\nmsgstr \"b\"\n",
        "msgid \"a\"\nmsgid_plural \"as\"\nmsgstr[0] \"b\"\nmsgstr[1] \"c\"\n",
        "msgid \"a\" msgstr \"b\"\n",
        "msgid \"a\"\nmsgstr \"\\x41\"\n",
        "msgid \"a\"\nmsgstr \"b\"\n\n\"c\"\n",
        std::string("msgid \"a\"\nmsgstr \"b\0c\"\n", 23),
        "\"more of the header\"\n",
    };
    const test::TempFolder folder;
    for (const auto& po : cases) {
        CAPTURE(po);
        CHECK(by_msgfmt(folder, header + po).has_value());
        CHECK(!by_us(header + po).has_value());
    }
}

TEST_CASE("po: lines thrown together at random are never taken otherwise than by msgfmt")
{
    const std::vector<std::string> lines{
        "msgid \"a\"",     "msgid \"b\"", "msgid \"\"",
        "msgstr \"x\"",    "msgstr \"\"", "msgstr \"y\\n\"",
        "\"more\"",        "\"\\\"\"",    "",
        "# words",         "#, fuzzy",    "#. fuzzy",
        "msgstr \"\\\\\"", "msgid \"c\"", "msgstr \"z\"",
    };
    std::mt19937 random(20'261'125); // the same lines on every run
    const test::TempFolder folder;
    int taken = 0;
    for (int run = 0; run < 300; ++run) {
        std::string po = header;
        for (std::size_t i = 0; i < 2 + random() % 5; ++i) {
            // Mostly whole messages, so that many are taken.
            if (random() % 3 != 0)
                po += lines[random() % 2 * 13] + "\n" + lines[3 + random() % 2] + "\n";
            else
                po += lines[random() % lines.size()] + "\n";
        }
        CAPTURE(po);
        const auto ours = by_us(po);
        if (!ours)
            continue;
        ++taken;
        const auto theirs = by_msgfmt(folder, po);
        REQUIRE(theirs.has_value());
        CHECK(*ours == *theirs);
    }
    CHECK(taken > 30); // or it would prove nothing
}
