#include "catalog/read/xlsx_parts.h"

#include <algorithm>
#include <charconv>

namespace catalog {
namespace {

constexpr std::size_t most_parts =
    10'000; // of a package, and sheets of a workbook: what is behind them is not looked at

} // namespace

std::size_t whole_number(std::string_view attribute, std::size_t otherwise)
{
    std::size_t number = 0;
    const auto* const end = attribute.data() + attribute.size();
    const auto read = std::from_chars(attribute.data(), end, number);
    return read.ec == std::errc() && read.ptr == end ? number : otherwise;
}

std::string unescaped(std::string_view text)
{
    constexpr std::size_t length = 7; // of "_x000D_"
    std::string plain;
    for (std::size_t at = 0; at < text.size();) {
        const auto code = text.substr(at, length);
        unsigned letter = 0x80;
        if (code.size() == length && code.starts_with("_x") && code.back() == '_' &&
            std::from_chars(code.data() + 2, code.data() + 6, letter, 16).ptr != code.data() + 6)
            letter = 0x80;
        if (letter >= 0x80) { // others are never escaped by the programs
            plain += text[at++];
            continue;
        }
        plain += letter == '\r' ? '\n' : static_cast<char>(letter);
        at += length;
    }
    return plain;
}

void RelationReader::open(std::string_view name, const XmlAttributes& attributes)
{
    if (name != "Relationship" || all_.size() == most_parts)
        return;
    const auto type = attributes["Type"];
    all_.push_back({std::string(attributes["Id"]), std::string(type.substr(type.rfind('/') + 1)),
                    std::string(attributes["Target"])});
}

const RelationReader::Relation* RelationReader::of_type(std::string_view type) const
{
    const auto found = std::find_if(all_.begin(), all_.end(), [&](const auto& one) { return one.type == type; });
    return found == all_.end() ? nullptr : &*found;
}

const RelationReader::Relation* RelationReader::of_id(std::string_view id) const
{
    const auto found = std::find_if(all_.begin(), all_.end(), [&](const auto& one) { return one.id == id; });
    return found == all_.end() ? nullptr : &*found;
}

void SheetListReader::open(std::string_view name, const XmlAttributes& attributes)
{
    if (name == "sheet" && sheets.size() < most_parts)
        sheets.push_back({std::string(attributes["name"]), std::string(attributes["r:id"])});
    else if (name == "workbookPr")
        since_1904 = attributes["date1904"] == "1" || attributes["date1904"] == "true";
}

void SharedStringReader::open(std::string_view name, const XmlAttributes&)
{
    in_text_ = name == "t" && !in_reading_aid_;
    in_reading_aid_ = in_reading_aid_ || name == "rPh";
}

void SharedStringReader::close(std::string_view name)
{
    if (name == "t")
        in_text_ = false;
    else if (name == "rPh")
        in_reading_aid_ = false;
    else if (name == "si")
        ends_.push_back(static_cast<std::uint32_t>(letters_.size()));
}

void SharedStringReader::text(std::string_view letters)
{
    if (in_text_ && !too_large())
        letters_.append(letters);
}

std::string_view SharedStringReader::operator[](std::size_t number) const
{
    const std::size_t begin = number == 0 ? 0 : ends_[number - 1];
    return std::string_view(letters_).substr(begin, ends_[number] - begin);
}

void StyleReader::open(std::string_view name, const XmlAttributes& attributes)
{
    constexpr std::size_t most = 65'536; // the programs stop at 65,490 styles
    if (name == "cellXfs")
        in_cell_styles_ = true;
    if (name == "numFmt") {
        codes_[static_cast<int>(whole_number(attributes["numFmtId"], 0) % most)] =
            form_of_code(attributes["formatCode"]);
    } else if (name == "xf" && in_cell_styles_ && forms_.size() < most) {
        const auto number = static_cast<int>(whole_number(attributes["numFmtId"], 0) % most);
        const auto code = codes_.find(number);
        forms_.push_back(code == codes_.end() ? form_of_number(number) : code->second);
    }
}

void StyleReader::close(std::string_view name)
{
    if (name == "cellXfs")
        in_cell_styles_ = false;
}

NumberForm StyleReader::form(std::size_t style) const
{
    return style < forms_.size() ? forms_[style] : NumberForm{};
}

} // namespace catalog
