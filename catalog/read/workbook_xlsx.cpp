#include "catalog/read/workbook_xlsx.h"

#include "catalog/read/workbook_row.h"
#include "catalog/read/xlsx_parts.h"

#include <algorithm>
#include <filesystem>

namespace catalog {
namespace {

using core::Error;

/// A cell while its parts come.
struct Cell {
    std::string type; ///< "s", "str", "inlineStr", "b", "e", "n"; empty for a number
    std::size_t style = 0;
    std::size_t place = 0;
    std::string value;
    bool formula = false;
    bool has_value = false;
};

/// Reads the rows of one worksheet.
class WorksheetReader final : public XmlHandler {
public:
    WorksheetReader(const SharedStringReader& strings, const StyleReader& styles, bool since_1904, const TakeRow& take)
        : strings_(strings), styles_(styles), since_1904_(since_1904), take_(take)
    {
    }

    [[nodiscard]] bool enough() const override { return done_ || !damage_.empty(); }
    /// What makes no sense; empty when all did.
    [[nodiscard]] const std::string& damage() const { return damage_; }

    void open(std::string_view name, const XmlAttributes& attributes) override
    {
        if (name == "sheetData")
            in_rows_ = true;
        else if (!in_rows_)
            return;
        else if (name == "row")
            begin_row(attributes);
        else if (name == "c")
            begin_cell(attributes);
        else if (name == "f")
            cell_.formula = true;
        else if (name == "rPh")
            in_reading_aid_ = true;
        else if (name == "v" || (name == "t" && !in_reading_aid_))
            in_value_ = cell_.has_value = true;
    }

    void close(std::string_view name) override
    {
        if (name == "v" || name == "t")
            in_value_ = false;
        else if (name == "rPh")
            in_reading_aid_ = false;
        else if (name == "c" && in_rows_)
            end_cell();
        else if (name == "row" && in_rows_)
            end_row();
        else if (name == "sheetData")
            in_rows_ = false; // read on: only at its end is the file checked
    }

    void text(std::string_view letters) override
    {
        if (in_value_ && cell_.value.size() < longest_cell)
            cell_.value.append(letters.substr(0, longest_cell));
    }

private:
    void begin_row(const XmlAttributes& attributes)
    {
        const auto number = whole_number(attributes["r"], number_ + 1);
        if (number <= number_ || number > last_row)
            damage_ = "rows in no order";
        number_ = number;
        next_place_ = 0;
        row_.clear();
    }

    void begin_cell(const XmlAttributes& attributes)
    {
        cell_.type = attributes["t"];
        cell_.style = whole_number(attributes["s"], 0);
        cell_.place = place_of(attributes["r"]);
        cell_.value.clear();
        cell_.formula = cell_.has_value = false;
        if (cell_.place < next_place_ || cell_.place >= last_column)
            damage_ = "cells in no order";
        next_place_ = cell_.place + 1;
    }

    /// "AB12" to 27; the next place where nothing is said.
    [[nodiscard]] std::size_t place_of(std::string_view reference) const
    {
        std::size_t place = 0;
        for (const char c : reference) {
            if (c < 'A' || c > 'Z' || place > last_column)
                break;
            place = place * 26 + static_cast<std::size_t>(c - 'A') + 1;
        }
        return place == 0 ? next_place_ : place - 1;
    }

    void end_cell()
    {
        const bool no_result = cell_.formula && !cell_.has_value;
        if (cell_.type == "e" || no_result)
            row_.put(cell_.place, cell_.value, CellMark::Broken);
        else if (cell_.type == "s")
            put_shared();
        else if (cell_.type == "b")
            row_.put(cell_.place, cell_.value == "1" || cell_.value == "true" ? "TRUE" : "FALSE", std::nullopt);
        else if (cell_.type == "d")
            row_.put(cell_.place, cell_.value.substr(0, 10), CellMark::Day);
        else if (cell_.type == "str" || cell_.type == "inlineStr")
            row_.put(cell_.place, unescaped(cell_.value), std::nullopt);
        else
            put_number();
    }

    void put_shared()
    {
        if (cell_.value.empty())
            return;
        const auto number = whole_number(cell_.value, strings_.count());
        if (number >= strings_.count()) {
            damage_ = "a text that is not there";
            return;
        }
        row_.put(cell_.place, unescaped(strings_[number].substr(0, longest_cell)), std::nullopt);
    }

    void put_number()
    {
        const auto number = parse_number(cell_.value);
        if (!number) {
            row_.put(cell_.place, cell_.value, std::nullopt); // shown, and refused by its column
            return;
        }
        const auto form = styles_.form(cell_.style);
        const bool day = form.kind == NumberForm::Kind::Day || form.kind == NumberForm::Kind::Time;
        row_.put(cell_.place, shown_as(*number, form, since_1904_), day ? std::optional(CellMark::Day) : std::nullopt);
    }

    void end_row()
    {
        if (row_.filled() && damage_.empty())
            done_ = !take_(row_.as(number_));
    }

