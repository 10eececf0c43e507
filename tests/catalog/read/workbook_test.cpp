#include "catalog/read/workbook.h"
#include "tests/support/workbook_maker.h"
#include "tests/support/zip_maker.h"

#include <doctest/doctest.h>

using catalog::CellMark;
using catalog::CsvRow;
using catalog::Workbook;
using core::Error;
using test::Tab;

namespace {

/// An open workbook and the bytes that it lies in.
struct Opened {
    std::string bytes;
    core::Result<std::unique_ptr<Workbook>> book;

    explicit Opened(std::string made) : bytes(std::move(made)), book(tl::make_unexpected(Error{}))
    {
        auto zip = catalog::ZipFile::of_bytes(bytes, "book", catalog::workbook_limits());
        book = zip ? Workbook::open(*std::move(zip), "book") : tl::make_unexpected(zip.error());
    }

    std::vector<CsvRow> rows(std::size_t sheet = 0)
    {
        std::vector<CsvRow> all;
        REQUIRE(book.has_value());
        const auto read = (*book)->for_each_row(sheet, [&all](const CsvRow& row) {
            all.push_back(row);
            return true;
        });
        if (!read)
            FAIL_CHECK(read.error().detail);
        return all;
    }

    core::Error refused()
    {
        if (!book)
            return book.error();
        const auto read = (*book)->for_each_row(0, [](const CsvRow&) { return true; });
        REQUIRE_FALSE(read.has_value());
        return read.error();
    }
};

/// "7: a|b|c", with "!" behind a broken cell and "#" behind a day.
std::string told(const CsvRow& row)
{
    std::string text = std::to_string(row.number) + ":";
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        text += (i == 0 ? " " : "|") + row.cells[i];
        if (const auto mark = row.marks.find(i); mark != row.marks.end())
            text += mark->second == CellMark::Broken ? "!" : "#";
    }
    return text;
}

std::vector<std::string> told(const std::vector<CsvRow>& rows)
{
    std::vector<std::string> all;
    for (const auto& row : rows)
        all.push_back(told(row));
    return all;
}

} // namespace

TEST_CASE("workbook: every kind of cell of an .xlsx file is shown as the spreadsheet shows it")
{
    const auto shared = "<si><t>plain</t></si><si><r><t>in </t></r><r><rPr/><t xml:space=\"preserve\">parts</t></r>"
                        "<rPh><t>aid</t></rPh></si><si><t>line_x000D_break _x005F_x</t></si><si/>";
    Opened book(test::xlsx_of(
        {{"S",
          "<row r=\"2\" spans=\"1:3\"><c r=\"A2\" t=\"s\"><v>0</v></c><c r=\"B2\" t=\"s\"><v>1</v></c>"
          "<c r=\"D2\" t=\"s\"><v>2</v></c><c r=\"E2\" t=\"s\"><v>3</v></c></row>"
          "<row r=\"3\"/>"
          "<row r=\"5\"><c r=\"A5\"><v>0.28999999999999998</v></c><c r=\"B5\" s=\"1\"><v>0.08</v></c>"
          "<c r=\"C5\" s=\"2\"><v>46351</v></c><c r=\"D5\" s=\"3\"><v>7.0000000000000007E-2</v></c>"
          "<c r=\"E5\" s=\"4\"><v>46351</v></c><c r=\"F5\" s=\"5\"><v>12345000065</v></c>"
          "<c r=\"G5\" s=\"7\"><v>0.5</v></c></row>"
          "<row><c t=\"b\"><v>1</v></c><c t=\"b\"><v>0</v></c><c t=\"str\"><f>A1</f><v>text</v></c>"
          "<c><f>1+1</f><v>2</v></c><c><f>1+1</f></c><c t=\"e\"><f>1/0</f><v>#DIV/0!</v></c>"
          "<c t=\"d\"><v>2026-11-25T00:00:00</v></c><c t=\"inlineStr\"><is><r><t>in</t></r><r><t>line</t></r></is></c>"
          "<c t=\"str\"><f>\"\"</f><v></v></c></row>"}},
        shared));
    CHECK(told(book.rows()) == std::vector<std::string>{"2: plain|in parts||line\nbreak _x",
                                                        "5: 0.29|8%|2026-11-25#|7%|2026-11-25#|012345000065|0.5#",
                                                        "6: TRUE|FALSE|text|2|!|#DIV/0!!|2026-11-25#|inline"});
}

