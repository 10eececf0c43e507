#include "catalog/read/csv.h"
#include "catalog/read/published_csv.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstring>
#include <numeric>
#include <optional>
#include <random>

using catalog::PublishedCsv;

namespace {

/// Bytes in memory, handed out in pieces of one size, so that every place is once the end of a piece.
class Pieces : public catalog::ByteStream {
public:
    Pieces(std::string bytes, std::size_t piece) : bytes_(std::move(bytes)), piece_(piece) {}
    core::Result<std::size_t> read(char* into, std::size_t size) override
    {
        if (fails_at_ && at_ >= *fails_at_)
            return core::refuse(core::Error::Kind::CannotRead, "gone", core::Place{"stick", 0, {}, {}, {}});
        const auto count = std::min({piece_, size, bytes_.size() - at_});
        std::memcpy(into, bytes_.data() + at_, count);
        at_ += count;
        return count;
    }
    [[nodiscard]] std::uint64_t size() const override { return bytes_.size(); }
    void fail_at(std::size_t at) { fails_at_ = at; }

private:
    std::string bytes_;
    std::size_t piece_;
    std::size_t at_ = 0;
    std::optional<std::size_t> fails_at_;
};

using Rows = std::vector<std::vector<std::string>>;

Rows rows_of(const std::string& text, std::size_t piece)
{
    Pieces bytes(text, piece);
    PublishedCsv csv(bytes, "food.csv");
    const auto header = csv.header().value();
    std::vector<std::size_t> all(header.size());
    std::iota(all.begin(), all.end(), 0);
    csv.want(all);
    Rows rows{header};
    while (csv.next().value()) {
        rows.emplace_back();
        for (std::size_t i = 0; i < all.size(); ++i)
            rows.back().emplace_back(csv.field(i));
    }
    return rows;
}

/// The same by the library that reads sheets.
Rows rows_of_library(const std::string& text)
{
    Rows rows;
    catalog::for_each_row(text, ',', [&](const catalog::CsvRow& row) { rows.push_back(row.cells); });
    return rows;
}

} // namespace

// Source of the form: RFC 4180, section 2.
TEST_CASE("published csv: fields in quotes and without, doubled quotes, line breaks, both line ends")
{
    const std::string text = "\"fdc_id\",\"name\",plain\n"
                             "\"1\",\"1/8 of 9\"\" crust\",a\r\n"
                             "\"2\",\"two\nlines, and a comma\",\n"
                             "\"3\",\"\",\"\"\"\"\"\"\n"
                             "\"4\",\"last\",x";
    const Rows expected = {{"fdc_id", "name", "plain"},
                           {"1", "1/8 of 9\" crust", "a"},
                           {"2", "two\nlines, and a comma", ""},
                           {"3", "", "\"\""},
                           {"4", "last", "x"}};
    for (std::size_t piece = 1; piece <= text.size() + 1; ++piece) {
        CAPTURE(piece);
        CHECK(rows_of(text, piece) == expected);
    }
    std::string one_kind = text; // the library is given line feeds only
    one_kind.erase(one_kind.find('\r'), 1);
    CHECK(rows_of_library(one_kind) == expected);
}

TEST_CASE("published csv: reads what the library of sheets reads")
{
    std::mt19937 dice(7);
    constexpr const char* pieces[] = {"oats", " ", ",", "\"\"", "\n", "1.5", "\xC3\xA9", ";", "'"};
    std::string text = "\"a\",\"b\",\"c\"\n";
    for (int row = 0; row < 500; ++row)
        for (int column = 0; column < 3; ++column) {
            text += column == 0 ? "\"x" : ",\"x"; // the library takes blanks off the ends of a cell
            for (auto i = dice() % 5; i > 0; --i)
                text += pieces[dice() % std::size(pieces)];
            text += column == 2 ? "x\"\n" : "x\"";
        }
    CHECK(rows_of(text, 100) == rows_of_library(text));
}

