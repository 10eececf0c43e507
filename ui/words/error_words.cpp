#include "ui/words/error_words.h"

#include <string_view>

namespace ui {
namespace {

using Kind = core::Error::Kind;

/// What is said of one kind, in English. {found}, {expected}, {column} and {detail} stand for the error's own.
struct Words {
    Kind kind;
    std::string_view text;
    std::string_view without_found; ///< for errors that carry no cell, such as a typed or scanned code
};

constexpr Words table[] = {
    {Kind::NotDigits, "found \"{found}\", expected {expected}",
     "\"{detail}\" is no product number: it has other signs than digits"},
    {Kind::WrongLength, "found \"{found}\", expected {expected}",
     "\"{detail}\" is no product number: it has not 8, 12, 13 or 14 digits"},
    {Kind::WrongCheckDigit, "found \"{found}\", expected {expected}",
     "\"{detail}\" is no product number: its last digit does not fit the others"},
    {Kind::NotAProductCode, "found \"{found}\", expected {expected}", "\"{detail}\" is a code, but of no product"},
    {Kind::BadValue, "found \"{found}\", expected {expected}", "\"{detail}\" cannot be read here"},
    {Kind::MissingValue, "the cell is empty, expected {expected}", "the cell is empty, expected {expected}"},
    {Kind::MissingColumn, "the column {column} is missing; it takes {expected}",
     "the column {column} is missing; it takes {expected}"},
    {Kind::UnknownColumn, "no column is called \"{found}\"; did you mean {expected}?",
     "no column is called \"{column}\""},
    {Kind::DoubledValue, "found \"{found}\", expected {expected}", "\"{detail}\" stands twice"},
    {Kind::BadRow, "found {found}, expected {expected}", "the row cannot be read"},
    {Kind::BadEncoding, "found \"{found}\", expected {expected}", "it holds bytes that are no text"},
    {Kind::TooLarge, "found \"{found}\", expected {expected}", "it is too large"},
    {Kind::Empty, "found nothing, expected {expected}", "found nothing, expected {expected}"},
    {Kind::CannotRead, "cannot be read: {detail}", "cannot be read: {detail}"},
    {Kind::CannotWrite, "cannot be written: {detail}", "cannot be written: {detail}"},
};

const Words& words_for(Kind kind)
{
    for (const auto& words : table)
        if (words.kind == kind)
            return words;
    return table[0]; // every kind has its row; a test walks them
}

/// Puts the error's own words in; what they hold is never read as a placeholder itself.
std::string filled(std::string_view text, const core::Error& error)
{
    const auto value_of = [&error](std::string_view name) -> std::string_view {
        if (name == "found")
            return error.place.found;
        if (name == "expected")
            return error.place.expected;
        return name == "column" ? error.place.column : error.detail;
    };
    std::string result;
    for (auto open = text.find('{'); open != std::string_view::npos; open = text.find('{')) {
        const auto close = text.find('}', open);
        result.append(text.substr(0, open)).append(value_of(text.substr(open + 1, close - open - 1)));
        text.remove_prefix(close + 1);
    }
    return result.append(text);
}

/// "sheet.csv, row 7, column sodium_mg: "; empty for an error without a place.
std::string where(const core::Error& error)
{
    std::string text = error.place.source;
    const auto add = [&text](const std::string& part) { text.append(text.empty() ? "" : ", ").append(part); };
    if (error.place.row > 0)
        add("row " + std::to_string(error.place.row));
    const bool says_its_column = error.kind == Kind::MissingColumn || error.kind == Kind::UnknownColumn;
    if (!error.place.column.empty() && !says_its_column)
        add("column " + error.place.column);
    return text.empty() ? text : text + ": ";
}

} // namespace

std::string sentence(const core::Error& error)
{
    const auto& words = words_for(error.kind);
    const bool has_found = !error.place.found.empty();
    std::string text = filled(has_found ? words.text : words.without_found, error);
    if (error.kind == Kind::UnknownColumn && error.place.expected.empty())
        text = filled(words.without_found, error);
    if (!text.ends_with('?') && !text.ends_with('.'))
        text += '.';
    return where(error) + text;
}

} // namespace ui