TEST_CASE("workbook: every kind of cell of an .ods file is shown as the spreadsheet shows it")
{
    const std::string cell = "<table:table-cell office:value-type=";
    Opened book(test::ods_of(
        {{"S",
          "<table:table-column table:number-columns-repeated=\"16384\"/>"
          "<table:table-row table:number-rows-repeated=\"3\"><table:table-cell/></table:table-row>"
          "<table:table-row>" +
              cell +
              "\"string\"><text:p>two <text:s text:c=\"2\"/>blanks</text:p><text:p>and <text:span>a</text:span> line"
              "</text:p><office:annotation><text:p>a note</text:p></office:annotation></table:table-cell>" +
              cell +
              "\"percentage\" office:value=\"0.08\" "
              "calcext:value-type=\"percentage\"><text:p>8%</text:p></table:table-cell>" +
              cell + "\"boolean\" office:boolean-value=\"true\"><text:p>WAHR</text:p></table:table-cell>" + cell +
              "\"date\" office:date-value=\"2026-11-25\"><text:p>25.11.26</text:p></table:table-cell>" + cell +
              "\"float\" office:value=\"12345000065\"><text:p>012345000065</text:p></table:table-cell>" + cell +
              "\"float\" office:value=\"2.5\"><text:p>3</text:p></table:table-cell>" + cell +
              "\"currency\" office:value=\"3.99\"><text:p>$3.99</text:p></table:table-cell>"
              "<table:table-cell table:number-columns-repeated=\"16377\"/></table:table-row>"
              "<table:table-row table:number-rows-repeated=\"2\">" +
              cell +
              "\"string\" table:number-columns-spanned=\"2\"><text:p>merged</text:p></table:table-cell>"
              "<table:covered-table-cell office:value-type=\"string\"><text:p>under "
              "it</text:p></table:covered-table-cell>" +
              cell +
              "\"float\" table:number-columns-repeated=\"2\" office:value=\"1\" "
              "table:formula=\"of:=1\"><text:p>1</text:p></table:table-cell>" +
              cell +
              "\"string\" table:formula=\"of:=1/0\" office:string-value=\"\" "
              "calcext:value-type=\"error\"><text:p>#DIV/0!</text:p></table:table-cell>" +
              "<table:table-cell table:formula=\"of:=1\"/>" + cell +
              "\"time\" office:time-value=\"PT12H\"><text:p>12:00</text:p></table:table-cell>"
              "</table:table-row>"
              "<table:table-row table:number-rows-repeated=\"1048576\"><table:table-cell/></table:table-row>"}}));
    CHECK(told(book.rows()) ==
          std::vector<std::string>{"4: two   blanks\nand a line|8%|TRUE|2026-11-25#|012345000065|2.5|3.99",
                                   "5: merged||1|1|#DIV/0!!|!|12:00#", "6: merged||1|1|#DIV/0!!|!|12:00#"});
}

TEST_CASE("workbook: sheets are named with their first row, and each is read alone")
{
    const test::TextRows one{{"", ""}, {"a", "b"}, {"c"}};
    const test::TextRows two{{"x"}};
    for (const bool xlsx : {true, false}) {
        CAPTURE(xlsx);
        const auto rows = [xlsx](const test::TextRows& all) {
            return xlsx ? test::xlsx_rows(all) : test::ods_rows(all);
        };
        const std::vector<Tab> tabs{{"One", rows(one)}, {"None", ""}, {"Two", rows(two)}};
        Opened book(xlsx ? test::xlsx_of(tabs) : test::ods_of(tabs));
        REQUIRE(book.book.has_value());
        const auto sheets = (*book.book)->sheets();
        REQUIRE(sheets.has_value());
        REQUIRE(sheets->size() == 3);
        CHECK((*sheets)[0].name == "One");
        CHECK(told((*sheets)[0].first) == "2: a|b");
        CHECK((*sheets)[1].first.number == 0);
        CHECK(told((*sheets)[2].first) == "1: x");
        CHECK(told(book.rows(0)) == std::vector<std::string>{"2: a|b", "3: c"});
        CHECK(book.rows(1).empty());
        CHECK(told(book.rows(2)) == std::vector<std::string>{"1: x"});
    }
}