TEST_CASE("published csv: a large file is taken apart ahead, and reads the same")
{
    std::string text = "a,b,c\n";
    for (int row = 0; text.size() < (3U << 20U); ++row)
        text += std::to_string(row) + ",\"" + std::string(static_cast<std::size_t>(row * 7 % 300), 'x') + "\"\"\",\n";
    CHECK(rows_of(text, 50'000) == rows_of_library(text));
    Pieces left(text, 1U << 20U); // one who leaves early waits for nobody
    PublishedCsv csv(left, "food.csv");
    REQUIRE(csv.header());
    csv.want({1});
    for (int i = 0; i < 2000; ++i)
        REQUIRE(csv.next().value());
}

TEST_CASE("published csv: what goes wrong far into a large file is told where the rows end")
{
    using Kind = core::Error::Kind;
    std::string text = "a,b\n";
    while (text.size() < (1U << 20U))
        text += "12345,6\n";
    Pieces pulled(text, 1U << 16U);
    pulled.fail_at(700'000);
    PublishedCsv broken(pulled, "food.csv");
    REQUIRE(broken.header());
    broken.want({0});
    std::size_t rows = 0;
    auto next = broken.next();
    for (; next && *next; next = broken.next())
        ++rows;
    REQUIRE_FALSE(next);
    CHECK(next.error().kind == Kind::CannotRead);
    CHECK(rows > 700'000 / 8 - 1);
    const auto last = text.size() / 8 + 1;
    Pieces endless(text + "7,\"" + std::string(10U << 20U, 'x'), 1U << 16U);
    PublishedCsv csv(endless, "food.csv");
    REQUIRE(csv.header());
    csv.want({0});
    for (next = csv.next(); next && *next; next = csv.next())
        CHECK(csv.field(0) == "12345");
    REQUIRE_FALSE(next);
    CHECK(next.error().kind == Kind::TooLarge);
    CHECK(next.error().place.row == last + 1);
}

TEST_CASE("published csv: only wanted fields are given, whatever the order of the others")
{
    Pieces bytes("a,b,c,d\n1,2,3,4\n5,6\n", 3);
    PublishedCsv csv(bytes, "food.csv");
    CHECK(csv.header().value() == std::vector<std::string>{"a", "b", "c", "d"});
    csv.want({1, 3});
    REQUIRE(csv.next().value());
    CHECK(csv.field(0) == "2");
    CHECK(csv.field(1) == "4");
    CHECK(csv.complete());
    REQUIRE(csv.next().value());
    CHECK(csv.field(0) == "6");
    CHECK(csv.field(1).empty());
    CHECK_FALSE(csv.complete());
    CHECK_FALSE(csv.next().value());
    CHECK(csv.row() == 3);
    CHECK(csv.bytes_read() == 20);
}

TEST_CASE("published csv: a byte order mark is no part of the first name")
{
    CHECK(rows_of("\xEF\xBB\xBF\"fdc_id\",\"b\"\n1,2\n", 5).front() == std::vector<std::string>{"fdc_id", "b"});
    CHECK(rows_of("\xEF\xBB\xBF"
                  "fdc_id,b\n1,2\n",
                  5)
              .front() == std::vector<std::string>{"fdc_id", "b"});
}

TEST_CASE("published csv: an empty file, a row without end, a stick that is pulled")
{
    using Kind = core::Error::Kind;
    Pieces empty("", 10);
    CHECK(PublishedCsv(empty, "food.csv").header().error().kind == Kind::Empty);
    Pieces endless("a,b\n\"" + std::string(100U << 20U, 'x'), 1U << 20U);
    PublishedCsv csv(endless, "food.csv");
    REQUIRE(csv.header());
    csv.want({0});
    const auto refused = csv.next();
    REQUIRE_FALSE(refused);
    CHECK(refused.error().kind == Kind::TooLarge);
    CHECK(refused.error().place.row == 2);
    Pieces pulled("a,b\n1,2\n3,4\n", 8);
    pulled.fail_at(8);
    PublishedCsv broken(pulled, "food.csv");
    REQUIRE(broken.header());
    broken.want({0});
    CHECK(broken.next().value());
    CHECK(broken.next().error().kind == Kind::CannotRead);
}
