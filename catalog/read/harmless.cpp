#include "catalog/read/harmless.h"

#include <cstddef>

namespace catalog {
namespace {

bool begins_formula(char c)
{
    return c == '=' || c == '+' || c == '-' || c == '@' || c == '\t' || c == '\r' || c == '\n';
}

bool separates(char c)
{
    return c == ',' || c == ';' || c == '\t' || c == '\n' || c == '|';
}

/// Nothing but digits and signs of numbers and days: what a spreadsheet would rewrite. (Apostrophes do not count: some
/// are put in.)
bool looks_like_number(std::string_view text)
{
    return text.find_first_of("0123456789") != std::string_view::npos &&
           text.find_first_not_of("0123456789/-.,: '") == std::string_view::npos;
}

std::size_t end_of(std::string_view text, std::size_t from, char sign)
{
    const auto end = text.find_first_not_of(sign, from);
    return end == std::string_view::npos ? text.size() : end;
}

/// Where, from `at` on, the apostrophes begin in front of what a spreadsheet would run, and where they end; quotes
/// before them count for nothing, as a program that splits cells elsewhere takes them off.
struct Guarded {
    std::size_t begin;
    std::size_t end;
    bool needed;

    Guarded(std::string_view text, std::size_t at)
        : begin(at == 0 ? 0 : end_of(text, at, '"')), end(end_of(text, begin, '\'')),
          needed(end < text.size() && (begins_formula(text[end]) || (at == 0 && looks_like_number(text.substr(end)))))
    {
    }
};

/// Copies a text and changes the apostrophes at each place where a formula could begin.
template<class Change>
std::string changed(std::string_view text, Change change)
{
    std::string result;
    std::size_t copied = 0;
    const auto at_start_of_cell = [&](std::size_t at) {
        const Guarded guarded(text, at);
        if (!guarded.needed || guarded.begin < copied)
            return;
        result.append(text.substr(copied, guarded.begin - copied));
        copied = guarded.begin + change(result, guarded.end - guarded.begin);
    };
    at_start_of_cell(0);
    for (std::size_t at = 0; at < text.size(); ++at)
        if (separates(text[at]))
            at_start_of_cell(at + 1);
    return result.append(text.substr(copied));
}

} // namespace

std::string made_harmless(std::string_view text)
{
    return changed(text, [](std::string& result, std::size_t) {
        result += '\'';
        return std::size_t{0};
    });
}

std::string as_meant(std::string_view cell)
{
    return changed(cell, [](std::string&, std::size_t apostrophes) { return apostrophes > 0 ? std::size_t{1} : 0; });
}

} // namespace catalog