    const SharedStringReader& strings_;
    const StyleReader& styles_;
    bool since_1904_;
    const TakeRow& take_;
    WorkbookRow row_;
    Cell cell_;
    std::string damage_;
    std::size_t number_ = 0;
    std::size_t next_place_ = 0;
    bool in_rows_ = false;
    bool in_value_ = false;
    bool in_reading_aid_ = false;
    bool done_ = false;
};

/// A target of a relation of the part at `part`, as the name of a member.
std::string member_name(const std::string& part, const std::string& target)
{
    if (target.starts_with('/'))
        return target.substr(1);
    return (std::filesystem::path(part).parent_path() / target).lexically_normal().string();
}

/// Where the relations of a part are kept: "xl/_rels/workbook.xml.rels".
std::string relations_of(const std::string& part)
{
    const std::filesystem::path path(part);
    return (path.parent_path() / "_rels" / (path.filename().string() + ".rels")).string();
}

class Xlsx final : public Workbook {
public:
    Xlsx(ZipFile zip, std::string source) : zip_(std::move(zip)), source_(std::move(source)) {}

    /// Reads all but the worksheets.
    core::Result<void> read_parts()
    {
        RelationReader package;
        if (const auto read = read_member("_rels/.rels", package); !read)
            return read;
        const auto* const main = package.of_type("officeDocument");
        const auto part = main == nullptr ? std::string() : member_name("", main->target);
        if (!part.ends_with(".xml") || !zip_.member(part))
            return core::refuse(Error::Kind::BadEncoding, "zip",
                                core::Place{source_, 0, "", "a packed file that is no workbook",
                                            "a CSV file, or a workbook saved as .xlsx or .ods"});
        SheetListReader listed;
        RelationReader relations;
        if (const auto read = read_member(part, listed); !read)
            return read;
        if (const auto read = read_member(relations_of(part), relations); !read)
            return read;
        since_1904_ = listed.since_1904;
        keep_sheets(part, listed, relations);
        return read_shared(part, relations);
    }

    core::Result<std::vector<WorkbookSheet>> sheets() override
    {
        std::vector<WorkbookSheet> all;
        for (const auto& sheet : sheets_) {
            all.push_back({sheet.name, {}});
            const auto read = for_each_row(all.size() - 1, [&all](const CsvRow& row) {
                all.back().first = row;
                return false;
            });
            if (!read)
                return tl::make_unexpected(read.error());
        }
        return all;
    }

    core::Result<void> for_each_row(std::size_t sheet, const TakeRow& take) override
    {
        WorksheetReader reader(strings_, styles_, since_1904_, take);
        if (auto read = read_member(sheets_[sheet].member, reader); !read)
            return read;
        if (!reader.damage().empty())
            return tl::make_unexpected(
                Error{Error::Kind::TornFile, reader.damage(), core::Place{source_, 0, "", "", ""}});
        return {};
    }

private:
    struct Named {
        std::string name;
        std::string member;
    };

    /// Charts and macros have tabs as well: only worksheets count.
    void keep_sheets(const std::string& part, const SheetListReader& listed, const RelationReader& relations)
    {
        for (const auto& sheet : listed.sheets)
            if (const auto* const relation = relations.of_id(sheet.relation);
                relation && relation->type == "worksheet" && sheets_.size() < most_tabs)
                sheets_.push_back({sheet.name, member_name(part, relation->target)});
    }

    core::Result<void> read_shared(const std::string& part, const RelationReader& relations)
    {
        if (const auto* const styles = relations.of_type("styles"))
            if (auto read = read_member(member_name(part, styles->target), styles_); !read)
                return read;
        if (const auto* const strings = relations.of_type("sharedStrings"))
            if (auto read = read_member(member_name(part, strings->target), strings_); !read)
                return read;
        if (strings_.too_large())
            return core::refuse(Error::Kind::TooLarge, "strings",
                                core::Place{source_, 0, "", "more than 128 MiB of text", "at most that much"});
        return {};
    }

    core::Result<void> read_member(const std::string& name, XmlHandler& handler) const
    {
        const auto* const member = zip_.member(name);
        if (member == nullptr)
            return core::refuse(Error::Kind::TornFile, "no " + name, core::Place{source_, 0, "", "", ""});
        auto opened = zip_.read(*member);
        if (!opened)
            return tl::make_unexpected(opened.error());
        return read_xml(*opened, source_, handler);
    }

    ZipFile zip_;
    std::string source_;
    std::vector<Named> sheets_;
    SharedStringReader strings_;
    StyleReader styles_;
    bool since_1904_ = false;
};

} // namespace

core::Result<std::unique_ptr<Workbook>> open_xlsx(ZipFile zip, const std::string& source)
{
    auto xlsx = std::make_unique<Xlsx>(std::move(zip), source);
    if (const auto read = xlsx->read_parts(); !read)
        return tl::make_unexpected(read.error());
    return xlsx;
}

} // namespace catalog