TEST_CASE("workbook: days are counted as the workbook says")
{
    Opened book(test::xlsx_of({{"S", "<row><c s=\"2\"><v>44889</v></c></row>"}}, "", true));
    CHECK(told(book.rows()) == std::vector<std::string>{"1: 2026-11-25#"});
}

TEST_CASE("workbook: cells far to the right are counted, and few are kept")
{
    Opened xlsx(
        test::xlsx_of({{"S", "<row r=\"1048576\"><c r=\"A1\" t=\"b\"><v>1</v></c><c r=\"XFD1\"><v>1</v></c></row>"}}));
    Opened ods(test::ods_of({{"S", "<table:table-row><table:table-cell table:number-columns-repeated=\"16383\"/>"
                                   "<table:table-cell office:value-type=\"float\" office:value=\"1\" "
                                   "table:number-columns-repeated=\"99999999999999999999\"/></table:table-row>"}}));
    CHECK(xlsx.rows().at(0).cell_count == 16'384);
    CHECK(xlsx.rows().at(0).cells.size() == 1);
    CHECK(ods.rows().at(0).cell_count == 16'384);
}

TEST_CASE("workbook: rows and cells in no order, and texts that are not there, are a damaged file")
{
    for (const auto* rows : {"<row r=\"2\"/><row r=\"2\"/>", "<row r=\"1048577\"/>", "<row r=\"0\"/>",
                             "<row><c r=\"B1\"/><c r=\"A1\"/></row>", "<row><c r=\"XFE1\"/></row>",
                             "<row><c r=\"ZZZZZZZZZZZZZZZZZZZZZZ1\"/></row>", "<row><c t=\"s\"><v>0</v></c></row>",
                             "<row><c t=\"s\"><v>-1</v></c></row>", "<row><c>", "<row></c>"}) {
        CAPTURE(rows);
        CHECK(Opened(test::xlsx_of({{"S", rows}})).refused().kind == Error::Kind::TornFile);
    }
}

TEST_CASE("workbook: packed files that are no workbook, and locked ones, are told")
{
    CHECK(Opened(test::zip_of({{"food.csv", "fdc_id"}})).refused().place.found == "a packed file that is no workbook");
    CHECK(Opened(test::zip_of({{"_rels/.rels", "<a/>"}})).refused().place.found == "a packed file that is no workbook");
    const auto binary =
        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship "
        "Id=\"a\" Type=\"x/officeDocument\" Target=\"xl/workbook.bin\"/></Relationships>";
    CHECK(Opened(test::zip_of({{"_rels/.rels", binary}, {"xl/workbook.bin", "x"}})).refused().kind ==
          Error::Kind::BadEncoding);
    const auto manifest = "<m:manifest xmlns:m=\"urn:oasis:names:tc:opendocument:xmlns:manifest:1.0\"><m:file-entry>"
                          "<m:encryption-data/></m:file-entry></m:manifest>";
    CHECK(Opened(test::zip_of({{"content.xml", "\x12\x34"}, {"META-INF/manifest.xml", manifest}}))
              .refused()
              .place.found == "a workbook locked with a password");
    CHECK(Opened(test::zip_of({{"content.xml", "\x12\x34"}})).refused().kind == Error::Kind::TornFile);
}

TEST_CASE("workbook: a torn or bent file never gives a wrong cell")
{
    const test::TextRows rows{{"gtin", "name"}, {"9521234543213", "Oat rounds"}};
    for (const bool xlsx : {true, false}) {
        const auto bytes =
            xlsx ? test::xlsx_of({{"S", test::xlsx_rows(rows)}}) : test::ods_of({{"S", test::ods_rows(rows)}});
        for (std::size_t at = 0; at < bytes.size(); at += 3) {
            auto bent = bytes;
            bent[at] = static_cast<char>(bent[at] ^ 0x40);
            Opened book(bent);
            if (!book.book)
                continue;
            std::vector<std::string> all;
            const auto read = (*book.book)->for_each_row(0, [&all](const CsvRow& row) {
                all.push_back(told(row));
                return true;
            });
            if (read)
                CHECK(all == std::vector<std::string>{"1: gtin|name", "2: 9521234543213|Oat rounds"});
        }
        CHECK(Opened(bytes.substr(0, bytes.size() / 2)).refused().kind == Error::Kind::TornFile);
    }
}
