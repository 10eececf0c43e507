#include "tests/support/workbook_maker.h"

#include "tests/support/zip_maker.h"

namespace test {
namespace {

constexpr std::string_view head = R"(<?xml version="1.0" encoding="UTF-8" standalone="yes"?>)";
constexpr std::string_view main_names =
    R"(xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships")";
constexpr std::string_view relation_names = R"(xmlns="http://schemas.openxmlformats.org/package/2006/relationships")";
constexpr std::string_view relation_types = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";
constexpr std::string_view ods_names =
    R"(xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0")";

std::string joined(std::initializer_list<std::string_view> parts)
{
    std::string text(head);
    for (const auto part : parts)
        text += part;
    return text;
}

std::string relation(const std::string& id, std::string_view type, const std::string& target)
{
    return "<Relationship Id=\"" + id + "\" Type=\"" + std::string(relation_types) + std::string(type) +
           "\" Target=\"" + target + "\"/>";
}

std::string escaped(std::string_view text)
{
    std::string xml;
    for (const char c : text)
        switch (c) {
        case '&':
            xml += "&amp;";
            break;
        case '<':
            xml += "&lt;";
            break;
        default:
            xml += c;
        }
    return xml;
}

std::string column_letters(std::size_t place)
{
    std::string letters;
    for (std::size_t rest = place + 1; rest > 0; rest = (rest - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (rest - 1) % 26));
    return letters;
}

} // namespace

std::string xlsx_of(const std::vector<Tab>& tabs, std::string_view shared, bool since_1904)
{
    const auto package = joined({"<Relationships ", relation_names, ">",
                                 relation("rId1", "officeDocument", "xl/workbook.xml"), "</Relationships>"});
    std::string sheets;
    std::string relations = relation("s", "styles", "styles.xml") + relation("t", "sharedStrings", "sharedStrings.xml");
    std::vector<std::string> names;
    std::vector<std::string> parts;
    for (const auto& tab : tabs) {
        const auto number = std::to_string(parts.size() + 1);
        sheets += "<sheet name=\"" + tab.name + "\" sheetId=\"" + number + "\" r:id=\"rId" + number + "\"/>";
        relations += relation("rId" + number, "worksheet", "worksheets/sheet" + number + ".xml");
        names.push_back("xl/worksheets/sheet" + number + ".xml");
        parts.push_back(joined({"<worksheet ", main_names, "><dimension ref=\"A1:XFD1048576\"/><sheetData>", tab.rows,
                                "</sheetData></worksheet>"}));
    }
    const auto book = joined({"<workbook ", main_names, "><workbookPr", since_1904 ? " date1904=\"1\"" : "",
                              "/><sheets>", sheets, "</sheets></workbook>"});
    const auto book_relations = joined({"<Relationships ", relation_names, ">", relations, "</Relationships>"});
    const auto strings = joined({"<sst ", main_names, ">", shared, "</sst>"});
    const auto styles = joined({"<styleSheet ", main_names,
                                R"(><numFmts count="3"><numFmt numFmtId="164" formatCode="0.0%"/>)"
                                R"(<numFmt numFmtId="165" formatCode="yyyy\-mm\-dd;@"/>)"
                                R"(<numFmt numFmtId="166" formatCode="000000000000"/></numFmts>)"
                                R"(<cellStyleXfs><xf numFmtId="9"/></cellStyleXfs><cellXfs>)"
                                R"(<xf numFmtId="0"/><xf numFmtId="9"/><xf numFmtId="14"/><xf numFmtId="164"/>)"
                                R"(<xf numFmtId="165"/><xf numFmtId="166"/><xf numFmtId="0"/><xf numFmtId="20"/>)"
                                "</cellXfs></styleSheet>"});
    std::vector<Packed> files{{"_rels/.rels", package},
                              {"xl/workbook.xml", book},
                              {"xl/_rels/workbook.xml.rels", book_relations},
                              {"xl/sharedStrings.xml", strings},
                              {"xl/styles.xml", styles}};
    for (std::size_t i = 0; i < parts.size(); ++i)
        files.push_back({names[i], parts[i]});
    return zip_of(files);
}

std::string ods_of(const std::vector<Tab>& tabs)
{
    std::string tables;
    for (const auto& tab : tabs)
        tables += "<table:table table:name=\"" + tab.name + "\">" + tab.rows + "</table:table>";
    const auto content = joined({"<office:document-content ", ods_names, "><office:body><office:spreadsheet>", tables,
                                 "</office:spreadsheet></office:body></office:document-content>"});
    return zip_of({{"mimetype", "application/vnd.oasis.opendocument.spreadsheet"}, {"content.xml", content}});
}

std::string xlsx_rows(const TextRows& rows)
{
    std::string xml;
    for (std::size_t row = 0; row < rows.size(); ++row) {
        const auto number = std::to_string(row + 1);
        xml += "<row r=\"" + number + "\">";
        for (std::size_t place = 0; place < rows[row].size(); ++place)
            if (const auto& text = rows[row][place]; !text.empty())
                xml += "<c r=\"" + column_letters(place) + number + "\" t=\"inlineStr\"><is><t>" + escaped(text) +
                       "</t></is></c>";
        xml += "</row>";
    }
    return xml;
}

std::string ods_rows(const TextRows& rows)
{
    std::string xml;
    for (const auto& row : rows) {
        xml += "<table:table-row>";
        for (const auto& text : row)
            xml += text.empty() ? "<table:table-cell/>"
                                : "<table:table-cell office:value-type=\"string\"><text:p>" + escaped(text) +
                                      "</text:p></table:table-cell>";
        xml += "</table:table-row>";
    }
    return xml;
}

} // namespace test
