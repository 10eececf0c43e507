#include "ui/words/error_words.h"

#include "ui/words/core_words.h"

namespace ui {
namespace {

using Kind = core::Error::Kind;

/// The texts of one kind.
struct Words {
    Kind kind;
    TextId with_found; ///< the error carries a cell
    TextId bare;       ///< it carries none: a typed or scanned code, a file
};

constexpr Words table[] = {
    {Kind::NotDigits, TextId::error_found_expected, TextId::error_not_digits},
    {Kind::WrongLength, TextId::error_found_expected, TextId::error_wrong_length},
    {Kind::WrongCheckDigit, TextId::error_found_expected, TextId::error_wrong_check_digit},
    {Kind::NotAProductCode, TextId::error_found_expected, TextId::error_not_a_product_code},
    {Kind::BadValue, TextId::error_found_expected, TextId::error_bad_value},
    {Kind::MissingValue, TextId::error_empty_cell, TextId::error_empty_cell},
    {Kind::MissingColumn, TextId::error_missing_column, TextId::error_missing_column},
    {Kind::UnknownColumn, TextId::error_unknown_column_near, TextId::error_unknown_column},
    {Kind::DoubledValue, TextId::error_found_expected, TextId::error_doubled},
    {Kind::BadRow, TextId::error_bad_row, TextId::error_bad_row_bare},
    {Kind::BadEncoding, TextId::error_bad_row, TextId::error_bad_encoding},
    {Kind::TooLarge, TextId::error_found_expected, TextId::error_too_large},
    {Kind::Empty, TextId::error_found_nothing, TextId::error_found_nothing},
    {Kind::NoSuchFile, TextId::error_release_files, TextId::error_no_such_file},
    {Kind::IsFolder, TextId::error_is_folder, TextId::error_is_folder},
    {Kind::NoCatalog, TextId::error_no_catalog, TextId::error_no_catalog},
    {Kind::NewerCatalog, TextId::error_newer_catalog, TextId::error_newer_catalog},
    {Kind::TornCatalog, TextId::error_torn_catalog, TextId::error_torn_catalog},
    {Kind::TornFile, TextId::error_torn_file, TextId::error_torn_file},
    {Kind::NoFoods, TextId::error_no_foods, TextId::error_no_foods},
    {Kind::CannotRead, TextId::error_cannot_read, TextId::error_cannot_read},
    {Kind::NoBundle, TextId::error_no_bundle, TextId::error_no_bundle},
    {Kind::NewerBundle, TextId::error_newer_bundle, TextId::error_newer_bundle},
    {Kind::DamagedBundle, TextId::error_damaged_part, TextId::error_damaged_bundle},
    {Kind::CutBundle, TextId::error_cut_bundle, TextId::error_cut_bundle},
    {Kind::UnknownKey, TextId::error_unknown_key, TextId::error_unknown_key},
    {Kind::OtherKey, TextId::error_other_key, TextId::error_other_key},
    {Kind::ForeignKey, TextId::error_foreign_key, TextId::error_foreign_key},
    {Kind::OlderBundle, TextId::error_older_bundle, TextId::error_older_bundle},
    {Kind::NothingBefore, TextId::error_nothing_before, TextId::error_nothing_before},
    {Kind::DamagedRecord, TextId::error_damaged_record, TextId::error_damaged_record},
    {Kind::NoKey, TextId::error_no_key, TextId::error_no_key},
    {Kind::AlreadyThere, TextId::error_already_there, TextId::error_already_there},
    {Kind::NoRoom, TextId::error_no_room, TextId::error_no_room},
    {Kind::Busy, TextId::error_busy, TextId::error_busy},
    {Kind::CannotWrite, TextId::error_cannot_write, TextId::error_cannot_write},
};

const Words& words_for(Kind kind)
{
    for (const auto& words : table)
        if (words.kind == kind)
            return words;
    return table[0]; // every kind has its row; a test walks them
}

TextId text_for(const core::Error& error)
{
    const auto& words = words_for(error.kind);
    const bool nothing_near = error.kind == Kind::UnknownColumn && error.place.expected.empty();
    return error.place.found.empty() || nothing_near ? words.bare : words.with_found;
}

/// "sheet.csv, row 7, column sodium_mg: "; empty for an error without a place.
std::string where(const core::Error& error, const Language& language)
{
    std::string text = error.place.source;
    const auto add = [&text](const std::string& part) { text.append(text.empty() ? "" : ", ").append(part); };
    if (error.place.row > 0)
        add(language.fill(TextId::error_row, {{"n", std::to_string(error.place.row)}}));
    const bool says_its_column = error.kind == Kind::MissingColumn || error.kind == Kind::UnknownColumn;
    if (!error.place.column.empty() && !says_its_column)
        add(language.fill(TextId::error_column, {{"name", error.place.column}}));
    return text.empty() ? text : text + ": ";
}

/// "station.conf, line 3, aims: ".
std::string where_in_settings(const core::Error& error, const Language& language)
{
    std::string text = error.place.source;
    if (error.place.row > 0)
        text += ", " + language.fill(TextId::error_line, {{"n", std::to_string(error.place.row)}});
    if (!error.place.column.empty())
        text += ", " + error.place.column;
    return text + ": ";
}

/// What is wrong, with its full stop, without its place.
std::string what(const core::Error& error, const Language& language)
{
    const auto& place = error.place;
    const bool is_cell = !place.column.empty(); // somebody's own words
    const std::string found = is_cell ? place.found : core_words(place.found, language);
    std::string text = language.fill(text_for(error), {{"found", found},
                                                       {"expected", core_words(place.expected, language)},
                                                       {"column", place.column},
                                                       {"source", place.source},
                                                       {"detail", error.detail}});
    if (!text.ends_with('?') && !text.ends_with('.'))
        text += '.';
    return text;
}

} // namespace

std::string sentence(const core::Error& error, const Language& language)
{
    return where(error, language) + what(error, language);
}

std::string settings_sentence(const core::Error& error, const Language& language)
{
    return where_in_settings(error, language) + what(error, language);
}

} // namespace ui
