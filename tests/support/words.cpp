#include "tests/support/words.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <numeric>
#include <sstream>
#include <utility>

namespace test {
namespace {

/// What English and Spanish need, in UTF-8; a dash is a dash.
constexpr std::array<std::pair<std::string_view, char>, 15> accents{{{"á", 'a'},
                                                                     {"é", 'e'},
                                                                     {"í", 'i'},
                                                                     {"ó", 'o'},
                                                                     {"ú", 'u'},
                                                                     {"ü", 'u'},
                                                                     {"ñ", 'n'},
                                                                     {"Á", 'a'},
                                                                     {"É", 'e'},
                                                                     {"Í", 'i'},
                                                                     {"Ó", 'o'},
                                                                     {"Ú", 'u'},
                                                                     {"Ü", 'u'},
                                                                     {"Ñ", 'n'},
                                                                     {"–", '-'}}};

bool is_letter_or_digit(char c)
{
    return std::isalnum(static_cast<unsigned char>(c)) != 0;
}

std::string without_accents(std::string text)
{
    for (const auto& [accented, plain] : accents)
        for (auto at = text.find(accented); at != std::string::npos; at = text.find(accented, at))
            text.replace(at, accented.size(), 1, plain);
    return text;
}

} // namespace

std::vector<std::string> plain_words(std::string_view text)
{
    std::vector<std::string> words;
    std::istringstream parts(without_accents(std::string(text)));
    for (std::string word; parts >> word;) {
        const auto first = std::ranges::find_if(word, is_letter_or_digit);
        const auto last = std::find_if(word.rbegin(), word.rend(), is_letter_or_digit).base();
        if (first >= last)
            continue;
        std::string plain(first, last);
        std::ranges::transform(plain, plain.begin(),
                               [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
        words.push_back(std::move(plain));
    }
    return words;
}

std::size_t letters_apart(std::string_view left, std::string_view right)
{
    std::vector<std::size_t> row(right.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 0; i < left.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i + 1;
        for (std::size_t j = 0; j < right.size(); ++j) {
            const std::size_t changed = diagonal + (left[i] == right[j] ? 0 : 1);
            diagonal = row[j + 1];
            row[j + 1] = std::min({changed, row[j] + 1, diagonal + 1});
        }
    }
    return row.back();
}

} // namespace test
