// The parts of an .xlsx workbook beside its worksheets: relations, shared strings, styles, the list of sheets.
// Source: ECMA-376 part 1, sections 18.2, 18.4, 18.8; part 2, section 6.5.
#pragma once

#include "catalog/read/cell_value.h"
#include "catalog/read/xml.h"

#include <cstddef>
#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace catalog {

/// Which part of the package another one names.
class RelationReader final : public XmlHandler {
public:
    /// One relation.
    struct Relation {
        std::string id;
        std::string type; ///< the last word of its address: "worksheet"
        std::string target;
    };
    void open(std::string_view name, const XmlAttributes& attributes) override;
    void close(std::string_view) override {}
    [[nodiscard]] const std::vector<Relation>& all() const { return all_; }
    /// The first of this type; nullptr without one.
    [[nodiscard]] const Relation* of_type(std::string_view type) const;
    /// The one with this name; nullptr without one.
    [[nodiscard]] const Relation* of_id(std::string_view id) const;

private:
    std::vector<Relation> all_;
};

/// The sheets of a workbook, by their relations, and how it counts days.
class SheetListReader final : public XmlHandler {
public:
    /// One sheet.
    struct Listed {
        std::string name;
        std::string relation;
    };
    void open(std::string_view name, const XmlAttributes& attributes) override;
    void close(std::string_view) override {}
    std::vector<Listed> sheets;
    bool since_1904 = false;
};

/// Texts that cells name by number. Kept in one piece: millions of short ones take little more than their letters.
class SharedStringReader final : public XmlHandler {
public:
    static constexpr std::size_t most_bytes = 128U << 20U;
    static constexpr std::size_t most_strings = 20'000'000;

    void open(std::string_view name, const XmlAttributes& attributes) override;
    void close(std::string_view name) override;
    void text(std::string_view letters) override;
    [[nodiscard]] bool enough() const override { return too_large(); }
    /// Whether there is more text than is kept.
    [[nodiscard]] bool too_large() const { return letters_.size() > most_bytes || ends_.size() > most_strings; }
    /// How many texts there are.
    [[nodiscard]] std::size_t count() const { return ends_.size(); }
    /// One of them, by its number below `count`.
    [[nodiscard]] std::string_view operator[](std::size_t number) const;

private:
    std::string letters_;
    std::vector<std::uint32_t> ends_;
    bool in_text_ = false;
    bool in_reading_aid_ = false; ///< phonetic letters above others: not part of the text
};

/// How each style of cells shows numbers.
class StyleReader final : public XmlHandler {
public:
    void open(std::string_view name, const XmlAttributes& attributes) override;
    void close(std::string_view name) override;
    /// The form of a style by its number; plain for a number that no style has.
    [[nodiscard]] NumberForm form(std::size_t style) const;

private:
    std::map<int, NumberForm> codes_;
    std::vector<NumberForm> forms_;
    bool in_cell_styles_ = false;
};

/// A whole number of an attribute; `otherwise` for anything else.
[[nodiscard]] std::size_t whole_number(std::string_view attribute, std::size_t otherwise);

/// "_x000D_" to a line break, "_x005F_" to "_": signs that XML cannot hold. Source: ECMA-376 part 1, 22.9.2.19
/// (ST_Xstring).
[[nodiscard]] std::string unescaped(std::string_view text);

} // namespace catalog
